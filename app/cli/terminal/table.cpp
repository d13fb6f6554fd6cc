#include "app/cli/terminal/terminal.h"

#include <algorithm>

namespace app {
namespace {

/// Cells that a text takes: characters above U+FFFF are two QChars and one cell.
int cellsOf(const QString& text) {
    return static_cast<int>(text.toUcs4().size());
}

QString rowOf(const QStringList& cells, const std::vector<int>& widths) {
    QString row;
    for (int i = 0; i < cells.size(); ++i) {
        row += QStringLiteral("  ") + cells[i];
        if (i + 1 < cells.size())
            row += QString(widths[static_cast<std::size_t>(i)] - cellsOf(cells[i]), QLatin1Char(' '));
    }
    while (row.endsWith(QLatin1Char(' ')))
        row.chop(1);
    return row + QLatin1Char('\n');
}

} // namespace

QString tableOf(const QStringList& heading, const std::vector<QStringList>& rows) {
    if (rows.empty()) return {};
    std::vector<int> widths(static_cast<std::size_t>(heading.size()), 0);
    const auto widen = [&](const QStringList& cells) {
        for (int i = 0; i < cells.size(); ++i) {
            int& width = widths[static_cast<std::size_t>(i)];
            width = std::max(width, cellsOf(cells[i]));
        }
    };
    widen(heading);
    std::for_each(rows.begin(), rows.end(), widen);
    QString table = rowOf(heading, widths);
    for (const QStringList& cells : rows)
        table += rowOf(cells, widths);
    return table;
}

} // namespace app
