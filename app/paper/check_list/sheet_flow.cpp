#include "app/paper/check_list/sheet_flow.h"

#include "app/paper/a4_pdf.h"
#include "app/paper/lists/list_columns.h"
#include "app/paper/marks.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPagedPaintDevice>
#include <QPainter>

#include <algorithm>

namespace app {
namespace {

using Kind = SheetEntry::Kind;

struct SheetFlowText {
    Q_DECLARE_TR_FUNCTIONS(Lists)
};

constexpr double linePoints = 11, notePoints = 9, headingPoints = 12, titlePoints = 22, smallPoints = 7.5;
constexpr int boxesInRow = 4;
constexpr double columnGapMm = 8, blankMm = 15;

/// One line of text on the page, with what stands beside it.
struct Line {
    QString words;
    QString behind = {}; ///< a note that goes into the same line
    double points = linePoints;
    bool isBold = false;
    double above = 0; ///< dots left free over it
    double height = 0;
    bool keepsWithNext = false;
    int boxes = 0, boxesBehind = 0;
    bool hasBlank = false, hasMark = false, hasRule = false, isIndented = false;
    QString aside = {};
    QStringList fields = {};
};

struct Place {
    int page = 0, column = 0;
    double y = 0;
};

class SheetFlow {
public:
    SheetFlow(QPainter& painter, const Sheet& sheet, SheetLayout layout)
        : m_painter(painter)
        , m_sheet(sheet)
        , m_layout(layout)
        , m_size(painter.viewport().size())
        , m_mm(painter.device()->logicalDpiX() / 25.4)
        , m_side(4 * m_mm * std::max(layout.scale, 0.8)) {
        findBoxes();
        const int gaps = layout.columns - 1;
        m_columnWidth = (m_size.width() - gaps * columnGapMm * m_mm) / layout.columns;
        m_runningLines = plainLines(sheet.running, smallPoints, false, m_size.width() - 30 * m_mm);
        m_running = heightOf(m_runningLines) + 2 * m_mm;
        m_head = linesOf(sheet.head, m_size.width());
        m_body = linesOf(sheet.body, m_columnWidth);
        m_foot = linesOf(sheet.foot, m_size.width());
        flow();
    }

    int pages() const { return m_pages; }

    void paint(QPagedPaintDevice& device) {
        for (int page = 0; page < m_pages; ++page) {
            if (page > 0) device.newPage();
            paintRunning(page);
            if (page == 0) paintDown(m_head, m_running);
            for (std::size_t i = 0; i < m_body.size(); ++i)
                if (m_places[i].page == page)
                    paintLine(m_body[i], m_places[i].column * (m_columnWidth + columnGapMm * m_mm),
                              m_places[i].y, m_columnWidth);
            if (page + 1 == m_pages) paintDown(m_foot, m_size.height() - heightOf(m_foot));
        }
    }

private:
    /// As wide as the most boxes of one line that stand side by side.
    void findBoxes() {
        int most = 0, mostBehind = 0;
        bool hasBlanks = false;
        for (const SheetEntry& entry : m_sheet.body) {
            most = std::max(most, std::min(entry.boxes, boxesInRow));
            mostBehind = std::max(mostBehind, std::min(entry.boxesBehind, boxesInRow));
            hasBlanks = hasBlanks || entry.hasBlank;
        }
        const double step = m_side + 1.2 * m_mm;
        if (most > 0 || hasBlanks) m_before = std::max(most * step, hasBlanks ? (blankMm + 1) * m_mm : 0) + 1.5 * m_mm;
        m_behind = mostBehind * step;
    }

    double scaled(double points) const { return points * m_layout.scale; }

    double heightOf(double points, bool isBold = false) const {
        return QFontMetricsF(a4::textFont(points, isBold), m_painter.device()).lineSpacing() * 1.05;
    }
    static double heightOf(const std::vector<Line>& lines) {
        double height = 0;
        for (const Line& line : lines)
            height += line.above + line.height;
        return height;
    }

    double noteGap() const { return 3 * m_mm * m_layout.scale; }
    double widthOf(const QString& words, double points) const {
        return QFontMetricsF(a4::textFont(scaled(points)), m_painter.device()).horizontalAdvance(words);
    }

    Line lineOf(const QString& words, double points, bool isBold = false) const {
        Line line;
        line.words = words;
        line.points = points;
        line.isBold = isBold;
        line.height = heightOf(points, isBold);
        return line;
    }

    QStringList wrapped(const QString& words, double points, bool isBold, double width) const {
        return wrappedLines(words, a4::textFont(points, isBold), m_painter.device(), width);
    }

