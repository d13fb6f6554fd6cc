#pragma once

#include "core/register/item.h"

#include <string>

namespace core {

/// An item of the register with the tag that names it now: its own code, unless that tag was replaced.
struct KitEntry {
    Item item;
    std::string tag;
};

} // namespace core
