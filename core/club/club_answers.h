#pragma once

#include "core/answers/board.h"
#include "core/answers/due_list.h"
#include "core/answers/history.h"
#include "core/answers/missing_list.h"
#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"

#include <string>
#include <vector>

namespace core {

struct ClubState;
struct Evidence;
struct SetUpTick;

/// What the record says now: nothing here writes. See Club for what holds of every function.
class ClubAnswers {
public:
    explicit ClubAnswers(ClubState& state)
        : m_state(&state) {}

    std::vector<BoatCondition>
    boatConditions(CalendarDay today) const;       ///< not ready, out, ready; then by name
    std::vector<MissingItem> missingItems() const; ///< missing longest first
    /// Rows due within `days` of today, passed, undated or due without a day; worst first.
    std::vector<DueRow> dueList(CalendarDay today, int days) const;
    /// Every item, by id, with what of it comes due next.
    std::vector<ItemDue> kitWithNextDue(CalendarDay today) const;
    /// What a new club has still to do, with what is here today. `arePrinted`: its tags, which the record
    /// does not know.
    std::vector<SetUpTick> setUp(bool arePrinted, CalendarDay today) const;
    /// Everything recorded about a code, boat or person, oldest first.
    Result<std::vector<HistoryLine>> history(const std::string& subject) const;
    /// What was aboard a boat at an instant, by its signed checks.
    Result<Evidence> evidence(const std::string& boat, Instant on) const;

private:
    ClubState* m_state;
};

} // namespace core
