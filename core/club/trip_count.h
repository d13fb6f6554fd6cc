#pragma once

#include "core/answers/trip_use.h"
#include "core/check/check_record.h"

namespace core {

struct ClubState;

// Hours and launches of a trip, counted to all that was aboard when the boat went out. Both work in the
// caller's transaction and throw StoreFailure.

/// Counts what a trip adds, on the day on which its return check was opened. Right after the fact that tells
/// of the trip, so that it is known what that account wrote.
void countTrip(ClubState& state, const CheckRun& run, const TripUse& added);
/// Takes back what that account counted, after the account itself; a thing of which nothing else was told for
/// that day is then as it was.
void uncountTrip(ClubState& state, const CheckRun& run, const RecordedAct& trip);

} // namespace core
