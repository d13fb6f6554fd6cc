#pragma once

#include "core/register/operation.h"

#include <nlohmann/json_fwd.hpp>

namespace core {

/// An operation as it stands in the record: instants and numbers only where known.
nlohmann::json jsonOf(const Operation& operation);
Operation operationFrom(const nlohmann::json& from);

} // namespace core
