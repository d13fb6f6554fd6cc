#pragma once

#include <QString>
#include <QStringList>

#include <functional>
#include <vector>

class QPagedPaintDevice;
class QPainter;

namespace app {

/// One thing on a sheet to be filled by hand.
struct SheetEntry {
    enum class Kind {
        Title,   ///< large
        Heading, ///< over what follows, with a rule beneath
        Entry,   ///< with boxes or room for a value before it
        Look,    ///< with the mark of what is to be looked at before it
        Small,   ///< in small type
        ToFill   ///< `fields` side by side, each with a line to write on
    };
    Kind kind = Kind::Entry;
    QString words;
    QString note = {};     ///< beneath, in small type
    int boxes = 0;         ///< before it
    int boxesBehind = 0;   ///< at the right edge
    bool hasBlank = false; ///< a line for a value before it
    QString aside = {};    ///< of a heading: at the right edge
    QStringList fields = {};
};

/// What a sheet says, in its order; wrapped and laid out by `paintSheet`.
struct Sheet {
    QString running;              ///< at the head of each page, with its number where there are several
    std::vector<SheetEntry> head; ///< over the whole width of the first page
    std::vector<SheetEntry> body; ///< in columns, from page to page
    std::vector<SheetEntry> foot; ///< over the whole width at the end of the last page
};

/// How it is laid out: type so much larger than 11 points, in so many columns.
struct SheetLayout {
    double scale = 1;
    int columns = 1;
};

inline constexpr double leastSheetScale = 0.73; ///< lines in 8 points, notes in 6.6: read at arm's length

/// How many pages it takes so. Nothing is ever cut.
int pagesOf(QPainter& painter, const Sheet& sheet, SheetLayout layout);
/// Draws it on A4 as `choose` lays it out, which may ask pagesOf. False when the device cannot be painted on.
/// `pages`: how many it took.
bool paintSheet(QPagedPaintDevice& device, const Sheet& sheet,
                const std::function<SheetLayout(QPainter&)>& choose, int* pages);

} // namespace app
