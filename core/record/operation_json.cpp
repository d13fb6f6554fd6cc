#include "core/record/operation_json.h"

#include <nlohmann/json.hpp>

namespace core {

using nlohmann::json;

json jsonOf(const Operation& operation) {
    json body = {{"people", operation.people},
                 {"launches", operation.launches},
                 {"fuel", operation.fuel},
                 {"incidents", operation.incidents}};
    if (operation.left) body["left"] = operation.left->iso();
    if (operation.back) body["back"] = operation.back->iso();
    if (operation.hours) body["hours"] = *operation.hours;
    return body;
}

Operation operationFrom(const json& from) {
    Operation operation;
    operation.left = Instant::parse(from.value("left", ""));
    operation.back = Instant::parse(from.value("back", ""));
    operation.people = from.value("people", std::vector<std::string>());
    if (const auto hours = from.find("hours"); hours != from.end()) operation.hours = hours->get<double>();
    operation.launches = from.value("launches", 1);
    operation.fuel = from.value("fuel", "");
    operation.incidents = from.value("incidents", "");
    return operation;
}

} // namespace core
