#include "app/gui/widgets/list_row.h"

#include "app/text/text.h"
#include "app/text/words.h"

#include <QStringList>

namespace app {

QString ListRow::aloud() const {
    if (!spoken.isEmpty()) return spoken;
    const QString most = isHeading         ? QStringLiteral("%1: %2").arg(title, aside)
                         : aside.isEmpty() ? QStringLiteral("%1: %2").arg(wordOf(mark), title)
                                           : QStringLiteral("%1: %2, %3").arg(wordOf(mark), title, aside);
    return remark.isEmpty() ? most : QStringLiteral("%1. %2").arg(most, remark);
}

ListRow headingRow(const QString& key, const QString& title, const QString& aside) {
    ListRow row;
    row.isHeading = true;
    row.key = key;
    row.title = title;
    row.aside = aside;
    return row;
}

ListRow plainRow(const QString& key, Mark mark, const QString& markWord, const QString& title,
                 const QString& remark, const core::ItemName& item) {
    ListRow row;
    row.key = key;
    row.mark = mark;
    row.title = title;
    row.remark = remark;
    row.remarkIsLook = mark == Mark::Look;
    row.code = text(item.id);
    row.aside = item.tag.empty() ? QString() : codeInWords(item.tag);
    row.asideIsCode = row.isPressable = !item.id.empty();
    QStringList parts{markWord, title, row.aside, remark};
    parts.removeAll(QString());
    row.spoken = parts.join(QStringLiteral(", "));
    return row;
}

void addSection(std::vector<ListRow>& all, const QString& key, const QString& title,
                const std::vector<ListRow>& rows, bool evenEmpty) {
    if (rows.empty() && !evenEmpty) return;
    all.push_back(headingRow(key, title, QString::number(rows.size())));
    all.insert(all.end(), rows.begin(), rows.end());
}

} // namespace app
