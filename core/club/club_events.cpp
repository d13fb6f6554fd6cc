#include "core/club/club_events.h"
#include "core/answers/missing_list.h"
#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club_state.h"
#include "core/register/item.h"

#include "core/club/club_answers.h"

#include "core/answers/event_tally.h"
#include "core/record/operation_json.h"
#include "core/register/operation.h"
#include "core/store/trip_tables.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

namespace core {
namespace {

using nlohmann::json;

/// One signed launch check with the kit that went out by it.
struct Trip {
    SignOff launch;
    std::vector<ItemRecord> kit;
};

/// Checks of the event: filed under its name, or opened on that day.
std::vector<CheckRun> runsOf(Database& database, const std::string& event) {
    auto runs = tripTables::runsOfEvent(database, foldName(event));
    const auto day = CalendarDay::parse(event);
    if (!runs.empty() || !day) return runs;
    // A day of this machine's time zone lies within a day of the same name in UTC, give or take one.
    runs = tripTables::runsBetween(database, day->plusDays(-1).iso(), day->plusDays(2).iso());
    std::erase_if(runs, [&](const CheckRun& run) {
        const auto opened = Instant::parse(run.opened);
        return !opened || opened->localDay() != *day;
    });
    return runs;
}

class Tally {
public:
    Tally(const ClubState& state, const std::vector<CheckRun>& runs)
        : m_database(*state.database) {
        for (const CheckRun& run : runs) {
            if (run.phase != nameOf(Phase::Launch)) continue;
            if (const auto launch = checkTables::signOff(m_database, run.check))
                addTrip({*launch, state.checkStore.itemsSeenIn(run.check)});
        }
        for (auto& [boat, tally] : m_boats)
            sortCodes(tally);
    }

    std::vector<BoatTally> boats() const {
        std::vector<BoatTally> all;
        for (const auto& [key, tally] : m_boats)
            all.push_back(tally);
        return all;
    }

    /// Pairs first: of two things of a kind that went opposite ways, the one with the smaller code names the
    /// pair.
    std::vector<Swap> swaps() const {
        std::vector<Swap> pairs, alone;
        std::set<std::string> told;
        for (const Swap& swap : m_swaps) {
            if (told.contains(swap.code)) continue;
            told.insert(swap.code);
            Swap named = swap;
            const auto other = std::find_if(m_swaps.begin(), m_swaps.end(), [&](const Swap& each) {
                return each.kitType == swap.kitType && each.wentOutOn == swap.cameBackOn &&
                       each.cameBackOn == swap.wentOutOn && !told.contains(each.code);
            });
            if (other != m_swaps.end()) {
                named.against = other->code;
                told.insert(other->code);
            }
            (named.against.empty() ? alone : pairs).push_back(std::move(named));
        }
        pairs.insert(pairs.end(), alone.begin(), alone.end());
        return pairs;
    }

    bool wentOut(const std::string& code) const { return m_out.contains(code); }

private:
    void addTrip(const Trip& trip) {
        BoatTally& tally = m_boats[foldName(trip.launch.boat)];
        tally.boat = trip.launch.boat;
        if (!tally.launchedAt) {
            tally.launchedAt = Instant::parse(trip.launch.at);
            tally.launchedBy = peopleOf(trip.launch);
        }
        const auto later = checkTables::signOffsOf(m_database, trip.launch.boat, trip.launch.stamp);
        const bool back = !later.empty() && later.back().phase == nameOf(Phase::Return);
        tally.returnedAt = back ? Instant::parse(later.back().at) : std::nullopt;
        tally.returnedBy = back ? peopleOf(later.back()) : std::vector<std::string>();
        for (const ItemRecord& record : trip.kit)
            addItem(tally, trip.launch, record.item);
    }

    void addItem(BoatTally& tally, const SignOff& launch, const Item& item) {
        m_out.insert(item.code);
        if (std::find(tally.out.begin(), tally.out.end(), item.code) == tally.out.end())
            tally.out.push_back(item.code);
        std::erase(tally.back, item.code); // a later trip decides
        std::erase(tally.notReturned, item.code);
        const auto back = checkTables::firstReturnOf(m_database, item.code, launch.stamp);
        if (back && back->boat == launch.boat)
            tally.back.push_back(item.code);
        else if (back)
            m_swaps.push_back({item.code, item.kitType, launch.boat, back->boat, {}});
        else if (tally.returnedAt && !checkTables::newestSighting(m_database, item.code, launch.stamp))
            tally.notReturned.push_back(item.code);
    }

