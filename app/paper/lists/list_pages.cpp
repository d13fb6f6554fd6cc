#include "app/paper/lists/list_table.h"

#include "app/paper/a4_pdf.h"
#include "app/paper/lists/list_columns.h"
#include "app/paper/whole_file.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>

namespace app {
namespace {

struct ListPagesText {
    Q_DECLARE_TR_FUNCTIONS(Lists)
};

constexpr double points = 9, smallPoints = 8, titlePoints = 17, summaryPoints = 11;
constexpr double gapMm = 3, markMm = 2.9, rowGapMm = 1.6, numberMm = 34;

/// Lines of a row of the list that stand on one page; a row that is higher than a page goes on on the next.
struct Piece {
    std::size_t row;
    int from, to; ///< lines
    double y;
};

struct Page {
    std::vector<Piece> pieces;
    double foot = 0; ///< where its last row ends
    bool hasHeading = false;
};

/// Lays the list out in the device's own dots, then paints page by page.
class ListPages {
public:
    ListPages(QPainter& painter, const ListTable& table)
        : m_painter(painter)
        , m_table(table)
        , m_size(painter.viewport().size())
        , m_mm(painter.device()->logicalDpiX() / 25.4)
        , m_markWidth(hasMarks() ? (markMm + 1.6) * m_mm : 0)
        , m_widths(columnWidths(columnNeeds(table, points, painter.device()), gapMm * m_mm,
                                m_size.width() - m_markWidth)) {
        m_head = wrapped(ListPagesText::tr("%1 · %2 · %3").arg(table.club, table.title, inWords(table.day)),
                         a4::textFont(smallPoints), m_size.width() - numberMm * m_mm);
        for (int i = 0; i < table.columns.size(); ++i)
            m_headings.push_back(
                wrapped(table.columns[i], a4::textFont(points, true), m_widths[static_cast<std::size_t>(i)]));
        for (const ListLine& line : table.lines) {
            m_rows.emplace_back();
            for (std::size_t i = 0; i < line.cells.size(); ++i)
                m_rows.back().push_back(wrapped(line.cells[i].words, a4::textFont(points), m_widths[i]));
        }
        paginate();
    }

    int count() const { return static_cast<int>(m_pages.size()); }

    void paint(QPagedPaintDevice& device) {
        for (std::size_t page = 0; page < m_pages.size(); ++page) {
            if (page > 0) device.newPage();
            paintPage(page);
        }
    }

private:
    using Row = std::vector<QStringList>; ///< the lines of each cell

    bool hasMarks() const {
        return std::any_of(m_table.lines.begin(), m_table.lines.end(),
                           [](const ListLine& line) { return line.mark.has_value(); });
    }

    QStringList wrapped(const QString& text, const QFont& font, double width) const {
        return wrappedLines(text, font, m_painter.device(), width);
    }

    double lineOf(double textPoints) const {
        return QFontMetricsF(a4::textFont(textPoints), m_painter.device()).lineSpacing() * 1.05;
    }

    static int heightOf(const Row& row) {
        int lines = 1;
        for (const QStringList& cell : row)
            lines = std::max(lines, static_cast<int>(cell.size()));
        return lines;
    }

    double headHeight() const { return static_cast<double>(m_head.size()) * lineOf(smallPoints) + 3 * m_mm; }
    double headingHeight() const { return heightOf(m_headings) * lineOf(points) + 2 * m_mm; }

    void beginPage(double y) {
        m_pages.emplace_back();
        m_y = y;
        if (!m_rows.empty()) {
            m_pages.back().hasHeading = true;
            m_y += headingHeight();
        }
        m_pages.back().foot = m_y;
    }

    /// How many lines of text still go on the page.
    int linesLeft() const {
        return static_cast<int>((m_size.height() - m_y - rowGapMm * m_mm) / lineOf(points));
    }

    void add(std::size_t row, int from, int to) {
        m_pages.back().pieces.push_back({row, from, to, m_y});
        m_y += (to - from) * lineOf(points) + rowGapMm * m_mm;
        m_pages.back().foot = m_y;
    }

    void paginate() {
        m_title = wrapped(m_table.title, a4::textFont(titlePoints, true), m_size.width());
        m_summary = wrapped(m_table.summary, a4::textFont(summaryPoints), m_size.width());
        beginPage(headHeight() + static_cast<double>(m_title.size()) * lineOf(titlePoints) +
                  static_cast<double>(m_summary.size()) * lineOf(summaryPoints) + 3 * m_mm);
        for (std::size_t row = 0; row < m_rows.size(); ++row) {
            const int lines = heightOf(m_rows[row]);
            if (lines > linesLeft() && !m_pages.back().pieces.empty()) beginPage(headHeight());
            int done = 0;
            while (lines - done > linesLeft()) {
                const int here = std::max(1, linesLeft());
                add(row, done, done + here);
                done += here;
                beginPage(headHeight());
            }
            add(row, done, lines);
        }
        for (const QString& caution : m_table.cautions)
            m_cautions += wrapped(caution, a4::textFont(smallPoints), m_size.width());
        if (m_cautions.isEmpty()) return;
        const double needed = static_cast<double>(m_cautions.size()) * lineOf(smallPoints) + 3 * m_mm;
        if (m_y + needed > m_size.height()) {
            m_pages.emplace_back();
            m_pages.back().foot = headHeight();
        }
    }

