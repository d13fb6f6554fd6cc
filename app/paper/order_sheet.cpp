#include "app/paper/order_sheet.h"

#include "app/paper/a4_pdf.h"
#include "app/paper/whole_file.h"
#include "app/text/cautions.h"
#include "app/text/plan_sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QFont>
#include <QFontMetricsF>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>
#include <array>
#include <cmath>

namespace app {
namespace {

using a4::dotsPerMm, a4::pageHeight, a4::pageWidth;

constexpr double margin = 15, footHeight = 8, textHeight = 3.1, smallHeight = 2.4; // mm
constexpr double textWidth = pageWidth - 2 * margin;

struct OrderSheetText {
    Q_DECLARE_TR_FUNCTIONS(OrderSheet)
};

/// Where a column stands and how its text does.
struct Column {
    double width;
    Qt::AlignmentFlag align;
};
constexpr std::array<Column, 7> columns{{{44, Qt::AlignLeft},
                                         {50, Qt::AlignLeft},
                                         {17, Qt::AlignRight},
                                         {17, Qt::AlignRight},
                                         {20, Qt::AlignRight},
                                         {4, Qt::AlignLeft},
                                         {28, Qt::AlignLeft}}};

QStringList headings() {
    return {OrderSheetText::tr("kit"),       OrderSheetText::tr("order by"), OrderSheetText::tr("number"),
            OrderSheetText::tr("each"),      OrderSheetText::tr("cost"),     {},
            OrderSheetText::tr("ordered on")};
}

QStringList sheetCells(const core::ReplacementRow& row) {
    const QString day = inWords(*row.orderBy);
    const QString none = QStringLiteral("–");
    return {kitInWords(row),
            row.late ? OrderSheetText::tr("▲ late: %1").arg(day) : day,
            row.quantity ? QString::number(*row.quantity) : none,
            row.price ? moneyInWords(*row.price) : none,
            row.cost ? moneyInWords(*row.cost) : none,
            {},
            {}};
}

/// Why a number is what it is, beneath the row's kit.
QString smallPrintOf(const core::ReplacementRow& row, const core::ReplacementPlan& plan) {
    QString text = OrderSheetText::tr("%1; wanted %2, in stock %3")
                       .arg(shortInWords(row, plan.today))
                       .arg(row.wanted)
                       .arg(row.stock);
    if (const QString chances = chancesInWords(row, plan); !chances.isEmpty())
        text += QStringLiteral("; ") + chances;
    if (row.pack > 1) text += OrderSheetText::tr("; packs of %1").arg(row.pack);
    if (!row.quantity) text += QStringLiteral("; ") + quantityInWords(row);
    return text;
}

/// Writes from the top of a page down and turns pages.
class Sheets {
public:
    Sheets(QPdfWriter& writer, QString foot)
        : m_writer(writer)
        , m_painter(&writer)
        , m_foot(std::move(foot)) {
        startPage();
    }

    int count() const { return m_count; }

    bool hasRoom(double height) const { return m_y + height <= pageHeight - margin - footHeight; }

    void turn() {
        m_writer.newPage();
        startPage();
    }

    /// The top of the next `height`, on a new page when it does not fit on this one.
    double room(double height) {
        if (!hasRoom(height)) turn();
        const double top = m_y;
        m_y += height;
        return top;
    }

    void write(const QRectF& boxMm, const QString& text, double height, int flags, bool bold = false) {
        m_painter.setFont(fontOf(height, bold));
        m_painter.drawText(QRectF(boxMm.topLeft() * dotsPerMm, boxMm.size() * dotsPerMm), flags, text);
    }

    double heightOf(const QString& text, double widthMm, double height, bool bold = false) {
        const QFontMetricsF metrics(fontOf(height, bold), m_painter.device());
        const QRectF room(0, 0, widthMm * dotsPerMm, pageHeight * dotsPerMm);
        return metrics.boundingRect(room, Qt::TextWordWrap, text).height() / dotsPerMm;
    }

    /// Over the whole width, as high as it needs.
    void paragraph(const QString& text, double height, bool bold = false) {
        const double needed = heightOf(text, textWidth, height, bold);
        write({margin, room(needed + 1), textWidth, needed + 1}, text, height, Qt::TextWordWrap, bold);
    }

