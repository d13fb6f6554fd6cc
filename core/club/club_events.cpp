#include "core/club/club_events.h"

#include "core/answers/event_tally.h"
#include "core/answers/trip_use.h"
#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/base/plain_text.h"
#include "core/club/act_effects.h"
#include "core/club/club_answers.h"
#include "core/club/club_state.h"
#include "core/record/documents.h"
#include "core/store/check_acts.h"
#include "core/store/sign_off_tables.h"
#include "core/store/trip_tables.h"

namespace core {
namespace {

/// Checks of the event: filed under its name, or opened on that day.
std::vector<CheckRun> runsOf(Database& database, const std::string& event) {
    auto runs = tripTables::runsOfEvent(database, foldName(event));
    const auto day = CalendarDay::parse(event);
    if (!runs.empty() || !day) return runs;
    // A day of this machine's time zone lies within a day of the same name in UTC, give or take one.
    return openedOn(*day, tripTables::runsBetween(database, day->plusDays(-1).iso(), day->plusDays(2).iso()));
}

TripItem readItem(Database& database, const Item& item, const std::string& launchStamp) {
    TripItem read{item.name(), item.kitType, {}, true};
    if (const auto back = checkTables::firstReturnOf(database, item.id, launchStamp))
        read.backOn = back->location.name;
    else
        read.seenSince = checkTables::newestSighting(database, item.id, launchStamp).has_value();
    return read;
}

Trip readTrip(const ClubState& state, const SignOff& launch) {
    Database& database = *state.database;
    Trip trip{.launch = launch, .launchPeople = checkActs::names(database, launch.check)};
    trip.next = signOffTables::firstSignOff(database, launch.location.name, launch.stamp);
    if (trip.next) trip.nextPeople = checkActs::names(database, trip.next->check);
    for (const ItemRecord& record : state.checkStore.itemsSeenIn(launch.check))
        trip.kit.push_back(readItem(database, record.item, launch.stamp));
    return trip;
}

} // namespace

Outcome ClubEvents::fileUnder(const std::string& check, const std::string& event, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Outcome {
        const auto run = m_state->heldRun(check);
        if (!run) return run.error();
        if (foldName(event).empty()) return Error{ErrorCode::EventWithoutName};
        const auto name = nameFrom(event, "event");
        if (!name) return name.error();
        if (checkActs::eventOf(*m_state->database, check) == *name) return Done{};
        ledger.append(EventGiven{check, *name, moment.at}, {});
        return Done{};
    });
}

Result<EventTally> ClubEvents::tally(const std::string& event) const {
    return guarded([&]() -> Result<EventTally> {
        const ReadSnapshot asOfNow(*m_state->database);
        const auto runs = runsOf(*m_state->database, event);
        if (runs.empty()) return Error{ErrorCode::NoSuchEvent, {event}};
        std::vector<Trip> trips;
        for (const CheckRun& run : runs)
            if (run.phase == Phase::Launch)
                if (const auto launch = signOffTables::signOff(*m_state->database, run.check))
                    trips.push_back(readTrip(*m_state, *launch));
        return tallyOf(event, trips, ClubAnswers(*m_state).missingItems());
    });
}

std::vector<FiledCheck> ClubEvents::checksOf(const std::string& event) const {
    std::vector<FiledCheck> checks;
    Database& database = *m_state->database;
    for (const CheckRun& run : runsOf(database, event))
        if (run.phase != Phase::Stocktake && !checkActs::isClosed(database, run.check))
            checks.push_back({run.check, run.location.name, run.phase, run.openedAt,
                              checkActs::eventOf(database, run.check)});
    return checks;
}

Outcome ClubEvents::recordOperation(const std::string& check, const Operation& given, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Outcome {
        const auto run = m_state->heldRun(check);
        if (!run) return run.error();
        const auto operation = operationFrom(given, moment.today);
        if (!operation) return operation.error();
        const auto before = operationOf(check);
        if (before && textOf(*before) == textOf(*operation)) return Done{};
        ledger.append(OperationLogged{check, run->location.name, *operation, moment.at}, {});
        countTrip(*m_state, ledger, *run, addedBy(*operation, before));
        return Done{};
    });
}

std::optional<Operation> ClubEvents::operationOf(const std::string& check) const {
    return checkActs::operation(*m_state->database, check);
}

Result<HeldEvent> ClubEvents::begin(const std::string& event, std::optional<Instant> until,
                                    const std::string& by, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Result<HeldEvent> {
        if (foldName(event).empty()) return Error{ErrorCode::EventWithoutName};
        const auto name = nameFrom(withoutOuterBlanks(event), "event");
        if (!name) return name.error();
        const auto writer = nameFrom(by, "by");
        if (!writer) return writer.error();
        if (until && *until <= moment.at)
            return Error{ErrorCode::EventOverBefore, {until->iso(), moment.at.iso()}};
        const auto before = held(moment.at);
        if (before && before->event == *name && (!until || *until == before->until)) return *before;
        const Instant end = until ? *until : Instant::beginningOf(moment.today.plusDays(1));
        ledger.append(EventHeld{*name, moment.at, end}, *writer);
        return HeldEvent{*name, moment.at, end, *writer};
    });
}

Result<HeldEvent> ClubEvents::end(const std::string& by, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Result<HeldEvent> {
        const auto before = held(moment.at);
        if (!before) return Error{ErrorCode::NoEventHolds};
        const auto writer = nameFrom(by, "by");
        if (!writer) return writer.error();
        ledger.append(EventHeld{{}, moment.at, moment.at}, *writer);
        return *before;
    });
}

std::optional<HeldEvent> ClubEvents::held(Instant now) const {
    const auto row = tripTables::heldAt(*m_state->database, now);
    if (!row || row->event.empty() || now >= row->until) return std::nullopt;
    return HeldEvent{row->event, row->at, row->until, row->by};
}

std::vector<std::string> ClubEvents::names() const {
    return tripTables::events(*m_state->database);
}

} // namespace core
