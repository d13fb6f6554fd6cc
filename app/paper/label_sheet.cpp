#include "app/paper/label_sheet.h"

#include "app/paper/a4_pdf.h"
#include "app/paper/tag_symbol.h"
#include "app/paper/whole_file.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QFont>
#include <QFontMetricsF>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>

namespace app {
namespace {

struct LabelSheetText {
    Q_DECLARE_TR_FUNCTIONS(LabelSheet)
};

using a4::dotsPerMm, a4::font, a4::pageHeight, a4::pageWidth;

constexpr double aim = 1; // mm that a printer may miss

/// The symbol with its quiet zone.
double zoneOf(double symbolMm) {
    return symbolMm * zoneModules / symbolModules;
}

/// Draws labels in millimetres.
class LabelPainter {
public:
    LabelPainter(QPainter& painter, const LabelPaper& paper, double symbolMm)
        : m_painter(painter)
        , m_paper(paper)
        , m_symbol(symbolMm) {}

    void draw(int place, const core::TagLabel& tag) {
        const QRectF label(m_paper.left() + place % m_paper.columns * m_paper.acrossPitch,
                           m_paper.top() + place / m_paper.columns * m_paper.downPitch, m_paper.width,
                           m_paper.height);
        const double zone = zoneOf(m_symbol);
        const bool beside = label.width() - zone >= 14;
        const QPointF corner(beside ? label.left() + aim : label.center().x() - zone / 2,
                             beside ? label.center().y() - zone / 2 : label.top() + aim);
        drawSymbol(m_painter, corner * dotsPerMm, m_symbol / symbolModules * dotsPerMm, tag.code);
        const QRectF room = beside ? QRectF(corner.x() + zone, label.top() + aim,
                                            label.right() - aim - corner.x() - zone, label.height() - 2 * aim)
                                   : QRectF(label.left() + aim, corner.y() + zone, label.width() - 2 * aim,
                                            label.bottom() - aim - corner.y() - zone);
        drawWords(room, tag, beside);
    }

private:
    /// The code in groups, beneath each other where the room is narrow; smaller letters until all is in.
    void drawWords(const QRectF& roomMm, const core::TagLabel& tag, bool beside) {
        const QRectF room(roomMm.topLeft() * dotsPerMm, roomMm.size() * dotsPerMm);
        if (room.width() < dotsPerMm || room.height() < 1.5 * dotsPerMm) return;
        const QString code = codeInWords(tag.code);
        const QString words =
            tag.owner.empty() ? text(tag.name) : text(tag.name) + QLatin1Char('\n') + text(tag.owner);
        const int align = Qt::TextWordWrap | (beside ? Qt::AlignLeft : Qt::AlignHCenter);
        for (double letter = 3.4; letter > 1.2; letter -= 0.2) {
            const QFont mono = font(QStringLiteral("DejaVu Sans Mono"), letter);
            const QFont sans = font(QStringLiteral("DejaVu Sans"), 0.8 * letter);
            const QRectF codeBox = boxOf(room, align, mono, code);
            const QRectF wordsBox = boxOf(room, align, sans, words);
            const double gap = 0.3 * letter * dotsPerMm;
            const double height = codeBox.height() + gap + wordsBox.height();
            if (height > room.height() || std::max(codeBox.width(), wordsBox.width()) > room.width())
                continue;
            const double top = beside ? room.center().y() - height / 2 : room.top();
            write({room.left(), top, room.width(), codeBox.height()}, align, mono, code);
            write({room.left(), top + codeBox.height() + gap, room.width(), wordsBox.height()}, align, sans,
                  words);
            return;
        }
        write(room, align, font(QStringLiteral("DejaVu Sans Mono"), 1.4), code);
    }

    QRectF boxOf(const QRectF& room, int align, const QFont& chosen, const QString& text) const {
        return QFontMetricsF(chosen, m_painter.device()).boundingRect(room, align, text);
    }

    void write(const QRectF& box, int align, const QFont& chosen, const QString& text) {
        m_painter.setFont(chosen);
        m_painter.setPen(Qt::black);
        m_painter.drawText(box, align, text);
    }

    QPainter& m_painter;
    const LabelPaper& m_paper;
    double m_symbol;
};

} // namespace

double LabelPaper::left() const {
    return (pageWidth - (columns - 1) * acrossPitch - width) / 2;
}

double LabelPaper::top() const {
    return (pageHeight - (rows - 1) * downPitch - height) / 2;
}

const std::vector<LabelPaper>& labelPapers() {
    static const std::vector<LabelPaper> papers{
        {99.1, 67.7, 2, 4, 101.6, 67.7}, {70, 37, 3, 8, 70, 37},          {63.5, 38.1, 3, 7, 66, 38.1},
        {63.5, 33.9, 3, 8, 66, 33.9},    {48.5, 25.4, 4, 10, 48.5, 25.4}, {45.7, 21.2, 4, 12, 48.3, 21.2},
        {38.1, 21.2, 5, 13, 40.6, 21.2},
    };
    return papers;
}

double biggestSymbolOn(const LabelPaper& paper) {
    const double room = std::min(paper.width, paper.height) - 2 * aim;
    return room * symbolModules / zoneModules;
}

core::Result<int> writeTagsOnLabels(const std::filesystem::path& file,
                                    const std::vector<core::TagLabel>& tags, const LabelPaper& paper,
                                    double symbolMm, int firstLabel,
                                    const std::function<void(double)>& progress) {
    const int first = std::clamp(firstLabel, 0, paper.perSheet() - 1);
    const int used = first + static_cast<int>(tags.size());
    const int sheets = std::max(1, (used + paper.perSheet() - 1) / paper.perSheet());
    const QByteArray bytes = a4::pdf(LabelSheetText::tr("Tags"), [&](QPdfWriter& writer) {
        QPainter painter(&writer);
        const a4::RoomForFonts room;
        LabelPainter labels(painter, paper, std::min(symbolMm, biggestSymbolOn(paper)));
        for (int place = first; place < used; ++place) {
            if (place > first && place % paper.perSheet() == 0) writer.newPage();
            labels.draw(place % paper.perSheet(), tags[static_cast<std::size_t>(place - first)]);
            if (progress) progress((place - first + 1.0) / static_cast<double>(tags.size()));
        }
    });
    if (const core::Outcome saved = writeWholeFile(file, bytes); !saved) return saved.error();
    return sheets;
}

} // namespace app
