#include "app/paper/check_list/check_list.h"

#include "app/text/text.h"
#include "app/text/words.h"
#include "core/check/phase.h"
#include "core/club/club.h"
#include "core/club/club_log.h"
#include "core/club/club_manifests.h"
#include "core/club/club_register.h"
#include "core/register/manifest_record.h"

#include <QCoreApplication>

#include <algorithm>

namespace app {
namespace {

struct CheckListText {
    Q_DECLARE_TR_FUNCTIONS(CheckList)
};

QString entryInWords(const core::LogEntry& entry) {
    const QString day = inWords(entry.day);
    if (entry.item.tag.empty()) return CheckListText::tr("%1: %2").arg(day, text(entry.text));
    return CheckListText::tr("%1, %2: %3").arg(day, codeInWords(entry.item.tag), text(entry.text));
}

bool isWornType(const std::vector<core::KitType>& kitTypes, const std::string& name) {
    return std::any_of(kitTypes.begin(), kitTypes.end(),
                       [&](const core::KitType& each) { return each.name == name && each.worn; });
}

void addManifest(CheckList& list, const core::Manifest& manifest,
                 const std::vector<core::KitType>& kitTypes) {
    for (const core::AskedLine& asked : manifest.lines) {
        list.differs = list.differs || asked.difference != core::Difference::None;
        if (asked.line.quantity > 0)
            list.lines.push_back({asked.line, isWornType(kitTypes, asked.line.kitType)});
    }
    for (const core::AskedPoint& asked : manifest.points) {
        list.differs = list.differs || asked.difference != core::Difference::None;
        const bool isReturn = asked.phase == nameOf(core::Phase::Return);
        (isReturn ? list.back : list.launch).push_back(asked.point);
    }
}

} // namespace

core::Result<CheckList> readCheckList(const core::Club& club, const std::string& name,
                                      core::CalendarDay today) {
    const auto boat = club.register_().boat(name);
    if (!boat) return boat.error();
    const auto record = club.manifests().read();
    if (!record) return record.error();
    const auto entries = club.log().entries(boat->name);
    if (!entries) return entries.error();
    CheckList list;
    list.club = text(club.name());
    list.name = boat->name;
    list.boatClass = boat->boatClass;
    list.day = today;
    for (const core::LogEntry& entry : *entries)
        if (!entry.closed) list.log << entryInWords(entry);
    addManifest(list, record->now({core::ManifestOwner::Kind::Boat, boat->name}),
                club.register_().kitTypes());
    return list;
}

} // namespace app
