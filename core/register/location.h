#pragma once

#include <compare>
#include <string>
#include <utility>

namespace core {

/// Where a thing is, or where a check is done: a boat or a place of the club. Both may bear one name.
struct Location {
    enum class Kind { Place, Boat }; ///< where locations are listed, places come first
    Kind kind = Kind::Place;
    std::string name; ///< as the register spells it

    static Location boat(std::string name) { return {Kind::Boat, std::move(name)}; }
    static Location place(std::string name) { return {Kind::Place, std::move(name)}; }
    bool isBoat() const { return kind == Kind::Boat; }

    auto operator<=>(const Location&) const = default;
};

} // namespace core
