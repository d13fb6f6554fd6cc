#pragma once

#include "core/club/club_exchange.h"

#include <QString>

namespace app {

// What came in from other machines. Neither ends with a full stop.

/// "212 facts from 2 machines: 3 checks, 41 sightings, 5 changes of the register", "nothing new".
QString cameInWords(const core::CameIn& cameIn);
/// What somebody must look at, and where.
QString lookAtInWords(const core::LookAt& found);

} // namespace app
