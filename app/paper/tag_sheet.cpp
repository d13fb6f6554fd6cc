#include "app/paper/tag_sheet.h"

#include "app/paper/a4_pdf.h"
#include "app/paper/tag_symbol.h"
#include "app/paper/whole_file.h"
#include "app/text/cautions.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QFont>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>
#include <cmath>

namespace app {
namespace {

using a4::dotsPerMm, a4::font, a4::pageHeight, a4::pageWidth;

constexpr double sheetMargin = 10, gap = 4, sheetFoot = 14; // mm

struct TagSheetText {
    Q_DECLARE_TR_FUNCTIONS(TagSheet)
};

/// How many tags of a size stand on a sheet, and where.
struct Layout {
    explicit Layout(double symbolMm)
        : module(symbolMm / symbolModules)
        , width(zoneModules * module)
        , letter(std::min(4.0, width / 9))
        , height(width + 3.6 * letter)
        , columns(std::max(1, fit(pageWidth - 2 * sheetMargin, width)))
        , rows(std::max(1, fit(pageHeight - 2 * sheetMargin - sheetFoot, height))) {}

    static int fit(double room, double size) { return static_cast<int>((room + gap) / (size + gap)); }
    int perSheet() const { return columns * rows; }
    QPointF corner(int place) const {
        const double left = (pageWidth - columns * width - (columns - 1) * gap) / 2;
        return {left + place % columns * (width + gap), sheetMargin + place / columns * (height + gap)};
    }

