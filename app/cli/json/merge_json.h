#pragma once

#include "core/club/club_exchange.h"

#include <string>

namespace app {

std::string mergeJson(const core::CameIn& cameIn);

} // namespace app