    void write(const QStringList& lines, int from, int to, QPointF at, double textPoints, bool bold = false) {
        const QFont font = a4::textFont(textPoints, bold);
        m_painter.setFont(font);
        double y = at.y() + QFontMetricsF(font, m_painter.device()).ascent();
        for (int i = from; i < std::min(to, static_cast<int>(lines.size())); ++i) {
            m_painter.drawText(QPointF(at.x(), y), lines[i]);
            y += lineOf(textPoints);
        }
    }
    void write(const QStringList& lines, QPointF at, double textPoints, bool bold = false) {
        write(lines, 0, static_cast<int>(lines.size()), at, textPoints, bold);
    }

    void rule(double y, double widthMm) {
        m_painter.setPen(QPen(Qt::black, widthMm * m_mm));
        m_painter.drawLine(QPointF(0, y), QPointF(m_size.width(), y));
    }

    void writeCells(const Row& row, int from, int to, double y, bool bold) {
        double x = m_markWidth;
        for (std::size_t i = 0; i < row.size(); ++i) {
            write(row[i], from, to, {x, y}, points, bold);
            x += m_widths[i] + gapMm * m_mm;
        }
    }

    void paintPage(std::size_t number) {
        const Page& page = m_pages[number];
        m_painter.setPen(Qt::black);
        write(m_head, {0, 0}, smallPoints);
        m_painter.setFont(a4::textFont(smallPoints));
        m_painter.drawText(QRectF(0, 0, m_size.width(), lineOf(smallPoints)), Qt::AlignRight | Qt::AlignTop,
                           ListPagesText::tr("page %1 of %2").arg(number + 1).arg(m_pages.size()));
        double y = headHeight();
        if (number == 0) {
            write(m_title, {0, y}, titlePoints, true);
            y += static_cast<double>(m_title.size()) * lineOf(titlePoints);
            write(m_summary, {0, y}, summaryPoints);
            y += static_cast<double>(m_summary.size()) * lineOf(summaryPoints) + 3 * m_mm;
        }
        if (page.hasHeading) {
            writeCells(m_headings, 0, heightOf(m_headings), y, true);
            rule(y + headingHeight() - 1.4 * m_mm, 0.4);
        }
        for (const Piece& piece : page.pieces)
            paintPiece(piece);
        if (number + 1 == m_pages.size()) write(m_cautions, {0, page.foot + 3 * m_mm}, smallPoints);
    }

    void paintPiece(const Piece& piece) {
        const auto& mark = m_table.lines[piece.row].mark;
        const double line = lineOf(points), side = markMm * m_mm;
        if (mark && piece.from == 0)
            paintMark(m_painter, *mark, QRectF(0, piece.y + (line - side) / 2, side, side), Qt::black);
        m_painter.setPen(Qt::black);
        writeCells(m_rows[piece.row], piece.from, piece.to, piece.y, false);
        rule(piece.y + (piece.to - piece.from) * line + 0.6 * m_mm, 0.12);
    }

    QPainter& m_painter;
    const ListTable& m_table;
    QSizeF m_size;
    double m_mm; ///< dots
    double m_markWidth;
    std::vector<double> m_widths;
    QStringList m_head, m_title, m_summary, m_cautions; ///< in lines
    Row m_headings;
    std::vector<Row> m_rows;
    std::vector<Page> m_pages;
    double m_y = 0;
};

/// Upright where its columns have room, or would not have it turned either.
a4::Turned turnedFor(QPagedPaintDevice& device, const ListTable& table) {
    const double mm = device.logicalDpiX() / 25.4;
    const double needed = naturalWidthOf(columnNeeds(table, points, &device), gapMm * mm) + 6 * mm;
    return needed > (a4::pageWidth - 2 * a4::sideMargin) * mm ? a4::Turned::Yes : a4::Turned::No;
}

} // namespace

bool paintList(QPagedPaintDevice& device, const ListTable& table, int* pages) {
    return a4::paintPages(
        device,
        [&](QPainter& painter) {
            ListPages list(painter, table);
            if (pages != nullptr) *pages = list.count();
            list.paint(device);
        },
        turnedFor(device, table));
}

core::Result<int> writeListPdf(const std::filesystem::path& file, const ListTable& table) {
    int pages = 0;
    const QByteArray bytes =
        a4::pdf(table.title, [&](QPdfWriter& writer) { paintList(writer, table, &pages); });
    const core::Outcome saved = writeWholeFile(file, bytes, Paper::Sheet);
    if (!saved) return saved.error();
    return pages;
}

} // namespace app
