#include "core/register/operation.h"

#include "core/base/error_code.h"
#include "core/base/given_text.h"

#include <utility>

namespace core {
namespace {

std::optional<Error> faultOf(const Operation& operation, CalendarDay today) {
    if (operation.hours && !(*operation.hours >= 0 && *operation.hours <= 10000))
        return Error{ErrorCode::HoursOutOfRange};
    if (operation.launches < 1 || operation.launches > 1000) return Error{ErrorCode::LaunchesOutOfRange};
    if (operation.left && operation.back && *operation.back < *operation.left)
        return Error{ErrorCode::BackBeforeLeft};
    for (const auto& time : {operation.left, operation.back})
        if (time && time->localDay() > today)
            return Error{ErrorCode::HappeningInFuture, {time->localDay().iso(), today.iso()}};
    return std::nullopt;
}

} // namespace

Result<Operation> operationFrom(Operation given, CalendarDay today) {
    if (auto fault = faultOf(given, today)) return *fault;
    for (auto [text, what] : {std::pair(&given.fuel, "fuel"), std::pair(&given.incidents, "incidents")}) {
        auto taken = proseFrom(*text, what);
        if (!taken) return taken.error();
        *text = *taken;
    }
    for (std::string& person : given.people) {
        auto name = nameFrom(person, "people");
        if (!name) return name.error();
        person = *name;
    }
    return given;
}

} // namespace core
