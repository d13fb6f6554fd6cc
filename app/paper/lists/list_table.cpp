#include "app/paper/lists/list_table.h"

#include "app/paper/csv_rows.h"
#include "app/paper/whole_file.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/register/item_name.h"

#include <QCoreApplication>

namespace app {
namespace {

struct ListTableText {
    Q_DECLARE_TR_FUNCTIONS(Lists)
};

QString messageLineOf(const ListLine& line) {
    QStringList words;
    for (const ListCell& cell : line.cells)
        if (!cell.words.isEmpty()) words << cell.words;
    const QString mark = line.mark ? QString(characterOf(*line.mark)) + QLatin1Char(' ') : QString();
    return mark + words.join(QStringLiteral(" · ")).replace(QChar::Nbsp, QLatin1Char(' '));
}

} // namespace

ListCell codeCell(const core::ItemName& item) {
    return {codeInWords(item.tag).replace(QLatin1Char(' '), QChar::Nbsp), text(item.tag)};
}

std::string csvOf(const ListTable& table) {
    std::vector<std::string> cells;
    for (const QString& heading : table.columns)
        cells.push_back(csvText(heading.toStdString()));
    std::string csv = csvRow(cells);
    for (const ListLine& line : table.lines) {
        cells.clear();
        for (const ListCell& cell : line.cells)
            cells.push_back(csvText(cell.data.toStdString()));
        csv += csvRow(cells);
    }
    return csv;
}

QString messageOf(const ListTable& table) {
    //: the head of a list that is sent to somebody: %1 the list, %2 the day, %3 the club
    QStringList lines{ListTableText::tr("%1, %2 (%3)").arg(table.title, inWords(table.day), table.club)};
    if (!table.summary.isEmpty()) lines << table.summary;
    for (const ListLine& line : table.lines)
        lines << messageLineOf(line);
    return lines.join(QLatin1Char('\n')) + QLatin1Char('\n');
}

core::Outcome writeListCsv(const std::filesystem::path& file, const ListTable& table) {
    return writeWholeFile(file, QByteArray::fromStdString(csvOf(table)), Paper::Sheet);
}

} // namespace app
