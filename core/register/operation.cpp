#include "core/register/operation.h"

#include "core/base/error_code.h"

namespace core {

std::optional<Error> faultOf(const Operation& operation) {
    if (operation.hours && !(*operation.hours >= 0 && *operation.hours <= 10000))
        return Error{ErrorCode::HoursOutOfRange};
    if (operation.launches < 1 || operation.launches > 1000) return Error{ErrorCode::LaunchesOutOfRange};
    if (operation.left && operation.back && *operation.back < *operation.left)
        return Error{ErrorCode::BackBeforeLeft};
    return std::nullopt;
}

} // namespace core
