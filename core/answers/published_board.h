#pragma once

#include "core/answers/board.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// What a district reads of a boat: its condition, and the reasons in the words of who published them.
struct PublishedBoat {
    std::string boat;
    std::string boatClass;
    BoatCondition::Kind kind = BoatCondition::Kind::NotReady;
    std::optional<Instant> since; ///< of the last signed check
    std::string by;
    std::vector<std::string> reasons;
    std::string urgent; ///< reason of an urgent launch, until the next complete check
};

/// A club of the district, and the board that one of its machines published last.
struct PublishedBoard {
    std::string club;
    std::optional<Instant> at; ///< by the server's clock; empty: none was ever published
    std::string today;         ///< the day that it is of, by the machine's clock
    std::vector<PublishedBoat> boats;
    bool isReadable = true; ///< false: something was published that is no board, so nobody knows of its boats
};

} // namespace core