    void line(double y, double widthMm) {
        m_painter.setPen(QPen(Qt::black, widthMm * dotsPerMm));
        m_painter.drawLine(QPointF(margin, y) * dotsPerMm, QPointF(pageWidth - margin, y) * dotsPerMm);
    }

private:
    static QFont fontOf(double height, bool bold) {
        QFont font = a4::font(QStringLiteral("DejaVu Sans"), height);
        font.setBold(bold);
        return font;
    }

    void startPage() {
        m_y = margin;
        ++m_count;
        const QString number = OrderSheetText::tr("Sheet %1").arg(m_count);
        write({margin, pageHeight - margin - 4, textWidth, 4}, m_foot + QStringLiteral("  ·  ") + number,
              smallHeight, Qt::AlignLeft | Qt::AlignVCenter);
    }

    QPdfWriter& m_writer;
    QPainter m_painter;
    QString m_foot;
    int m_count = 0;
    double m_y = margin;
};

double heightOf(Sheets& sheets, const QStringList& cells) {
    double height = 0;
    for (std::size_t i = 0; i < columns.size(); ++i)
        height = std::max(height, sheets.heightOf(cells[static_cast<int>(i)], columns[i].width, textHeight));
    return height + 1.5;
}

void writeCells(Sheets& sheets, double top, const QStringList& cells, bool bold) {
    double x = margin;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        sheets.write({x, top, columns[i].width, pageHeight}, cells[static_cast<int>(i)], textHeight,
                     static_cast<int>(columns[i].align | Qt::AlignTop | Qt::TextWordWrap), bold);
        x += columns[i].width;
    }
}

void writeHeading(Sheets& sheets) {
    constexpr double height = 6;
    const double top = sheets.room(height);
    writeCells(sheets, top, headings(), true);
    sheets.line(top + height - 1, 0.4);
}

void writeRow(Sheets& sheets, const core::ReplacementRow& row, const core::ReplacementPlan& plan) {
    const QStringList cells = sheetCells(row);
    const QString small = smallPrintOf(row, plan);
    const double first = heightOf(sheets, cells);
    const double second = sheets.heightOf(small, textWidth, smallHeight) + 1;
    if (!sheets.hasRoom(first + second)) {
        sheets.turn();
        writeHeading(sheets);
    }
    const double top = sheets.room(first + second + 1);
    writeCells(sheets, top, cells, false);
    sheets.write({margin, top + first - 0.8, textWidth, second}, small, smallHeight, Qt::TextWordWrap);
    sheets.line(top + first + second - 0.5, 0.15);
}

void writeBudget(Sheets& sheets, const core::ReplacementPlan& plan) {
    sheets.room(4);
    for (const core::BudgetYear& year : plan.budget)
        sheets.paragraph(OrderSheetText::tr("Orders of %1").arg(budgetInWords(year)), textHeight, true);
}

int writeSheets(QPdfWriter& writer, const QString& club, const core::ReplacementPlan& plan) {
    Sheets sheets(writer, OrderSheetText::tr("%1, order sheet of %2").arg(club, inWords(plan.today)));
    sheets.paragraph(OrderSheetText::tr("Order sheet"), 6, true);
    sheets.paragraph(club, 4);
    sheets.paragraph(questionInWords(plan), textHeight);
    sheets.paragraph(reckoningInWords(plan), textHeight);
    sheets.room(3);
    if (plan.runsShort())
        writeHeading(sheets);
    else
        sheets.paragraph(OrderSheetText::tr("Nothing runs short until %1.").arg(inWords(plan.end)),
                         textHeight, true);
    for (const core::ReplacementRow& row : plan.rows)
        if (row.runsShort()) writeRow(sheets, row, plan);
    writeBudget(sheets, plan);
    sheets.room(3);
    sheets.paragraph(planCaution(), 2.6);
    sheets.paragraph(whoPrevails(), 2.6);
    return sheets.count();
}

} // namespace

core::Result<int> writeOrderSheet(const std::filesystem::path& file, const std::string& club,
                                  const core::ReplacementPlan& plan) {
    int count = 0;
    const QByteArray bytes = a4::pdf(OrderSheetText::tr("Order sheet"), [&](QPdfWriter& writer) {
        count = writeSheets(writer, text(club), plan);
    });
    const core::Outcome saved = writeWholeFile(file, bytes);
    if (!saved) return saved.error();
    return count;
}

} // namespace app