    std::vector<Line> linesOf(const std::vector<SheetEntry>& entries, double width) const {
        std::vector<Line> lines;
        for (const SheetEntry& entry : entries)
            for (Line& line : linesOf(entry, width))
                lines.push_back(std::move(line));
        return lines;
    }

    std::vector<Line> linesOf(const SheetEntry& entry, double width) const {
        switch (entry.kind) {
        case Kind::Title:
            return plainLines(entry.words, titlePoints, true, width);
        case Kind::Small:
            return plainLines(entry.words, smallPoints, false, width);
        case Kind::Heading:
            return headingLines(entry, width);
        case Kind::ToFill:
            return {fillLine(entry)};
        case Kind::Look:
        case Kind::Entry:
            break;
        }
        return entryLines(entry, width);
    }

    std::vector<Line> plainLines(const QString& words, double points, bool isBold, double width) const {
        std::vector<Line> lines;
        for (const QString& each : wrapped(words, points, isBold, width))
            lines.push_back(lineOf(each, points, isBold));
        return lines;
    }

    std::vector<Line> headingLines(const SheetEntry& entry, double width) const {
        std::vector<Line> lines;
        for (const QString& each : wrapped(entry.words, scaled(headingPoints), true, width - m_behind))
            lines.push_back(lineOf(each, scaled(headingPoints), true));
        for (Line& line : lines)
            line.keepsWithNext = true;
        lines.front().above = 2.6 * m_mm * m_layout.scale;
        lines.back().aside = entry.aside;
        lines.back().hasRule = true;
        lines.back().height += 1.2 * m_mm;
        return lines;
    }

    Line fillLine(const SheetEntry& entry) const {
        Line line = lineOf({}, notePoints);
        line.fields = entry.fields;
        line.above = 3.6 * m_mm;
        return line;
    }

    std::vector<Line> entryLines(const SheetEntry& entry, double width) const {
        const double text = width - m_before - (entry.boxesBehind > 0 ? m_behind + m_mm : 0);
        std::vector<Line> lines;
        for (const QString& each : wrapped(entry.words, scaled(linePoints), false, text))
            lines.push_back(lineOf(each, scaled(linePoints)));
        if (lines.size() == 1 && widthOf(entry.words, linePoints) + noteGap() + widthOf(entry.note, notePoints) <= text)
            lines.front().behind = entry.note;
        else
            for (const QString& each : wrapped(entry.note, scaled(notePoints), false, text))
                lines.push_back(lineOf(each, scaled(notePoints)));
        const int boxes = std::max(entry.boxes, entry.boxesBehind);
        while (static_cast<int>(lines.size()) * boxesInRow < boxes)
            lines.push_back(lineOf({}, scaled(linePoints)));
        for (std::size_t i = 0; i < lines.size(); ++i) {
            Line& line = lines[i];
            line.isIndented = true;
            const int before = static_cast<int>(i) * boxesInRow;
            line.boxes = std::clamp(entry.boxes - before, 0, boxesInRow);
            line.boxesBehind = std::clamp(entry.boxesBehind - before, 0, boxesInRow);
            if (line.boxes + line.boxesBehind > 0) line.height = std::max(line.height, m_side + 1.2 * m_mm);
        }
        lines.front().hasBlank = entry.hasBlank;
        lines.front().hasMark = entry.kind == Kind::Look;
        lines.front().above = 0.9 * m_mm * m_layout.scale;
        lines.front().keepsWithNext = lines.size() > 1;
        return lines;
    }

    /// What stands together: a heading with what follows, a name with its note's first line.
    double togetherFrom(std::size_t at) const {
        double height = 0;
        for (; at < m_body.size(); ++at) {
            height += m_body[at].above + m_body[at].height;
            if (!m_body[at].keepsWithNext) break;
        }
        return height;
    }

    void flow() {
        const double foot = heightOf(m_foot) + 2 * m_mm;
        const double top = m_running + heightOf(m_head) + 1.5 * m_mm;
        Place at{0, 0, top};
        for (std::size_t i = 0; i < m_body.size(); ++i) {
            const bool isBegun = at.y > (at.page == 0 ? top : m_running);
            if (isBegun && at.y + togetherFrom(i) > m_size.height() - foot) {
                const bool isLast = at.column + 1 == m_layout.columns;
                at = {at.page + isLast, isLast ? 0 : at.column + 1, 0};
                at.y = at.page == 0 ? top : m_running;
            }
            at.y += m_body[i].above;
            m_places.push_back(at);
            at.y += m_body[i].height;
        }
        m_pages = at.page + 1;
    }