    double module;
    double width;
    double letter; ///< height of the code's letters
    double height;
    int columns;
    int rows;
};

QRectF dots(const QRectF& mm) {
    return {mm.x() * dotsPerMm, mm.y() * dotsPerMm, mm.width() * dotsPerMm, mm.height() * dotsPerMm};
}

void writeLine(QPainter& painter, const QRectF& boxMm, const QFont& chosen, const QString& text, int flags) {
    const QRectF box = dots(boxMm);
    painter.setFont(chosen);
    painter.drawText(box, flags,
                     QFontMetricsF(chosen, painter.device()).elidedText(text, Qt::ElideRight, box.width()));
}

void drawCutMarks(QPainter& painter, const QRectF& cellMm) {
    constexpr double length = 1.5;
    painter.setPen(QPen(Qt::black, 0.1 * dotsPerMm));
    for (const double x : {cellMm.left(), cellMm.right()})
        for (const double y : {cellMm.top(), cellMm.bottom()}) {
            const double outX = x == cellMm.left() ? x - length : x + length;
            const double outY = y == cellMm.top() ? y - length : y + length;
            painter.drawLine(QPointF(x, y) * dotsPerMm, QPointF(outX, y) * dotsPerMm);
            painter.drawLine(QPointF(x, y) * dotsPerMm, QPointF(x, outY) * dotsPerMm);
        }
}

void drawTag(QPainter& painter, const Layout& layout, QPointF corner, const core::TagLabel& tag) {
    drawCutMarks(painter, {corner, QSizeF(layout.width, layout.height)});
    drawSymbol(painter, corner * dotsPerMm, layout.module * dotsPerMm, tag.code);
    const double letter = layout.letter;
    double y = corner.y() + layout.width;
    const auto line = [&](double height, const QFont& chosen, const QString& text) {
        writeLine(painter, {corner.x(), y, layout.width, height}, chosen, text,
                  Qt::AlignCenter | Qt::TextSingleLine);
        y += height;
    };
    QFont mono = font(QStringLiteral("DejaVu Sans Mono"), letter);
    mono.setStyleHint(QFont::Monospace);
    line(1.3 * letter, mono, codeInWords(tag.code));
    line(1.1 * letter, font(QStringLiteral("DejaVu Sans"), 0.8 * letter), text(tag.name));
    line(1.0 * letter, font(QStringLiteral("DejaVu Sans"), 0.65 * letter), text(tag.owner));
}

void drawFoot(QPainter& painter, const Layout& layout, int sheet, int sheets) {
    constexpr double bar = 50, top = pageHeight - sheetMargin - 8;
    painter.fillRect(dots({sheetMargin, top, bar, 0.4}), Qt::black);
    for (const double x : {sheetMargin, sheetMargin + bar - 0.2})
        painter.fillRect(dots({x, top - 1, 0.2, 2.4}), Qt::black);
    const QFont small = font(QStringLiteral("DejaVu Sans"), 2.6);
    const QString words =
        TagSheetText::tr("Print at 100 %: this bar is 50 mm long.  Sheet %1 of %2").arg(sheet).arg(sheets);
    writeLine(painter, {sheetMargin + bar + 4, top - 2, pageWidth - 2 * sheetMargin - bar - 4, 4}, small,
              words, Qt::AlignLeft | Qt::AlignVCenter);
    writeLine(painter, {sheetMargin, top - 5.5, pageWidth - 2 * sheetMargin, 3.5}, small,
              tagReachInWords(layout.module * symbolModules), Qt::AlignLeft | Qt::AlignVCenter);
    painter.setFont(font(QStringLiteral("DejaVu Sans"), 2.2));
    painter.drawText(dots({sheetMargin, top + 2, pageWidth - 2 * sheetMargin, 7}),
                     Qt::AlignLeft | Qt::TextWordWrap, tagCaution());
}

QByteArray pdfOf(const std::vector<core::TagLabel>& tags, const Layout& layout, int sheets,
                 const std::function<void(double)>& progress) {
    return a4::pdf(TagSheetText::tr("Tags"), [&](QPdfWriter& writer) {
        QPainter painter(&writer);
        const a4::RoomForFonts room;
        for (int sheet = 0; sheet < sheets; ++sheet) {
            if (sheet > 0) writer.newPage();
            for (int place = 0; place < layout.perSheet(); ++place) {
                const auto at =
                    static_cast<std::size_t>(sheet) * static_cast<std::size_t>(layout.perSheet()) +
                    static_cast<std::size_t>(place);
                if (at < tags.size()) drawTag(painter, layout, layout.corner(place), tags[at]);
            }
            drawFoot(painter, layout, sheet + 1, sheets);
            if (progress) progress((sheet + 1.0) / sheets);
        }
    });
}

} // namespace

/// From how far a symbol is read by a webcam that sees 60° across, in metres: measured by reader_reach, the
/// table in docs/reader.md; straight in the size, and never more than the table says.
QString tagReachInWords(double symbolMm) {
    constexpr double at720 = 0.0225, at1080 = 0.035; // metres for each millimetre
    const auto metres = [&](double each) {
        return QLocale().toString(std::floor(symbolMm * each * 20 + 1e-6) / 20, 'f', 2);
    };
    return TagSheetText::tr("A webcam reads these from up to %1 m (720p) or %2 m (1080p) in good light.")
        .arg(metres(at720), metres(at1080));
}

core::Result<int> writeTagSheets(const std::filesystem::path& file, const std::vector<core::TagLabel>& tags,
                                 double symbolMm, const std::function<void(double)>& progress) {
    const Layout layout(symbolMm);
    const int count = static_cast<int>(tags.size());
    const int sheets = std::max(1, (count + layout.perSheet() - 1) / layout.perSheet());
    const core::Outcome saved = writeWholeFile(file, pdfOf(tags, layout, sheets, progress), Paper::Sheet);
    if (!saved) return saved.error();
    return sheets;
}

std::vector<core::TagLabel> controlTags() {
    // The codes are fixed by the contract of the command line; they act at the camera and in a code stream
    // alike.
    return {{"C00000001Y", TagSheetText::tr("finish: sign").toStdString(), {}},
            {"C00000002W", TagSheetText::tr("next boat").toStdString(), {}},
            {"C00000004S", TagSheetText::tr("undo").toStdString(), {}},
            {"C00000005Q", TagSheetText::tr("damaged: the thing just seen").toStdString(), {}},
            {"C00000008K", TagSheetText::tr("start or stop the clock").toStdString(), {}},
            {"C00000010W", TagSheetText::tr("save and put aside").toStdString(), {}}};
}

} // namespace app
