#include "app/gui/printout/shown_list.h"

#include <QCoreApplication>

namespace app {
namespace {

struct ShownListText {
    Q_DECLARE_TR_FUNCTIONS(Lists)
};

ListCell asideOf(const ListRow& row) {
    if (!row.asideIsCode) return row.aside;
    const QString grouped = QString(row.aside).replace(QLatin1Char(' '), QChar::Nbsp); // not wrapped
    return {grouped, QString(row.aside).remove(QLatin1Char(' '))};
}

} // namespace

ListTable tableOf(const QString& title, const QString& summary, const std::vector<ListRow>& rows) {
    ListTable table;
    table.title = title;
    table.summary = summary;
    table.columns = {ShownListText::tr("part"), ShownListText::tr("what"), ShownListText::tr("tag or number"),
                     ShownListText::tr("remark")};
    QString part;
    for (const ListRow& row : rows) {
        if (row.isHeading)
            part = row.title;
        else
            table.lines.push_back({row.mark, {part, row.title, asideOf(row), row.remark}});
    }
    return table;
}

} // namespace app
