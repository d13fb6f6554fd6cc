#include "core/club/club_hub.h"

#include "core/answers/published_board.h"
#include "core/club/club_answers.h"
#include "core/club/club_state.h"
#include "core/club/hub_exchange.h"
#include "core/club/hub_link.h"
#include "core/club/kept_place.h"
#include "core/hub/board_text.h"
#include "core/hub/hub_boards.h"

namespace core {
namespace {

constexpr const char* lastNote = "exchanged";

std::string boardText(ClubState& state, CalendarDay today, const ClubHub::ReasonWords& words) {
    std::vector<PublishedBoat> boats;
    for (const BoatCondition& each : ClubAnswers(state).boatConditions(today)) {
        PublishedBoat boat{.boat = each.boat,
                           .boatClass = each.boatClass,
                           .kind = each.kind,
                           .since = each.since,
                           .by = each.by,
                           .urgent = each.urgent};
        for (const NotReadyReason& reason : each.reasons)
            boat.reasons.push_back(words(reason));
        boats.push_back(std::move(boat));
    }
    return textOf(boats, today);
}

hubFacts::BoardDigest digestOf(const HubLink::Line::Board& board) {
    if (board.machine.empty()) return {};
    return {board.machine, sha256Hex(board.text)};
}

/// Computed again only when something was written since, or the day is another one.
void renew(HubLink::Line::Board& board, ClubState& state, CalendarDay today,
           const ClubHub::ReasonWords& words) {
    const std::int64_t mark = state.database->changeMark();
    if (board.mark == mark && board.day == today.iso()) return;
    board = {mark, today.iso(), ownMachineOf(*state.database), {}};
    if (!board.machine.empty()) board.text = boardText(state, today, words);
}

} // namespace

std::optional<HubPlace> ClubHub::place() const {
    return keptPlace::of(clubOf(*m_state->database));
}

std::optional<Instant> ClubHub::lastExchanged() const {
    const auto note = KeptKeys(clubOf(*m_state->database)).note(lastNote);
    return note ? Instant::parse(*note) : std::nullopt;
}

Outcome ClubHub::join(const HubPlace& place) {
    return guarded([&]() -> Outcome {
        if (const Outcome may = m_state->mayDo(Right::GearOfficer); !may) return may;
        HubLink link;
        link.m_line->over(place.url, [&](HubConnection& hub) {
            HubExchange exchange(*m_state, hub, place);
            exchange.meet({});
            if (place.sendsPrivate) exchange.sendAllPrivate();
        });
        keptPlace::put(clubOf(*m_state->database), place);
        return Done{};
    });
}

Outcome ClubHub::leave() {
    return guarded([&]() -> Outcome {
        if (const Outcome may = m_state->mayDo(Right::GearOfficer); !may) return may;
        keptPlace::leave(clubOf(*m_state->database));
        return Done{};
    });
}

Result<Exchanged> ClubHub::exchange(HubLink& link, CalendarDay today, const ReasonWords& words,
                                    TakingIn manner) {
    return guarded([&]() -> Result<Exchanged> {
        const auto place = this->place();
        if (!place) return Error{ErrorCode::HubNotJoined, {}, m_state->database->path()};
        return link.m_line->over(place->url, [&](HubConnection& hub) -> Result<Exchanged> {
            HubLink::Line::Board& board = link.m_line->board;
            renew(board, *m_state, today, words);
            const std::string before = board.text;
            HubExchange exchange(*m_state, hub, *place, manner);
            exchange.meet(digestOf(board));
            const bool isNews = exchange.meeting().isNews;
            auto exchanged = exchange.run();
            if (!exchanged) return exchanged;
            renew(board, *m_state, today, words);
            // While another program of this user commits, this machine is not known for a moment: the next
            // time.
            if (!board.machine.empty() && (isNews || board.text != before))
                hubBoards::publish(hub, clubOf(*m_state->database), board.machine, board.text);
            link.m_line->club = exchange.meeting().club;
            if (exchanged->waiting == 0)
                KeptKeys(clubOf(*m_state->database)).putNote(lastNote, exchanged->at.iso());
            return exchanged;
        });
    });
}

} // namespace core
