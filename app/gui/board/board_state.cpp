#include "app/gui/board/shed_board.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_record.h"

#include <algorithm>

// What the board shows, read and put into words.

namespace app {
namespace {

/// What the boat's next check goes on with. One that is out comes back first, whatever else was begun.
const core::OpenCheck* unfinishedOf(const std::vector<core::OpenCheck>& unfinished,
                                    const core::BoatCondition& boat) {
    const bool isOut = boat.kind == core::BoatCondition::Kind::Out;
    const auto found = std::find_if(unfinished.begin(), unfinished.end(), [&](const auto& check) {
        return check.location == core::Location::boat(boat.boat) &&
               (!isOut || check.phase == core::Phase::Return);
    });
    return found == unfinished.end() ? nullptr : &*found;
}

} // namespace

BoardState readBoard(const core::Club& club, core::CalendarDay today, BoardReads reads, bool arePrinted) {
    BoardState state{.club = text(club.name()),
                     .today = today,
                     .boats = club.answers().boatConditions(today),
                     .unfinished = club.checks().unfinished()};
    // A place may have a boat's name.
    std::erase_if(state.unfinished,
                  [](const core::OpenCheck& check) { return check.phase == core::Phase::Stocktake; });
    state.missing = static_cast<int>(club.answers().missingItems().size());
    state.dueSoon = static_cast<int>(club.answers().dueList(today, dueWithin).size());
    if (const auto origin = club.record().origin()) state.began = origin->at;
    state.resets = club.pins().resets(today);
    if (reads == BoardReads::SetUpToo) state.setUp = club.answers().setUp(arePrinted, today);
    return state;
}

core::Phase nextPhase(const core::BoatCondition& boat, const std::vector<core::OpenCheck>& unfinished) {
    if (const core::OpenCheck* open = unfinishedOf(unfinished, boat)) return open->phase;
    return boat.kind == core::BoatCondition::Kind::Out ? core::Phase::Return : core::Phase::Launch;
}

BoatWords wordsOf(const core::BoatCondition& boat, const BoardState& board) {
    BoatWords words;
    words.boat = text(boat.boat);
    words.condition = conditionOf(boat, board.today);
    for (const core::NotReadyReason& reason : boat.reasons)
        words.reasons << withCapital(reasonOf(reason));
    if (!boat.urgent.empty())
        words.reasons.prepend(ShedBoard::tr("Launched urgently, kit incomplete: %1").arg(text(boat.urgent)));
    const core::OpenCheck* open = unfinishedOf(board.unfinished, boat);
    const QString phase = nameInWords(nextPhase(boat, board.unfinished));
    words.next = open ? ShedBoard::tr("go on with the %1").arg(phase) : phase;
    switch (boat.kind) {
    case core::BoatCondition::Kind::KitReady:
        words.mark = Mark::Found;
        break;
    case core::BoatCondition::Kind::Out:
        words.mark = Mark::StillToFind;
        break;
    case core::BoatCondition::Kind::NotReady:
        words.mark = Mark::Look;
        break;
    }
    return words;
}

} // namespace app
