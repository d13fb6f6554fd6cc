#include "app/gui/printout/check_printout.h"

#include "app/gui/theme/marks.h"
#include "app/gui/theme/type_scale.h"
#include "app/paper/a4_pdf.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPagedPaintDevice>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace app {
namespace {

struct CheckPrintoutText {
    Q_DECLARE_TR_FUNCTIONS(CheckPrintout)
};

/// Lays the printout out in the device's own dots, and paints it unless it only measures.
class PrintoutPainter {
public:
    PrintoutPainter(QPainter& painter, const CheckPrintout& printout, QSizeF page, double scale)
        : m_painter(painter)
        , m_printout(printout)
        , m_page(page)
        , m_scale(scale)
        , m_mm(painter.device()->logicalDpiX() / 25.4)
        , m_gap(2.2 * m_mm) {}

    /// The height used, without the foot.
    double layOut(bool paint) {
        m_paint = paint;
        double y = head(0);
        const double left = column(0, y, m_page.width() * 0.56, false);
        const double right = column(m_page.width() * 0.6, y, m_page.width() * 0.4, true);
        y = std::max(left, right) + m_gap;
        for (const QString& caution : m_printout.cautions)
            y = text(0, y, m_page.width(), caution, font(8));
        return y;
    }

    bool fits() { return layOut(false) <= m_page.height() - footHeight(); }

    double footHeight() const { return 24 * m_mm; }

    void paintFoot() {
        m_paint = true;
        double y = m_page.height() - footHeight() + 12 * m_mm;
        const double half = m_page.width() * 0.47;
        m_painter.setPen(QPen(Qt::black, 0.25 * m_mm));
        m_painter.drawLine(QPointF(0, y), QPointF(half, y));
        m_painter.drawLine(QPointF(m_page.width() - half, y), QPointF(m_page.width(), y));
        text(0, y + 0.6 * m_mm, half, CheckPrintoutText::tr("signature: %1").arg(m_printout.signedBy),
             fixedFont(9));
        text(m_page.width() - half, y + 0.6 * m_mm, half, CheckPrintoutText::tr("person in charge"),
             fixedFont(9));
        y += 6 * m_mm;
        QFont small("DejaVu Sans Mono");
        small.setPointSizeF(6.5);
        text(0, y, m_page.width(),
             CheckPrintoutText::tr("record %1 · %2").arg(m_printout.recordHead, m_printout.atIso), small);
    }

private:
    QFont fixedFont(double points, bool bold = false) const {
        QFont font = fontOf(TextRole::Remark);
        font.setPointSizeF(points);
        font.setBold(bold);
        return font;
    }
    QFont font(double points, bool bold = false) const { return fixedFont(points * m_scale, bold); }

    QFont codeFont() const {
        QFont font("DejaVu Sans Mono");
        font.setPointSizeF(8.5 * m_scale);
        return font;
    }

    /// One paragraph; gives the y beneath it.
    double text(double x, double y, double width, const QString& words, const QFont& font,
                int align = Qt::AlignLeft) {
        m_painter.setFont(font);
        const QRectF box(x, y, width, 4 * m_page.height());
        const QRectF used = m_painter.boundingRect(box, Qt::TextWordWrap | align, words);
        m_painter.setPen(Qt::black);
        if (m_paint) m_painter.drawText(box, Qt::TextWordWrap | align, words);
        return y + used.height();
    }

    double head(double y) {
        const double width = m_page.width();
        text(0, y, width, m_printout.club, font(9), Qt::AlignRight);
        y = text(0, y, width, CheckPrintoutText::tr("%1 · %2").arg(m_printout.boat, m_printout.phase),
                 font(20, true));
        y = text(0, y, width, aboardAndWhen(), font(11)) + m_gap;
        const double side = 4.0 * m_mm * m_scale;
        if (m_paint)
            paintMark(m_painter, m_printout.complete ? Mark::Found : Mark::Look,
                      QRectF(0, y + 1.2 * m_mm * m_scale, side, side), Qt::black);
        y = text(side + m_gap, y, width - side - m_gap, m_printout.outcome, font(14, true));
        if (!m_printout.urgent.isEmpty())
            y = text(side + m_gap, y, width - side - m_gap,
                     CheckPrintoutText::tr("Urgent: %1").arg(m_printout.urgent), font(12, true));
        for (const QString& entry : m_printout.log)
            y = text(side + m_gap, y, width - side - m_gap,
                     CheckPrintoutText::tr("log entry open: %1").arg(entry), font(10));
        if (!m_printout.trip.isEmpty())
            y = text(side + m_gap, y, width - side - m_gap,
                     CheckPrintoutText::tr("trip: %1").arg(m_printout.trip), font(10));
        return y + m_gap;
    }

    QString aboardAndWhen() const {
        QStringList parts{m_printout.at};
        if (!m_printout.aboard.isEmpty())
            parts << CheckPrintoutText::tr("driver %1").arg(m_printout.aboard.first());
        if (m_printout.aboard.size() > 1)
            parts << CheckPrintoutText::tr("crew %1").arg(
                m_printout.aboard.mid(1).join(CheckPrintoutText::tr(", ")));
        parts << CheckPrintoutText::tr("signed by %1").arg(m_printout.signedBy);
        return parts.join(CheckPrintoutText::tr(" · "));
    }

    double column(double x, double y, double width, bool points) {
        for (const CheckRow& row : m_printout.rows)
            if ((row.section == CheckRow::Section::Points) == points) y = line(x, y, width, row);
        return y;
    }

    double line(double x, double y, double width, const CheckRow& row) {
        if (row.isHeading) {
            y += m_gap;
            text(x, y, width, row.aside, font(10, true), Qt::AlignRight);
            y = text(x, y, width, row.title, font(10, true));
            m_painter.setPen(QPen(Qt::black, 0.2 * m_mm));
            if (m_paint) m_painter.drawLine(QPointF(x, y), QPointF(x + width, y));
            return y + 0.7 * m_mm;
        }
        const double side = 2.9 * m_mm * m_scale;
        const double indent = side + m_gap;
        if (m_paint)
            paintMark(m_painter, row.mark, QRectF(x, y + 0.8 * m_mm * m_scale, side, side), Qt::black);
        const QFont asideFont = row.asideIsCode ? codeFont() : font(10);
        const double asideWidth = QFontMetricsF(asideFont, m_painter.device()).horizontalAdvance(row.aside);
        text(x, y, width, row.aside, asideFont, Qt::AlignRight);
        y = text(x + indent, y, width - indent - asideWidth - m_gap, row.title, font(10.5));
        if (!row.remark.isEmpty()) y = text(x + indent, y, width - indent, row.remark, font(8.5));
        return y + 0.5 * m_mm;
    }

    QPainter& m_painter;
    const CheckPrintout& m_printout;
    QSizeF m_page;
    double m_scale;
    double m_mm; ///< dots
    double m_gap;
    bool m_paint = false;
};

} // namespace

bool paintPrintout(QPagedPaintDevice& device, const CheckPrintout& printout) {
    return a4::paintPages(device, [&](QPainter& painter) {
        const QSizeF page = painter.viewport().size();
        double scale = 1.0;
        while (scale > 0.4 && !PrintoutPainter(painter, printout, page, scale).fits())
            scale *= 0.95;
        PrintoutPainter fitting(painter, printout, page, scale);
        fitting.layOut(true);
        fitting.paintFoot();
    });
}

bool savePrintout(const QString& file, const CheckPrintout& printout) {
    return a4::savePages(file, printout.boat,
                         [&](QPagedPaintDevice& device) { return paintPrintout(device, printout); });
}

} // namespace app
