#include "core/base/calendar_day.h"
#include "core/base/error_code.h"
#include "core/base/result.h"
#include "core/club/club_plans.h"
#include "core/club/club_state.h"
#include "core/register/boat.h"

#include "core/club/club_register.h"

#include "core/plan/lasting/kit_life.h"
#include "core/plan/replacement/replacement_plan.h"

#include <fmt/format.h>

namespace core {
namespace {

/// Also refuses what is no number.
Outcome checked(const ReplacementQuestion& question) {
    if (question.months < 1 || question.months > 1200)
        return Error{ErrorCode::HorizonOutOfRange, {std::to_string(question.months)}};
    if (!(question.confidence > 0 && question.confidence < 1))
        return Error{ErrorCode::ConfidenceOutOfRange, {fmt::format("{}", question.confidence)}};
    if (question.coverMonths < 0 || question.coverMonths > 1200)
        return Error{ErrorCode::CoverOutOfRange, {std::to_string(question.coverMonths)}};
    if (question.marginDays < 0 || question.marginDays > 3650)
        return Error{ErrorCode::MarginOutOfRange, {std::to_string(question.marginDays)}};
    if (!(question.prior.losses > 0 && question.prior.losses <= 1e6 && question.prior.itemYears > 0 &&
          question.prior.itemYears <= 1e9))
        return Error{ErrorCode::PriorOutOfRange};
    return Done{};
}

ReplacementInput inputOf(ClubState& state, CalendarDay today) {
    const ReadSnapshot asOfNow(*state.database);
    const RegisterStore& store = state.registerStore;
    ReplacementInput input;
    input.kitTypes = store.allKitTypes();
    for (const Boat& boat : ClubRegister(state).boatsHere(today))
        input.manifests.push_back(store.manifestOf(boat));
    input.items = store.allRecords();
    return input;
}

} // namespace

Result<ReplacementPlan> ClubPlans::replacement(const ReplacementQuestion& question, CalendarDay today) const {
    if (const Outcome good = checked(question); !good) return good.error();
    return guarded([&]() -> Result<ReplacementPlan> {
        return planReplacement(inputOf(*m_state, today), question, today);
    });
}

std::vector<KitLife> ClubPlans::kitLives(CalendarDay today) const {
    const ReadSnapshot asOfNow(*m_state->database);
    return kitLivesOf(m_state->registerStore.allKitTypes(), m_state->registerStore.allRecords(), today);
}

} // namespace core
