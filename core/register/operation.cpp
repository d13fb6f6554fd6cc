#include "core/register/operation.h"

namespace core {
namespace {

Error badOperation(const std::string& what, const std::string& mend) {
    return {ErrorKind::BadInput, what, {}, mend};
}

} // namespace

std::optional<Error> faultOf(const Operation& operation) {
    if (operation.hours && !(*operation.hours >= 0 && *operation.hours <= 10000))
        return badOperation("hours run are from 0 to 10000", "read the hour counter again");
    if (operation.launches < 1 || operation.launches > 1000)
        return badOperation("launches are from 1 to 1000", "count them again");
    if (operation.left && operation.back && *operation.back < *operation.left)
        return badOperation("the boat was back before it left", "look at the two times");
    return std::nullopt;
}

} // namespace core
