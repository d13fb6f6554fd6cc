#pragma once

#include "core/check/boat_check.h"

#include <functional>
#include <nlohmann/json_fwd.hpp>
#include <string>

namespace core {

/// A check's answer as it is signed into the record: what was asked, what counted and what was found on that
/// day, so that later changes of rules or manifest do not change what an old check shows.
nlohmann::json jsonOf(const CheckAnswer& answer);

/// Reads what jsonOf wrote. Of a rule, only what a finding says of it comes back. The record has the ids of
/// items: `tagOf` says which tag is on the item of that id now.
CheckAnswer answerFrom(const nlohmann::json& json,
                       const std::function<std::string(const std::string&)>& tagOf);

} // namespace core
