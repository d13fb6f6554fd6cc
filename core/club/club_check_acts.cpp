#include "core/base/error_code.h"
#include "core/base/plain_text.h"
#include "core/club/act_effects.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_state.h"
#include "core/store/check_acts.h"
#include "core/tag/reason.h"
#include "core/tag/tag_code.h"

#include <algorithm>
#include <limits>

namespace core {
namespace {

bool isMeasured(const ClubState& state, const CheckRun& run, const std::string& point) {
    const auto points = state.pointsOf(run);
    return std::any_of(points.begin(), points.end(), [&](const BoatPoint& each) {
        return each.name == point && each.kind != PointKind::Look;
    });
}

CheckAct actOf(const ClubState& state, const CheckRun& run, const RecordedAct& recorded) {
    CheckAct act{.kind = recorded.kind, .name = recorded.name};
    act.people = recorded.people;
    if (recorded.kind == ActKind::Point && isMeasured(state, run, recorded.name)) act.value = recorded.value;
    if (recorded.code.empty()) return act;
    const auto item = state.registerStore.item(recorded.code);
    act.item = item ? item->name() : ItemName{recorded.code, recorded.code};
    if (item) act.name = item->kitType;
    return act;
}

std::optional<CheckAct> newest(const ClubState& state, const CheckRun& run) {
    const auto acts = checkActs::standing(*state.database, run.check, 1);
    return acts.empty() ? std::nullopt : std::optional(actOf(state, run, acts.front()));
}

/// Whoever was named first is taken to be the one who acts.
std::string firstNamed(const ClubState& state, const std::string& check) {
    const auto names = checkActs::names(*state.database, check);
    return names.empty() ? std::string() : names.front();
}

/// False: no sighting of that tag stands.
bool takeSightingsBack(ClubState& state, Ledger& ledger, const CheckRun& run, const std::string& code,
                       const std::string& by, Moment moment) {
    bool any = false;
    for (const Sighting& sighting : checkTables::sightings(*state.database, run.check)) {
        if (sighting.code != code) continue;
        ledger.append(ActTakenBack{run.check, sighting.id, {}, moment.at}, by);
        any = true;
    }
    return any;
}

void takeBack(ClubState& state, Ledger& ledger, const CheckRun& run, const RecordedAct& act,
              const std::string& closing, Moment moment) {
    const std::string by = firstNamed(state, run.check);
    if (act.kind == ActKind::Sighting) {
        takeSightingsBack(state, ledger, run, act.code, by, moment);
        return;
    }
    ledger.append(ActTakenBack{run.check, act.id, {}, moment.at}, by);
    if (act.kind == ActKind::Trip) uncountTrip(state, ledger, run, act);
    if (act.kind == ActKind::Damage) endDamage(state, ledger, act, closing, by, moment.today);
}

} // namespace

Result<Undone> ClubChecks::undo(const std::string& check, const std::string& closing, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Result<Undone> {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        const bool isHeld = m_state->heldCheck.isCurrent(check);
        const auto acts = checkActs::standing(*m_state->database, check, 1);
        if (acts.empty()) return Error{ErrorCode::NothingToTakeBack};
        Undone undone{.act = actOf(*m_state, *run, acts.front())};
        takeBack(*m_state, ledger, *run, acts.front(), closing, moment);
        m_state->endUrgentOfWhole(ledger, moment.today);
        undone.next = newest(*m_state, *run);
        if (isHeld && acts.front().kind == ActKind::Sighting)
            m_state->heldCheck.drop(*run, acts.front().code);
        return undone;
    });
}

std::string ClubChecks::itemSeenLast(const std::string& check) const {
    const auto sightings = checkTables::sightings(*m_state->database, check);
    const auto item = sightings.empty() ? std::nullopt : m_state->registerStore.item(sightings.back().code);
    return item ? item->id : std::string();
}

Result<std::optional<CheckAct>> ClubChecks::newestAct(const std::string& check) const {
    return guarded([&]() -> Result<std::optional<CheckAct>> {
        const auto run = m_state->anyRun(check);
        if (!run) return run.error();
        return newest(*m_state, *run);
    });
}

Outcome ClubChecks::undoSightingOf(const std::string& check, const std::string& typed, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Outcome {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        const auto code = TagCode::parse(typed);
        if (!code) return code.error();
        const bool isHeld = m_state->heldCheck.isCurrent(check);
        if (!takeSightingsBack(*m_state, ledger, *run, code->text(), firstNamed(*m_state, check), moment))
            return Error{ErrorCode::NotSeen, {code->grouped()}};
        m_state->endUrgentOfWhole(ledger, moment.today);
        if (isHeld) m_state->heldCheck.drop(*run, code->text());
        return Done{};
    });
}

Outcome ClubChecks::withdraw(const std::string& check, const std::string& typed, const std::string& text,
                             Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Outcome {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        const auto reason = reasonFrom(text);
        if (!reason) return reason.error();
        const auto item = ClubKit(*m_state).item(typed);
        if (!item) return Error{ErrorCode::NoSuchItemInCheck, {typed}};
        if (item->state == ItemState::WrittenOff) return Error{ErrorCode::WrittenOffAlready};
        const std::string by = firstNamed(*m_state, check);
        const std::string words = m_state->newLogText({}, item->id, moment.today, *reason);
        RowWritten row =
            rowWritten(SheetId::Log, {{"code", item->id}, {"day", moment.today.iso()}, {"text", words}},
                       {{"severity", "stop"}, {"by", by}, {"closed", ""}, {"closing", ""}});
        row.check = check;
        ledger.append(row, by);
        // The damage itself is told last: by it the undo knows the entry.
        ledger.append(stateGiven(item->id, "unserviceable", moment.today, "damaged", check), by);
        return Done{};
    });
}

Outcome ClubChecks::discard(const std::string& check, const std::string& reason, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Outcome {
        const auto run = m_state->openRun(check);
        if (!run) return run.error();
        const auto acts = checkActs::standing(*m_state->database, check, std::numeric_limits<int>::max());
        const bool needsReason = !withoutOuterBlanks(reason).empty() || !acts.empty();
        const auto given = needsReason ? reasonFrom(reason) : Result<std::string>(std::string());
        if (!given) return given.error();
        // The trip is told anew with the check that is signed: its hours count once.
        for (const RecordedAct& act : acts)
            if (act.kind == ActKind::Trip) takeBack(*m_state, ledger, *run, act, {}, moment);
        m_state->endUrgentOfWhole(ledger, moment.today);
        ledger.append(CheckClosed{check, *given, moment.at}, firstNamed(*m_state, check));
        return Done{};
    });
}

} // namespace core
