#include "core/club/taken_in.h"

#include "core/base/error_code.h"
#include "core/club/club_state.h"
#include "core/club/merge_look.h"
#include "core/store/names_now.h"
#include "core/store/taking_in.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <vector>

namespace core {
namespace {

void add(const OtherFacts& news, Intake& intake) {
    CameIn& into = intake.cameIn;
    into.leftOut += news.leftOut;
    for (const auto& [kind, many] : news.ofKind) {
        const int facts = static_cast<int>(many);
        into.facts += facts;
        into.checks += kind == CheckOpened::kind ? facts : 0;
        into.sightings += kind == TagSeen::kind ? facts : 0;
        into.changes += sheetOfTable(kind) != nullptr || kind == Renamed::kind ? facts : 0;
    }
    for (const FactsByStamp::Chain& chain : news.chains)
        intake.machines.insert(chain.machine);
    into.machines = static_cast<int>(intake.machines.size());
}

/// Whether no two of them have one name now: two machines may have given it to different things, and nothing
/// could part those again.
Outcome areApart(const std::vector<NamedThing>& things, Database& merged) {
    std::map<std::tuple<Named, std::string, std::string>, const NamedThing*> known;
    for (const NamedThing& each : things) {
        const std::string of =
            each.named == Named::Size ? namesNow::of(merged, Named::KitType, each.of, {}) : std::string();
        const std::string now = namesNow::of(merged, each.named, each.name, of);
        const auto [other, isFirst] =
            known.emplace(std::tuple(each.named, foldName(of), foldName(now)), &each);
        if (!isFirst) return Error{ErrorCode::NamesFused, {other->second->name, each.name, now}};
    }
    return Done{};
}

} // namespace

std::vector<NamedThing> namedThings(const RegisterStore& store) {
    std::vector<NamedThing> things;
    for (const Named named : {Named::Boat, Named::Place, Named::Person, Named::KitType})
        for (const Cells& row : store.all(*sheetOf(named)))
            things.push_back({named, {}, row.front()});
    for (const Cells& row : store.all(SheetId::Sizes))
        things.push_back({Named::Size, row[0], row[1]});
    std::set<std::string> classes;
    for (const SheetId id : {SheetId::Boats, SheetId::ManifestLines, SheetId::Points}) {
        const auto column = static_cast<std::size_t>(sheet(id).indexOf("boat_class"));
        for (const Cells& row : store.all(id))
            if (!row[column].empty() && classes.insert(foldName(row[column])).second)
                things.push_back({Named::BoatClass, {}, row[column]});
    }
    return things;
}

Outcome takeInLooked(ClubState& state, const OtherFacts& news, const std::vector<NamedThing>& theirs,
                     const std::string& where, Intake& into) {
    MergeLook look(state, news);
    const std::vector<NamedThing> ours = namedThings(state.registerStore);
    takeIn(*state.database, news);
    for (const auto* each : {&ours, &theirs})
        if (const Outcome apart = areApart(*each, *state.database); !apart) {
            Error fused = apart.error();
            fused.where = where;
            return fused;
        }
    look.lookAround(into.cameIn.lookAt);
    add(news, into);
    return Done{};
}

} // namespace core
