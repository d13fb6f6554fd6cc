#include "core/base/calendar_day.h"
#include "core/base/error_code.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club_checks.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/register/boat.h"
#include "core/register/item.h"

#include "core/register/typed_rows.h"
#include "core/store/check_acts.h"
#include "core/store/sign_off_tables.h"
#include "core/upkeep/same_name.h"

#include <algorithm>
#include <fmt/format.h>

namespace core {
namespace {

template <class Thing>
std::vector<Thing> here(std::vector<Thing> things, CalendarDay today) {
    std::erase_if(things, [&](const Thing& each) { return !isHere(each.until, today); });
    return things;
}

/// Kit that has its home there, or is that person's own.
std::vector<Item> kitOf(const RegisterStore& store, Named named, const std::string& name) {
    std::vector<Item> kit;
    for (const Cells& cells : store.where(SheetId::Items, nameOf(named), name))
        if (auto item = store.item(cells[0]); item && item->state != ItemState::WrittenOff)
            kit.push_back(std::move(*item));
    return kit;
}

Error stillThere(const std::string& name, const std::vector<Item>& kit) {
    constexpr std::size_t told = 3;
    std::string first;
    for (std::size_t i = 0; i < std::min(told, kit.size()); ++i) {
        first += fmt::format("{}{} {}", i > 0 ? ", " : "", kit[i].kitType, groupedTag(kit[i].tag));
    }
    return {ErrorCode::KitStillThere, {name, std::to_string(kit.size()), first}};
}

/// Boats that are kept at the place after that day; others have none of their own.
Outcome noBoatsKeptAt(const std::string& place, const std::vector<Boat>& boats, CalendarDay day) {
    std::string kept;
    for (const Boat& boat : boats)
        if (sameName(boat.place, place) && (!boat.until || *boat.until > day))
            kept += (kept.empty() ? "" : ", ") + boat.name;
    if (kept.empty()) return Done{};
    return Error{ErrorCode::BoatsStillThere, {place, kept}};
}

/// Who was named in the boat's last launches: drivers before crew, the newest launch first.
std::vector<std::string> wentOutLast(Database& database, const Location& where) {
    constexpr int launchesLookedAt = 10;
    std::vector<std::string> drivers, crew;
    int launches = 0;
    if (!where.isBoat()) return drivers;
    for (const SignOff& each : signOffTables::signOffsOf(database, where.name)) {
        if (each.phase != Phase::Launch) continue;
        if (++launches > launchesLookedAt) break;
        const auto names = checkActs::names(database, each.check);
        for (std::size_t i = 0; i < names.size(); ++i)
            (i == 0 ? drivers : crew).push_back(names[i]);
    }
    drivers.insert(drivers.end(), crew.begin(), crew.end());
    return drivers;
}

} // namespace

std::optional<CalendarDay> untilOf(const ClubState& state, SheetId id, const std::string& name) {
    const auto row = state.registerStore.find(id, foldName(name));
    const int until = sheet(id).indexOf("until");
    return row && until >= 0 ? CalendarDay::parse((*row)[static_cast<std::size_t>(until)]) : std::nullopt;
}

Outcome stillHere(const std::string& name, const std::optional<CalendarDay>& until, CalendarDay today) {
    if (isHere(until, today)) return Done{};
    return Error{ErrorCode::NoLongerHere, {name, until->iso()}};
}

Result<std::string> placeHere(ClubState& state, const std::string& name, CalendarDay today) {
    const auto cells = state.registerStore.find(SheetId::Places, foldName(name));
    if (!cells) {
        std::string known;
        for (const std::string& each : ClubRegister(state).placesHere(today))
            known += (known.empty() ? "" : ", ") + each;
        return noSuchPlace(name, known);
    }
    const ClubPlace place = placeFrom(*cells);
    if (const Outcome here = stillHere(place.name, place.until, today); !here) return here.error();
    return place.name;
}

Outcome ClubState::mayTakePart(const Person& person, const Location& where, Phase phase,
                               CalendarDay today) const {
    const auto launch =
        phase == Phase::Return && !isHere(person.until, today) ? checkStore.outOn(where.name) : std::nullopt;
    if (launch)
        for (const std::string& name : checkActs::names(*database, launch->check))
            if (name == person.name) return Done{};
    return stillHere(person.name, person.until, today);
}

Outcome ClubChecks::mayTakePart(const std::string& check, const std::string& name, CalendarDay today) const {
    return guarded([&]() -> Outcome {
        const auto run = m_state->anyRun(check);
        if (!run) return run.error();
        const auto person = m_state->registerStore.person(name);
        if (!person) return Error{ErrorCode::NoSuchPerson, {name}};
        return m_state->mayTakePart(*person, run->location, run->phase, today);
    });
}

std::vector<Person> ClubChecks::peopleFor(const Location& where, Phase phase, CalendarDay today) const {
    std::vector<Person> people = ClubRegister(*m_state).people();
    std::erase_if(people,
                  [&](const Person& each) { return !m_state->mayTakePart(each, where, phase, today); });
    const auto went = wentOutLast(*m_state->database, where);
    const auto rank = [&](const Person& each) {
        return std::find(went.begin(), went.end(), each.name) - went.begin();
    };
    std::stable_sort(people.begin(), people.end(),
                     [&](const Person& a, const Person& b) { return rank(a) < rank(b); });
    return people;
}

std::vector<Boat> ClubRegister::boatsHere(CalendarDay today) const {
    return here(boats(), today);
}

std::vector<Person> ClubRegister::peopleHere(CalendarDay today) const {
    return here(people(), today);
}

std::vector<std::string> ClubRegister::placesHere(CalendarDay today) const {
    std::vector<std::string> names;
    for (const Cells& cells : m_state->registerStore.all(SheetId::Places))
        if (const ClubPlace place = placeFrom(cells); isHere(place.until, today)) names.push_back(place.name);
    return names;
}

Result<std::string> ClubRegister::end(Named named, const std::string& asked, CalendarDay day,
                                      const std::string& by, Moment moment) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Result<std::string> {
        const bool canEnd = named == Named::Boat || named == Named::Place || named == Named::Person;
        const auto row =
            canEnd ? m_state->registerStore.find(*sheetOf(named), foldName(asked)) : std::nullopt;
        if (!row) return Error{ErrorCode::NothingSoNamed, {std::string(nameOf(named)), asked}};
        const std::string& name = row->front();
        if (const auto kit = kitOf(m_state->registerStore, named, name); !kit.empty())
            return stillThere(name, kit);
        if (named == Named::Place)
            if (const Outcome none = noBoatsKeptAt(name, boats(), day); !none) return none.error();
        const Outcome written = writeNamedRow(
            *m_state, ledger, named, {{std::string(nameOf(named)), name}, {"until", day.iso()}}, by, moment);
        if (!written) return written.error();
        return name;
    });
}

Outcome writeNamedRow(ClubState& state, Ledger& ledger, Named named, const CellTexts& row,
                      const std::string& by, Moment moment) {
    const Sheet& sheet = core::sheet(sheetOf(named).value());
    const ImportPlan plan =
        planRows(sheet, {row}, state.registerStore, moment.today, mintingFor(*state.database));
    if (!plan.rejected.empty()) return plan.rejected.front().reason;
    appendRows(*state.database, ledger, plan.changes, by, moment);
    return Done{};
}

} // namespace core
