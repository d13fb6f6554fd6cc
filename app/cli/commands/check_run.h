#pragma once

#include "app/cli/commands/points_file.h"
#include "app/cli/commands/trip_told.h"
#include "app/cli/json/json_out.h"
#include "app/flow/check_flow.h"
#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "scanner/files/read_path.h"

#include <functional>
#include <iosfwd>
#include <string>
#include <vector>

namespace app {

/// A check's input, looked at beforehand: nothing in it can be refused any more.
struct CheckPlan {
    std::string boat; ///< or the place of a stocktake
    core::Phase phase = core::Phase::Launch;
    std::vector<std::string> people; ///< driver first; empty: the names given before hold
    std::vector<PointValue> points;
    std::vector<scanner::PathReading> pictures;
    std::istream* codes = nullptr; ///< one a line; null: none
    Signature signature;           ///< by nobody: it is not signed, but for the finish tag
    std::string event;
    std::optional<TripTold> trip; ///< of a return check
    core::CalendarDay today;
    std::function<core::Moment()> now;
};

/// Carries the plan out: opens or goes on with the check, names, points, codes in order, and signs if asked.
/// Each step is durable before the next.
core::Result<CheckReport> runCheck(core::Club& club, const CheckPlan& plan);

} // namespace app
