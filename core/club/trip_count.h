#pragma once

#include "core/answers/trip_use.h"
#include "core/check/check_record.h"

#include <string>

namespace core {

struct ClubState;

/// Counts what a trip adds, on the day on which its return check was opened, to all that was aboard when the
/// boat went out. In the caller's transaction. `takenBack`: stamp of the account that holds no more, where
/// that is why; a thing of which nothing was told for that day before it is then as it was. Throws
/// StoreFailure.
void countTrip(ClubState& state, const CheckRun& run, const TripUse& added,
               const std::string& takenBack = {});

} // namespace core
