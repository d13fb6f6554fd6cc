#pragma once

#include "core/register/item_name.h"

#include <string>
#include <vector>

namespace core {

// Items of the tests of pure rules have got new tags, so that whoever takes a tag for an id is found out.

inline std::string tagOn(const std::string& id) {
    return "tag of " + id;
}

inline ItemName itemNamed(const std::string& id) {
    return {id, tagOn(id)};
}

inline std::vector<std::string> idsOf(const std::vector<ItemName>& items) {
    std::vector<std::string> ids;
    for (const ItemName& item : items)
        ids.push_back(item.id);
    return ids;
}

} // namespace core
