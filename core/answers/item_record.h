#pragma once

#include "core/register/item_name.h"
#include "core/upkeep/due_date.h"

#include <string>
#include <vector>

namespace core {

/// What became of an event that was told of an item.
struct Happened {
    ItemName item;
    std::string event;         ///< as the rules spell it
    bool isNew = false;        ///< false: it stood recorded already
    std::vector<RuleDue> dues; ///< rules that wait for it, as they stand now
};

/// Which service record of an item; what it says besides.
struct ServiceEntry {
    std::string rule;
    std::string part; ///< empty: the item's own rule
    std::string day;  ///< as it was given: a day, a month or a year
    bool passed = true;
    std::string by;
    std::string note;
};

} // namespace core
