#include "app/gui/widgets/fill_box.h"

#include "app/gui/club/club_thread.h"
#include "app/text/text.h"
#include "core/club/club.h"
#include "core/club/club_register.h"

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

void fillWithPlaces(QComboBox& box, const QString& all, ClubThread& club) {
    club.ask(
        &box, [](core::Club& open) { return open.register_().places(); },
        [&box, all](const std::vector<std::string>& places) { fillBox(box, all, texts(places)); });
}

} // namespace app
