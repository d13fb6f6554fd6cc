#pragma once

#include "core/club/club_hub.h"

#include <optional>
#include <string>

/// Where this user's files of a club exchange: kept beside the machine's keys, and so on this computer alone.
/// In the club file whoever may write to it could send the record elsewhere.
namespace core::keptPlace {

std::optional<HubPlace> of(const std::string& club);
void put(const std::string& club, const HubPlace& place); ///< StoreFailure: HubPlaceNotKept
/// They exchange no more, and whoever fetches one does not join again by that. StoreFailure as `put`.
void leave(const std::string& club);
bool isLeft(const std::string& club); ///< by `leave`, and not joined since

} // namespace core::keptPlace
