#pragma once

#include "core/check/boat_check.h"
#include "core/check/judged_item.h"

#include <functional>
#include <optional>
#include <vector>

namespace core {

/// What a check of this kind says of kit that is not where it should be.
struct ExpectedFindings {
    std::function<Finding(const Item&)> notSeen; ///< expected, and not seen
    /// Seen, and not expected; empty where there is nothing to say of that.
    std::function<std::optional<Finding>(const JudgedItem&)> notExpected;
};

/// The answer of a check that asks whether certain items are there (a return check, a stocktake). Its lines
/// group them by kit type; `score` counts what is there under `required`. Pure.
CheckAnswer judgeExpected(const BoatCheckInput& input, const std::vector<const Item*>& expected,
                          const ExpectedFindings& findings);

} // namespace core