    void paintRunning(int page) {
        paintDown(m_runningLines, 0);
        if (m_pages == 1) return;
        m_painter.setFont(a4::textFont(smallPoints));
        m_painter.drawText(QRectF(0, 0, m_size.width(), heightOf(smallPoints)), Qt::AlignRight | Qt::AlignTop,
                           SheetFlowText::tr("page %1 of %2").arg(page + 1).arg(m_pages));
    }

    void paintDown(const std::vector<Line>& lines, double y) {
        for (const Line& line : lines) {
            y += line.above;
            paintLine(line, 0, y, m_size.width());
            y += line.height;
        }
    }

    void paintLine(const Line& line, double x, double y, double width) {
        m_painter.setPen(Qt::black);
        m_painter.setFont(a4::textFont(line.points, line.isBold));
        const QFontMetricsF metrics(m_painter.font(), m_painter.device());
        const double text = x + (line.isIndented ? m_before : 0);
        m_painter.drawText(QPointF(text, y + metrics.ascent()), line.words);
        if (!line.aside.isEmpty())
            m_painter.drawText(QPointF(x + width - metrics.horizontalAdvance(line.aside), y + metrics.ascent()),
                               line.aside);
        if (!line.behind.isEmpty()) {
            m_painter.setFont(a4::textFont(scaled(notePoints)));
            m_painter.drawText(
                QPointF(text + metrics.horizontalAdvance(line.words) + noteGap(), y + metrics.ascent()),
                line.behind);
        }
        m_painter.setPen(QPen(Qt::black, 0.2 * m_mm));
        m_painter.setBrush(Qt::NoBrush);
        if (line.hasRule) {
            const double at = y + line.height - 0.8 * m_mm;
            m_painter.drawLine(QPointF(x, at), QPointF(x + width, at));
        }
        paintBoxes(line.boxes, text - 1.5 * m_mm, y);
        paintBoxes(line.boxesBehind, x + width, y);
        if (line.hasBlank) {
            const double at = y + metrics.ascent() + 0.6 * m_mm;
            m_painter.drawLine(QPointF(text - (blankMm + 1.5) * m_mm, at), QPointF(text - 1.5 * m_mm, at));
        }
        if (line.hasMark) {
            const double side = metrics.ascent() * 0.8;
            paintMark(m_painter, Mark::Look,
                      QRectF(text - side - 2 * m_mm, y + metrics.ascent() - side, side, side), Qt::black);
        }
        paintFields(line, x, y, width);
    }

    /// Their right edge at `right`.
    void paintBoxes(int count, double right, double y) {
        for (int i = 0; i < count; ++i)
            m_painter.drawRect(
                QRectF(right - m_side - i * (m_side + 1.2 * m_mm), y + 0.4 * m_mm, m_side, m_side));
    }

    void paintFields(const Line& line, double x, double y, double width) {
        if (line.fields.isEmpty()) return;
        const QFontMetricsF metrics(m_painter.font(), m_painter.device());
        const double step = width / static_cast<double>(line.fields.size());
        for (const QString& field : line.fields) {
            m_painter.drawText(QPointF(x, y + metrics.ascent()), field);
            const double from = x + metrics.horizontalAdvance(field) + 2 * m_mm;
            const double at = y + metrics.ascent() + 0.5 * m_mm;
            m_painter.drawLine(QPointF(from, at), QPointF(x + step - 3 * m_mm, at));
            x += step;
        }
    }

    QPainter& m_painter;
    const Sheet& m_sheet;
    SheetLayout m_layout;
    QSizeF m_size;
    double m_mm;   ///< dots
    double m_side; ///< of a box
    double m_before = 0, m_behind = 0; ///< room for boxes
    double m_columnWidth = 0, m_running = 0;
    std::vector<Line> m_runningLines, m_head, m_body, m_foot;
    std::vector<Place> m_places; ///< of the body's lines
    int m_pages = 1;
};

} // namespace

int pagesOf(QPainter& painter, const Sheet& sheet, SheetLayout layout) {
    return SheetFlow(painter, sheet, layout).pages();
}

bool paintSheet(QPagedPaintDevice& device, const Sheet& sheet,
                const std::function<SheetLayout(QPainter&)>& choose, int* pages) {
    return a4::paintPages(device, [&](QPainter& painter) {
        SheetFlow flow(painter, sheet, choose(painter));
        if (pages != nullptr) *pages = flow.pages();
        flow.paint(device);
    });
}

} // namespace app
