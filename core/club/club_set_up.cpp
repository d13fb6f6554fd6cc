#include "core/answers/set_up.h"
#include "core/base/one_slip.h"
#include "core/base/plain_text.h"
#include "core/base/result.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/store/sign_off_tables.h"

#include <algorithm>

namespace core {
namespace {

/// Of which something is asked: spelled as in their lines, each once.
std::vector<std::string> classesWithLines(const RegisterStore& store) {
    const Sheet& lines = sheet(SheetId::ManifestLines);
    const auto boatClass = static_cast<std::size_t>(lines.indexOf("boat_class"));
    const auto quantity = static_cast<std::size_t>(lines.indexOf("quantity"));
    std::vector<std::string> classes;
    for (const Cells& line : store.all(SheetId::ManifestLines))
        if (!line[boatClass].empty() && line[quantity] != "0" &&
            std::ranges::find(classes, line[boatClass]) == classes.end())
            classes.push_back(line[boatClass]);
    return classes;
}

UnaskedBoat unasked(const Boat& boat, const std::vector<std::string>& classes) {
    const auto like = std::ranges::find_if(classes, [&](const std::string& each) {
        return isLikelySlip(foldName(each), foldName(boat.boatClass));
    });
    return {boat.name, boat.boatClass, like == classes.end() ? std::string() : *like};
}

} // namespace

Result<BoatFitOut> ClubKit::fitOutOf(const std::string& name) const {
    return guarded([&]() -> Result<BoatFitOut> {
        const auto boat = ClubRegister(*m_state).boat(name);
        if (!boat) return boat.error();
        const RegisterStore& store = m_state->registerStore;
        return BoatFitOut{
            boat->name, fitOutOfBoat(*boat, store.manifestOf(*boat), store.allKitTypes(), store.allItems())};
    });
}

std::vector<FitOutLine> ClubKit::fitOutOfSpares() const {
    return core::fitOutOfSpares(m_state->registerStore.allKitTypes(), m_state->registerStore.allItems());
}

std::vector<SetUpTick> ClubAnswers::setUp(bool arePrinted, CalendarDay today) const {
    const RegisterStore& store = m_state->registerStore;
    const auto kitTypes = store.allKitTypes();
    const auto kit = store.allItems();
    const ClubRegister known(*m_state);
    SetUpValues values{.arePrinted = arePrinted};
    const auto classes = classesWithLines(store);
    for (const Boat& boat : known.boatsHere(today)) {
        values.boats.push_back({boat.name, fitOutOfBoat(boat, store.manifestOf(boat), kitTypes, kit)});
        if (values.boats.back().lines.empty()) values.unasked.push_back(unasked(boat, classes));
    }
    values.people = static_cast<int>(known.peopleHere(today).size());
    for (const auto& [name, kitType] : kitTypes)
        for (const LifeRule& rule : kitType.rules)
            values.ruleSources.push_back(rule.source);
    values.wasTagSeen = checkTables::isAnythingSeen(*m_state->database);
    const auto boats = known.boats(); // what a boat signed that is no longer here was signed
    values.wasSigned = std::any_of(boats.begin(), boats.end(), [&](const Boat& boat) {
        return signOffTables::newestSignOff(*m_state->database, boat.name).has_value();
    });
    return setUpOf(values);
}

} // namespace core