    static void sortCodes(BoatTally& tally) {
        for (auto* codes : {&tally.out, &tally.back, &tally.notReturned})
            std::sort(codes->begin(), codes->end());
    }

    std::vector<std::string> peopleOf(const SignOff& signOff) const {
        auto people = checkTables::names(m_database, signOff.check);
        return people.empty() ? std::vector<std::string>{signOff.by} : people;
    }

    Database& m_database;
    std::map<std::string, BoatTally> m_boats; // by folded name
    std::vector<Swap> m_swaps;
    std::set<std::string> m_out;
};

/// Adds to what an item ran and how often it was launched on a day. The cell is the day's sum.
void countUse(ClubState& state, const std::string& code, CalendarDay day, double hours, double launches) {
    Use use{day, 0, 0};
    if (const auto record = state.registerStore.record(code))
        for (const Use& known : record->use)
            if (known.day == day) use = known;
    use.hours = std::max(0.0, use.hours + hours);
    use.launches = std::max(0.0, use.launches + launches);
    state.ledger.append(
        "use_record",
        rowBody(SheetId::Use, {{"code", code}, {"day", day.iso()}},
                {{"hours", fmt::format("{}", use.hours)}, {"launches", fmt::format("{}", use.launches)}}),
        {});
}

} // namespace

Outcome ClubEvents::fileUnder(const std::string& check, const std::string& event, Moment moment) {
    return guarded([&]() -> Outcome {
        const auto run = m_state->anyRun(check);
        if (!run) return run.error();
        if (foldName(event).empty())
            return Error{ErrorKind::BadInput, "an event has a name", {}, "name the patrol or training day"};
        if (tripTables::eventOf(*m_state->database, check) == event) return Done{};
        Transaction transaction(*m_state->database);
        m_state->ledger.append("event-given", {{"check", check}, {"event", event}, {"at", moment.at.iso()}},
                               {});
        transaction.commit();
        return Done{};
    });
}

Result<EventTally> ClubEvents::tally(const std::string& event) const {
    return guarded([&]() -> Result<EventTally> {
        const auto runs = runsOf(*m_state->database, event);
        if (runs.empty())
            return notFound(fmt::format("no check was filed under '{}'", event),
                            "give the name that checks were filed under with --event, or a day");
        const Tally tally(*m_state, runs);
        EventTally answer{event, tally.boats(), tally.swaps(), ClubAnswers(*m_state).missingItems()};
        std::erase_if(answer.missing, [&](const MissingItem& item) { return !tally.wentOut(item.code); });
        return answer;
    });
}

Outcome ClubEvents::recordOperation(const std::string& check, const Operation& operation, Moment moment) {
    return guarded([&]() -> Outcome {
        const auto run = m_state->anyRun(check);
        if (!run) return run.error();
        if (auto fault = faultOf(operation)) return *fault;
        const auto signedBack = checkTables::signOff(*m_state->database, check);
        const auto launch = signedBack ? checkTables::newestLaunchSignedBefore(*m_state->database, run->boat,
                                                                               signedBack->stamp)
                                       : m_state->checkStore.outOn(run->boat);
        const auto before = operationOf(check);
        Transaction transaction(*m_state->database);
        m_state->ledger.append("operation-logged",
                               {{"check", check},
                                {"boat", run->boat},
                                {"operation", jsonOf(operation)},
                                {"at", moment.at.iso()}},
                               {});
        const double hours = operation.hours.value_or(0) - (before ? before->hours.value_or(0) : 0);
        const double launches = operation.launches - (before ? before->launches : 0);
        const auto opened = Instant::parse(run->opened);
        const CalendarDay day = opened ? opened->localDay() : moment.today;
        if (launch && (hours != 0 || launches != 0))
            for (const ItemRecord& record : m_state->checkStore.itemsSeenIn(launch->check))
                countUse(*m_state, record.item.code, day, hours, launches);
        transaction.commit();
        return Done{};
    });
}

std::optional<Operation> ClubEvents::operationOf(const std::string& check) const {
    const auto body = tripTables::operation(*m_state->database, check);
    return body ? std::optional(operationFrom(json::parse(*body))) : std::nullopt;
}

std::vector<std::string> ClubEvents::names() const {
    return tripTables::events(*m_state->database);
}

} // namespace core
