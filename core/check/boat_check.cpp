#include "core/check/boat_check.h"

#include "core/check/launch_check.h"
#include "core/check/return_check.h"

namespace core {

CheckAnswer judge(const BoatCheckInput& input) {
    return input.phase == Phase::Launch ? judgeLaunch(input) : judgeReturn(input);
}

} // namespace core
