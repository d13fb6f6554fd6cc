#include "app/gui/widgets/plain_list_model.h"

#include "app/text/words.h"

#include <QStringList>

namespace app {

QVariant PlainListModel::data(const QModelIndex& index, int role) const {
    if (role == Qt::AccessibleTextRole && index.isValid())
        if (const CheckRow& row = rows()[index.row()]; !row.detail.isEmpty()) return row.detail;
    return CheckListModel::data(index, role);
}

CheckRow headingRow(const QString& key, const QString& title, const QString& aside) {
    CheckRow row;
    row.kind = CheckRow::Kind::Heading;
    row.key = key;
    row.title = title;
    row.aside = aside;
    return row;
}

CheckRow plainRow(const QString& key, Mark mark, const QString& markWord, const QString& title,
                  const QString& remark, const QString& code) {
    CheckRow row;
    row.key = key;
    row.mark = mark;
    row.title = title;
    row.remark = remark;
    row.remarkIsLook = mark == Mark::Look;
    row.code = code;
    row.aside = code.isEmpty() ? QString() : codeInWords(code.toStdString());
    row.asideIsCode = !code.isEmpty();
    QStringList aloud{markWord, title, row.aside, remark};
    aloud.removeAll(QString());
    row.detail = aloud.join(QStringLiteral(", "));
    return row;
}

} // namespace app
