#pragma once

#include "app/cli/json/json_parts.h"
#include "core/club/club_exchange.h"

#include <string>

namespace app {

std::string mergeJson(const core::CameIn& cameIn);
Json cameInJson(const core::CameIn& cameIn); ///< as part of another document

} // namespace app
