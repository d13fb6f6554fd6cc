#pragma once

#include "core/base/calendar_day.h"
#include "core/base/result.h"

#include <vector>

namespace core {

struct ClubState;
struct KitLife;
struct MakeReadyPlan;
struct MakeReadyQuestion;
struct ReplacementPlan;
struct ReplacementQuestion;

/// Plans: which boats can be made ready, what to order, how long kit lasts. See Club for what holds of every
/// function.
class ClubPlans {
public:
    explicit ClubPlans(ClubState& state)
        : m_state(&state) {}

    /// Which boats can be made complete with the kit on hand, and by which moves
    /// (core/plan/make_ready/make_ready.h).
    Result<MakeReadyPlan> makeReady(const MakeReadyQuestion& question, CalendarDay today) const;
    /// What runs short when, and what to order by when (core/plan/replacement/replacement_plan.h).
    Result<ReplacementPlan> replacement(const ReplacementQuestion& question, CalendarDay today) const;
    /// How long kit of each type really lasted here, by kit type (core/plan/lasting/kit_life.h).
    std::vector<KitLife> kitLives(CalendarDay today) const;

private:
    ClubState* m_state;
};

} // namespace core
