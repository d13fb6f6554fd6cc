#pragma once

#include "core/upkeep/due_date.h"

#include <string>

namespace core {

/// One item and rule on the due list.
struct DueRow {
    std::string code;
    std::string kitType;
    std::string size;
    std::string boat;
    RuleDue due;
};

} // namespace core
