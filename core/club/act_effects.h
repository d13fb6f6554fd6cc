#pragma once

#include "core/answers/trip_use.h"
#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/check/check_record.h"

#include <string>

namespace core {

struct ClubState;
struct RowChange;
class Ledger;

// What goes with an act besides its own fact. All work within the caller's write and throw
// StoreFailure.

/// Counts a trip's hours and launches to all that was aboard when the boat went out, on the day on which its
/// return check was opened. Right after the fact that tells of the trip, so that it is known what that
/// account wrote.
void countTrip(ClubState& state, Ledger& ledger, const CheckRun& run, const TripUse& added);
/// Takes back what that account counted, after the account itself; a thing of which nothing else was told for
/// that day is then as it was.
void uncountTrip(ClubState& state, Ledger& ledger, const CheckRun& run, const RecordedAct& trip);

/// What goes with a damage that was taken back: its log entry is closed with these words, and what service
/// rounds found while the damage held the item is made good. After the taking back.
void endDamage(ClubState& state, Ledger& ledger, const RecordedAct& damage, const std::string& closing,
               const std::string& by, CalendarDay today);

/// While a damage or a writing off held the item, a service round gave it no state of its own. What the
/// rounds since then found is made good, once that is taken back.
void judgeRoundsAnew(ClubState& state, Ledger& ledger, const std::string& code, CalendarDay today);

/// Writes a row of services.csv that a person changed. It withdraws or releases its item, as a record of a
/// service round does.
void writeRecord(ClubState& state, Ledger& ledger, const RowChange& change, const std::string& by,
                 Moment moment);

} // namespace core
