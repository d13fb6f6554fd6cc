#include "app/desk/gear/shared/fill_box.h"

#include <QComboBox>
#include <QStringList>

#include <algorithm>

namespace app {

void fillBox(QComboBox& box, const QString& all, QStringList names) {
    names.removeDuplicates();
    names.removeAll(QString());
    names.sort();
    const QString before = box.currentData().toString();
    box.clear();
    box.addItem(all, QString());
    for (const QString& name : names)
        box.addItem(name, name);
    box.setCurrentIndex(std::max(0, box.findData(before)));
}

} // namespace app
