#include "core/base/calendar_day.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club_plans.h"
#include "core/club/club_state.h"
#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"
#include "core/upkeep/due_date.h"

#include "core/club/club_register.h"

#include "core/plan/make_ready/make_ready.h"
#include "core/record/fact.h"
#include "core/store/fact_table.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

namespace core {
namespace {

using Names = std::map<std::string, std::string>; // folded name to the register's spelling

const std::string& spelled(const Names& names, const std::string& name) {
    const auto found = names.find(foldName(name));
    return found == names.end() ? name : found->second;
}

/// Gathers boats and kit for a plan: what is asked, what is not out, what counts today and lies somewhere.
class MakeReadyStock {
public:
    MakeReadyStock(const ClubState& state, const std::vector<Boat>& boats, CalendarDay today)
        : m_state(state)
        , m_boats(boats)
        , m_today(today)
        , m_types(state.registerStore.allKitTypes()) {
        for (const Boat& boat : boats)
            m_boatNames[foldName(boat.name)] = boat.name;
        for (const Cells& cells : state.registerStore.all(SheetId::Places))
            m_placeNames[foldName(cells[0])] = cells[0];
    }

    /// NotFound for a place that the register does not have. `boats` are its spelling.
    Outcome choose(const std::vector<std::string>& places, const std::set<std::string>& boats) {
        for (const std::string& place : places) {
            if (!m_placeNames.contains(foldName(place))) return noPlace(place);
            m_places.insert(spelled(m_placeNames, place));
        }
        for (const Boat& boat : m_boats) {
            if (!boats.empty() && !boats.contains(boat.name)) continue;
            if (m_state.checkStore.outOn(boat.name))
                m_out.push_back(boat.name);
            else
                m_planned.push_back({boat.name, boat.priority, m_state.registerStore.manifestOf(boat)});
        }
        return Done{};
    }

    MakeReadyTask task(double seconds) {
        MakeReadyTask task{m_planned, {}, seconds};
        const std::set<std::string> wanted = wantedTypes();
        for (const ItemRecord& record : m_state.registerStore.allRecords()) {
            if (!wanted.contains(record.item.kitType) || !isSound(record)) continue;
            const auto at = whereabouts(record.item);
            if (!at)
                m_notPlaced.push_back(record.item.code);
            else if (isOnHand(*at))
                task.kit.push_back({record.item.code, record.item.kitType,
                                    spelled(m_boatNames, record.item.boat), *at, earliestDue(record)});
        }
        return task;
    }

    const std::vector<std::string>& boatsOut() const { return m_out; }
    const std::vector<std::string>& notPlaced() const { return m_notPlaced; }

private:
    Error noPlace(const std::string& name) const {
        std::string known;
        for (const auto& [key, place] : m_placeNames)
            known += (known.empty() ? "" : ", ") + place;
        return notFound(fmt::format("there is no place '{}' in this club", name),
                        known.empty() ? "import places first"
                                      : fmt::format("the club's places are: {}", known));
    }

    std::set<std::string> wantedTypes() const {
        std::set<std::string> types;
        for (const BoatToPlan& boat : m_planned)
            for (const ManifestLine& line : boat.lines) {
                types.insert(line.kitType);
                types.insert(line.substitutes.begin(), line.substitutes.end());
            }
        return types;
    }

    std::vector<RuleDue> duesOf(const ItemRecord& record) const {
        const auto type = m_types.find(record.item.kitType);
        return type == m_types.end() ? std::vector<RuleDue>() : dueDatesOf(record, type->second, m_today);
    }

    bool isSound(const ItemRecord& record) const {
        const auto dues = duesOf(record);
        return record.item.state == ItemState::Serviceable &&
               std::none_of(dues.begin(), dues.end(), [](const RuleDue& due) { return due.isPassedStop(); });
    }

    std::optional<CalendarDay> earliestDue(const ItemRecord& record) const {
        const auto dues = duesOf(record);
        const RuleDue* earliest = earliestOf(dues);
        return earliest ? earliest->due : std::nullopt;
    }

    /// Where it was seen last, unless its home was given later; else its home.
    std::optional<Whereabouts> whereabouts(const Item& item) const {
        std::optional<Whereabouts> home;
        if (!item.boat.empty())
            home = Whereabouts{true, spelled(m_boatNames, item.boat)};
        else if (!item.place.empty())
            home = Whereabouts{false, spelled(m_placeNames, item.place)};
        const auto seen = checkTables::newestSighting(*m_state.database, item.code);
        const auto run = seen ? checkTables::run(*m_state.database, seen->check) : std::nullopt;
        if (!run) return home;
        const bool aboard = phaseOf(run->phase) != Phase::Stocktake;
        const Whereabouts there{aboard, spelled(aboard ? m_boatNames : m_placeNames, run->boat)};
        if (home == there) return home;
        return home && homeGivenAt(item.code) > seen->stamp ? home : there;
    }

    /// Stamp of the newest fact that gave the item its home boat or place.
    std::string homeGivenAt(const std::string& code) const {
        const Sheet& items = sheet(SheetId::Items);
        std::string newest;
        for (const Fact& fact :
             factTable::ofRow(*m_state.database, std::string(items.table), foldName(code))) {
            const auto body = nlohmann::json::parse(fact.body);
            const auto set = body.find("set");
            if (set != body.end() && (set->contains("boat") || set->contains("place")))
                newest = std::max(newest, fact.stamp());
        }
        return newest;
    }

    /// A boat that is not planned keeps its kit, and so does one that is out.
    bool isOnHand(const Whereabouts& at) const {
        if (!at.aboard) return m_places.empty() || m_places.contains(at.name);
        return std::any_of(m_planned.begin(), m_planned.end(),
                           [&](const BoatToPlan& boat) { return boat.boat == at.name; });
    }

    const ClubState& m_state;
    const std::vector<Boat>& m_boats;
    CalendarDay m_today;
    std::map<std::string, KitType> m_types;
    Names m_boatNames, m_placeNames;
    std::set<std::string> m_places; ///< asked for; empty: all
    std::vector<BoatToPlan> m_planned;
    std::vector<std::string> m_out, m_notPlaced;
};

} // namespace

Result<MakeReadyPlan> ClubPlans::makeReady(const MakeReadyQuestion& question, CalendarDay today) const {
    return guarded([&]() -> Result<MakeReadyPlan> {
        const std::vector<Boat> all = ClubRegister(*m_state).boats();
        std::set<std::string> asked;
        for (const std::string& name : question.boats) {
            const auto known = ClubRegister(*m_state).boat(name);
            if (!known) return known.error();
            asked.insert(known->name);
        }
        MakeReadyStock stock(*m_state, all, today);
        if (const Outcome chosen = stock.choose(question.places, asked); !chosen) return chosen.error();
        MakeReadyPlan plan = planMakeReady(stock.task(question.seconds));
        plan.boatsOut = stock.boatsOut();
        plan.notPlaced = stock.notPlaced();
        return plan;
    });
}

} // namespace core
