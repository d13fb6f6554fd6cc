#include "app/gui/club/check_state.h"

#include "core/answers/evidence.h"
#include "core/club/club_answers.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_register.h"

#include <utility>

namespace app {
namespace {

CheckContext launchOf(const core::Club& club, const core::OpenCheck& open, core::Instant now) {
    CheckContext context;
    if (open.phase != core::Phase::Return) return context;
    const auto evidence = club.answers().evidence(open.location.name, now);
    if (!evidence || !evidence->launch) return context;
    context.askWhom = evidence->people;
    context.launched = evidence->launch->at;
    return context;
}

} // namespace

CheckState stateOf(core::OpenCheck open, CheckChange change) {
    CheckState state{std::move(open), change.answer, {}, {}, {}, {}, {}, {}, {}};
    apply(state, std::move(change));
    return state;
}

void apply(CheckState& state, CheckChange change) {
    state.answer = std::move(change.answer);
    state.names = std::move(change.names);
    state.newest = std::move(change.newest);
    if (change.surroundings) {
        state.people = std::move(change.surroundings->people);
        state.log = std::move(change.surroundings->log);
        state.trip = std::move(change.surroundings->trip);
        state.context = std::move(change.surroundings->context);
    }
    state.context.worn = std::move(change.worn);
}

core::Result<CheckChange> CheckReader::read(core::Club& club, core::Moment moment, Extent extent) {
    m_changeMark = club.changeMark(); // before reading: what is written meanwhile shows the next time
    const bool isFirst = !m_launch;
    if (isFirst) m_launch = launchOf(club, m_open, moment.at);
    auto answer = club.checks().answer(m_open.check, moment.today);
    if (!answer) return answer.error();
    CheckChange change{std::move(answer).value(), club.checks().namesOf(m_open.check), {}, {}, {}};
    auto newest = club.checks().newestAct(m_open.check);
    if (!newest) return newest.error();
    change.newest = std::move(*newest);
    if (isFirst || extent == Extent::All) {
        m_worn.clear();
        change.surroundings = surroundings(club, moment.today);
    }
    addWorn(club, change.answer);
    change.worn = m_worn;
    return change;
}

CheckSurroundings CheckReader::surroundings(core::Club& club, core::CalendarDay today) const {
    CheckSurroundings read;
    for (core::Person& person : club.checks().peopleFor(m_open.location, m_open.phase, today))
        read.people.push_back(std::move(person.name));
    if (auto log = club.log().entries(m_open.location.name)) read.log = std::move(log).value();
    if (m_open.phase == core::Phase::Return) read.trip = club.events().operationOf(m_open.check);
    read.context = *m_launch;
    for (const core::KitType& kitType : club.register_().kitTypes())
        if (kitType.worn) read.context.wornTypes.insert(kitType.name);
    return read;
}

/// The items that a person of the answer wears; a scan changes neither their sizes nor whose they are.
void CheckReader::addWorn(const core::Club& club, const core::CheckAnswer& answer) {
    for (const core::LineAnswer& line : answer.lines)
        for (const core::LineItem& seen : line.items)
            if (seen.counts && !seen.wornBy.empty() && !m_worn.contains(seen.item.id))
                if (auto item = club.kit().item(seen.item.id)) m_worn.emplace(seen.item.id, std::move(*item));
}

} // namespace app
