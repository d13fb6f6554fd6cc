#pragma once

#include "core/base/instant.h"
#include "core/check/phase.h"
#include "core/club/club.h"

#include <string>

namespace app {

/// A check that nobody wants any more.
struct LetGo {
    std::string where; ///< boat or place
    core::Phase phase = core::Phase::Launch;
    std::string reason; ///< wanted where something stands in the check
    bool json = false;
};

/// Closes the unfinished check without a signature, says so, and gives the exit code.
int letGo(core::Club& club, const LetGo& asked, core::Moment moment);

} // namespace app
