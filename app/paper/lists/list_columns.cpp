#include "app/paper/lists/list_columns.h"

#include "app/paper/a4_pdf.h"
#include "app/paper/lists/list_table.h"

#include <QFontMetricsF>
#include <QTextLayout>

#include <algorithm>
#include <numeric>

namespace app {
namespace {

constexpr double widestWordMm = 45; ///< a longer one is wrapped

void widen(ColumnNeed& need, const QString& text, const QFontMetricsF& metrics, double widestWord) {
    if (text.isEmpty()) return;
    const double all = metrics.horizontalAdvance(text);
    need.natural = std::max(need.natural, all);
    if (all <= need.least) return;
    for (const QString& word : text.split(QLatin1Char(' ')))
        need.least = std::max(need.least, std::min(metrics.horizontalAdvance(word), widestWord));
}

template <class Value>
double sumOf(const std::vector<ColumnNeed>& needs, Value value) {
    return std::accumulate(needs.begin(), needs.end(), 0.0,
                           [&](double sum, const ColumnNeed& need) { return sum + value(need); });
}

double gapsOf(const std::vector<ColumnNeed>& needs, double gap) {
    return needs.empty() ? 0 : gap * static_cast<double>(needs.size() - 1);
}

} // namespace

std::vector<ColumnNeed> columnNeeds(const ListTable& table, double points, QPaintDevice* device) {
    const QFontMetricsF plain(a4::textFont(points), device);
    const QFontMetricsF bold(a4::textFont(points, true), device);
    const double widestWord = widestWordMm * device->logicalDpiX() / 25.4;
    std::vector<ColumnNeed> needs(static_cast<std::size_t>(table.columns.size()));
    for (std::size_t i = 0; i < needs.size(); ++i) {
        widen(needs[i], table.columns[static_cast<int>(i)], bold, widestWord);
        for (const ListLine& line : table.lines)
            widen(needs[i], line.cells[i].words, plain, widestWord);
        needs[i].natural *= 1.01; // a line that is just as wide as its place is not wrapped
        needs[i].least *= 1.01;
    }
    return needs;
}

double naturalWidthOf(const std::vector<ColumnNeed>& needs, double gap) {
    return sumOf(needs, [](const ColumnNeed& need) { return need.natural; }) + gapsOf(needs, gap);
}

std::vector<double> columnWidths(const std::vector<ColumnNeed>& needs, double gap, double room) {
    const double forText = room - gapsOf(needs, gap);
    const double least = sumOf(needs, [](const ColumnNeed& need) { return need.least; });
    const double squeezed = std::min(1.0, least > 0 ? forText / least : 1.0);
    const auto widthAt = [&](const ColumnNeed& need, double level) {
        return std::min(need.natural, std::max(need.least * squeezed, level));
    };
    double low = 0, high = room; // the level to which wide columns are cut
    for (int step = 0; step < 50; ++step) {
        const double level = (low + high) / 2;
        const double sum = sumOf(needs, [&](const ColumnNeed& need) { return widthAt(need, level); });
        (sum <= forText ? low : high) = level;
    }
    std::vector<double> widths;
    for (const ColumnNeed& need : needs)
        widths.push_back(widthAt(need, low));
    return widths;
}

QStringList wrappedLines(const QString& text, const QFont& font, QPaintDevice* device, double width) {
    if (text.isEmpty()) return {};
    if (QFontMetricsF(font, device).horizontalAdvance(text) <= width) return {text};
    QTextLayout layout(text, font, device);
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.beginLayout();
    QStringList lines;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        lines << text.mid(line.textStart(), line.textLength()).trimmed();
    }
    layout.endLayout();
    return lines;
}

} // namespace app
