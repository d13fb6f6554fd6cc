#include "app/paper/check_list/sheet_flow.h"

#include "app/paper/a4_pdf.h"
#include "app/paper/check_list/sheet_lines.h"
#include "app/paper/marks.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPagedPaintDevice>
#include <QPainter>

#include <algorithm>

namespace app {
namespace {

struct SheetFlowText {
    Q_DECLARE_TR_FUNCTIONS(Lists)
};

constexpr double columnGapMm = 8;

struct Place {
    int page = 0, column = 0;
    double y = 0;
};

class SheetFlow {
public:
    SheetFlow(QPainter& painter, const Sheet& sheet, SheetLayout layout)
        : m_painter(painter)
        , m_layout(layout)
        , m_size(painter.viewport().size())
        , m_lines(sheet, painter.device(), layout.scale)
        , m_mm(m_lines.mm()) {
        const int gaps = layout.columns - 1;
        m_columnWidth = (m_size.width() - gaps * columnGapMm * m_mm) / layout.columns;
        m_runningLines =
            m_lines.plain(sheet.running, SheetLines::smallPoints, false, m_size.width() - 30 * m_mm);
        m_running = SheetLines::heightOf(m_runningLines) + 2 * m_mm;
        m_head = m_lines.of(sheet.head, m_size.width());
        m_body = m_lines.of(sheet.body, m_columnWidth);
        m_foot = m_lines.of(sheet.foot, m_size.width());
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
            if (page + 1 == m_pages) paintDown(m_foot, m_size.height() - SheetLines::heightOf(m_foot));
        }
    }

private:
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
        const double foot = SheetLines::heightOf(m_foot) + 2 * m_mm;
        const double top = m_running + SheetLines::heightOf(m_head) + 1.5 * m_mm;
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
        m_painter.setFont(a4::textFont(SheetLines::smallPoints));
        m_painter.drawText(QRectF(0, 0, m_size.width(),
                                  QFontMetricsF(m_painter.font(), m_painter.device()).lineSpacing() * 1.2),
                           Qt::AlignRight | Qt::AlignTop,
                           SheetFlowText::tr("page %1 of %2").arg(page + 1).arg(m_pages));
    }

    void paintDown(const std::vector<SheetLine>& lines, double y) {
        for (const SheetLine& line : lines) {
            y += line.above;
            paintLine(line, 0, y, m_size.width());
            y += line.height;
        }
    }

    void paintLine(const SheetLine& line, double x, double y, double width) {
        m_painter.setPen(Qt::black);
        m_painter.setFont(a4::textFont(line.points, line.isBold));
        const QFontMetricsF metrics(m_painter.font(), m_painter.device());
        const double text = x + (line.isIndented ? m_lines.before() : 0);
        m_painter.drawText(QPointF(text, y + metrics.ascent()), line.words);
        if (!line.aside.isEmpty())
            m_painter.drawText(
                QPointF(x + width - metrics.horizontalAdvance(line.aside), y + metrics.ascent()), line.aside);
        if (!line.behind.isEmpty()) {
            m_painter.setFont(a4::textFont(m_lines.noteSize()));
            m_painter.drawText(QPointF(text + metrics.horizontalAdvance(line.words) + m_lines.noteGap(),
                                       y + metrics.ascent()),
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
            m_painter.drawLine(QPointF(text - (SheetLines::blankMm + 1.5) * m_mm, at),
                               QPointF(text - 1.5 * m_mm, at));
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
            m_painter.drawRect(QRectF(right - m_lines.boxSide() - i * (m_lines.boxSide() + 1.2 * m_mm),
                                      y + 0.4 * m_mm, m_lines.boxSide(), m_lines.boxSide()));
    }

    void paintFields(const SheetLine& line, double x, double y, double width) {
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
    SheetLayout m_layout;
    QSizeF m_size;
    SheetLines m_lines;
    double m_mm; ///< dots
    double m_columnWidth = 0, m_running = 0;
    std::vector<SheetLine> m_runningLines, m_head, m_body, m_foot;
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
