#include "app/gui/gear/record/evidence_printout.h"

#include "app/gui/theme/marks.h"
#include "app/gui/theme/type_scale.h"
#include "app/paper/a4_pdf.h"
#include "app/text/cautions.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPagedPaintDevice>
#include <QPainter>

#include <algorithm>

namespace app {
namespace {

struct EvidencePrintoutText {
    Q_DECLARE_TR_FUNCTIONS(EvidencePrintout)
};

/// Writes from top to bottom in the device's dots, and goes to a new page where the foot begins.
class Writer {
public:
    Writer(QPagedPaintDevice& device, QPainter& painter, const EvidencePrintout& printout)
        : m_device(device)
        , m_painter(painter)
        , m_printout(printout)
        , m_page(painter.viewport().size())
        , m_mm(device.logicalDpiX() / 25.4) {}

    void write() {
        head();
        for (const ListRow& row : m_printout.rows)
            item(row);
        m_y += 3 * m_mm;
        for (const EvidencePhoto& each : m_printout.photos)
            photo(each);
        for (const QString& caution : {scanCaution(), whoPrevails()})
            paragraph(caution, font(8.5));
        foot();
    }

private:
    static QFont font(double points, bool bold = false) {
        QFont chosen = fontOf(TextRole::Remark);
        chosen.setPointSizeF(points);
        chosen.setBold(bold);
        return chosen;
    }

    static QFont codeFont(double points) {
        QFont chosen("DejaVu Sans Mono");
        chosen.setPointSizeF(points);
        return chosen;
    }

    double footTop() const { return m_page.height() - 30 * m_mm; }

    double heightOf(const QString& words, const QFont& chosen, double width) {
        m_painter.setFont(chosen);
        return m_painter.boundingRect(QRectF(0, 0, width, 10 * m_page.height()), Qt::TextWordWrap, words)
            .height();
    }

    void draw(const QRectF& box, const QString& words, const QFont& chosen, int align = Qt::AlignLeft) {
        m_painter.setFont(chosen);
        m_painter.setPen(Qt::black);
        m_painter.drawText(box, Qt::TextWordWrap | align, words);
    }

    void paragraph(const QString& words, const QFont& chosen, double gapMm = 0.6) {
        const double height = heightOf(words, chosen, m_page.width());
        makeRoom(height);
        draw({0, m_y, m_page.width(), height + m_mm}, words, chosen);
        m_y += height + gapMm * m_mm;
    }

    void head() {
        draw({0, 0, m_page.width(), 6 * m_mm}, m_printout.club, font(9), Qt::AlignRight);
        m_y = 0;
        paragraph(EvidencePrintoutText::tr("%1 · what was aboard").arg(m_printout.boat), font(20, true));
        paragraph(m_printout.answer, font(13, true), 2);
        for (const QString& line : m_printout.more)
            paragraph(line, font(10.5));
        m_y += 3 * m_mm;
    }

    void item(const ListRow& row) {
        const double side = 3 * m_mm, indent = side + 2.2 * m_mm, codeWidth = 36 * m_mm;
        const double width = m_page.width() - indent;
        const double title = heightOf(row.title, font(11), width - codeWidth);
        const double remark = heightOf(row.remark, font(9), width);
        makeRoom(title + remark + m_mm);
        paintMark(m_painter, row.mark, {0, m_y + 0.8 * m_mm, side, side}, Qt::black);
        draw({indent, m_y, width - codeWidth, title + m_mm}, row.title, font(11));
        draw({m_page.width() - codeWidth, m_y, codeWidth, title + m_mm}, row.aside, codeFont(9.5),
             Qt::AlignRight);
        draw({indent, m_y + title, width, remark + m_mm}, row.remark, font(9));
        m_y += title + remark + 1.4 * m_mm;
    }

    /// At the left, at most 60 mm wide and 45 mm high; what it belongs to beside it.
    void photo(const EvidencePhoto& photo) {
        const QSizeF most(60 * m_mm, 45 * m_mm);
        const QSizeF size = photo.image.isNull()
                                ? QSizeF(most.width(), 0)
                                : QSizeF(photo.image.size()).scaled(most, Qt::KeepAspectRatio);
        const QString remark =
            photo.image.isNull()
                ? EvidencePrintoutText::tr("%1. The photograph is not the one that was recorded.")
                      .arg(photo.remark)
                : photo.remark;
        const double left = most.width() + 4 * m_mm, width = m_page.width() - left;
        const double title = heightOf(photo.title, font(11), width);
        const double whole = std::max(size.height(), title + heightOf(remark, font(9), width));
        makeRoom(whole);
        if (!photo.image.isNull()) m_painter.drawImage(QRectF(QPointF(0, m_y), size), photo.image);
        draw({left, m_y, width, title + m_mm}, photo.title, font(11));
        draw({left, m_y + title, width, whole}, remark, font(9));
        m_y += whole + 3 * m_mm;
    }

    void makeRoom(double height) {
        if (m_y + height <= footTop()) return;
        foot();
        m_device.newPage();
        ++m_number;
        m_y = 0;
        paragraph(EvidencePrintoutText::tr("%1 at %2").arg(m_printout.boat, m_printout.on), font(11, true),
                  3);
    }

    void foot() {
        double y = footTop() + 10 * m_mm;
        m_painter.setPen(QPen(Qt::black, 0.25 * m_mm));
        m_painter.drawLine(QPointF(0, y), QPointF(m_page.width() * 0.47, y));
        y += 0.6 * m_mm;
        draw({0, y, m_page.width(), 5 * m_mm}, EvidencePrintoutText::tr("taken from the record by, day"),
             font(9));
        draw({0, y, m_page.width(), 5 * m_mm}, EvidencePrintoutText::tr("page %1").arg(m_number), font(9),
             Qt::AlignRight);
        y += 5.5 * m_mm;
        for (const QString& line : m_printout.proof) {
            const double height = heightOf(line, codeFont(6.5), m_page.width());
            draw({0, y, m_page.width(), height + m_mm}, line, codeFont(6.5));
            y += height;
        }
    }

    QPagedPaintDevice& m_device;
    QPainter& m_painter;
    const EvidencePrintout& m_printout;
    QSizeF m_page;
    double m_mm; ///< dots
    double m_y = 0;
    int m_number = 1;
};

} // namespace

bool paintEvidence(QPagedPaintDevice& device, const EvidencePrintout& printout) {
    return a4::paintPages(device, [&](QPainter& painter) { Writer(device, painter, printout).write(); });
}

bool saveEvidence(const QString& file, const EvidencePrintout& printout) {
    return a4::savePages(file, printout.boat,
                         [&](QPagedPaintDevice& device) { return paintEvidence(device, printout); });
}

} // namespace app
