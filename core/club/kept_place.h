#pragma once

#include "core/club/club_hub.h"

#include <optional>
#include <string>

/// Where this user's files of a club exchange: kept beside the machine's keys, and so on this computer alone.
/// In the club file whoever may write to it could send the record elsewhere.
namespace core::keptPlace {

std::optional<HubPlace> of(const std::string& club);
void put(const std::string& club, const HubPlace& place); ///< StoreFailure: HubPlaceNotKept
void remove(const std::string& club);                     ///< the same

} // namespace core::keptPlace
