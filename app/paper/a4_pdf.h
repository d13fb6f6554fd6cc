#pragma once

#include <QByteArray>
#include <QFont>
#include <QString>

#include <functional>
#include <vector>

class QPagedPaintDevice;
class QPainter;
class QPdfWriter;

/// A4 sheets as PDF, laid out in millimetres from the upper left corner of the paper.
namespace app::a4 {

constexpr int dotsPerInch = 1200;
constexpr double dotsPerMm = dotsPerInch / 25.4;
constexpr double pageWidth = 210, pageHeight = 297;                ///< mm
constexpr double sideMargin = 15, topMargin = 14, footMargin = 12; ///< mm, of paintPages

/// A font whose letters are so high on the paper.
QFont font(const QString& family, double heightMm);

/// Memory for what a painter on a PDF does at its end: it writes the fonts, and does not look whether it gets
/// what it asks for. To stand behind the painter, so that it goes first, whatever is thrown in between.
class RoomForFonts {
public:
    RoomForFonts()
        : m_room(std::size_t{8} << 20U) {}

private:
    std::vector<char> m_room;
};

/// The bytes of a PDF whose first page `draw` begins on; it asks the writer for each page after that. No
/// margins are set: who draws keeps them.
QByteArray pdf(const QString& title, const std::function<void(QPdfWriter&)>& draw);

/// The font of lists and check lists, in points.
QFont textFont(double points, bool bold = false);

/// Draws a printout on a device, a printer say, within its margins. False when it cannot be painted on.
enum class Turned { No, Yes };
bool paintPages(QPagedPaintDevice& device, const std::function<void(QPainter&)>& draw,
                Turned turned = Turned::No);
/// What `paint` puts on a device, as a PDF; the file is whole or as it was. False when it cannot be painted
/// or written.
bool savePages(const QString& file, const QString& title,
               const std::function<bool(QPagedPaintDevice&)>& paint);

} // namespace app::a4
