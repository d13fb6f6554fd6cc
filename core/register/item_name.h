#pragma once

#include <string>

namespace core {

/// What an item is called. The record and every act name it by its id, for ever; a person knows it by the tag
/// that is on it now. Until it gets a new tag both are one text. A tag that the register does not know is its
/// own id; without an item both are empty.
struct ItemName {
    std::string id;
    std::string tag;

    bool operator==(const ItemName&) const = default;
};

} // namespace core
