#pragma once

#include "core/check/boat_check.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// Why a boat is not rescue ready.
struct NotReadyReason {
    enum class Kind {
        NeverChecked,
        CheckOpen,
        Finding,
        BecameDue,
        BecameMissing,
        BecameUnserviceable,
        SeenElsewhere,
        LogOpen
    };
    Kind kind = Kind::NeverChecked;
    std::optional<Finding> finding; ///< of the last check, or made now
    std::string code;
    std::string kitType;
    std::string elsewhere; ///< boat or place where it was seen since
};

struct BoatCondition {
    enum class Kind { NotReady, Out, RescueReady };
    std::string boat;
    std::string boatClass;
    Kind kind = Kind::NotReady;
    std::optional<Instant> since; ///< of the last signed check
    std::string by;
    std::vector<NotReadyReason> reasons;
    std::string urgent; ///< reason of an urgent launch, until the next complete check
};

const char* nameOf(BoatCondition::Kind kind); ///< "not-ready", "out", "rescue-ready"

} // namespace core
