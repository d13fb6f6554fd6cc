#pragma once

#include "core/check/boat_check.h"
#include "core/check/check_record.h"
#include "core/store/database.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace core {

/// Where a tag was seen last, and when that was recorded.
struct LastSeen {
    std::string stamp;
    Location location;
};

/// Rows of the tables about checks. All throw StoreFailure, also for a row that cannot be understood: the
/// error says where it stands.
namespace checkTables {

CheckRun runOf(const Statement& row); ///< its columns: id, stamp, boat, phase, opened

void putRun(Database& database, const CheckRun& run);
void putSighting(Database& database, const Sighting& sighting);
/// `answer`: as it was signed, see core/record/documents.h.
void putSignOff(Database& database, const SignOff& signOff, const std::string& outcome,
                const std::string& answer);

bool isUrgentEnded(Database& database, const std::string& check);
void putUrgentEnded(Database& database, const std::string& check, const std::string& stamp);

std::optional<CheckRun> run(Database& database, const std::string& check);
/// The newest check of that boat or place and phase, unless it is signed or closed.
std::optional<CheckRun> unfinished(Database& database, const std::string& where, Phase phase);
/// Neither signed nor closed, of boats and places, newest first. Also those in which nothing stands.
std::vector<CheckRun> allUnfinished(Database& database);
/// Standing sightings (not taken back) of a check, oldest first; each tag may stand more than once.
std::vector<Sighting> sightings(Database& database, const std::string& check);
/// The newest standing sighting of a tag with a stamp above `after` and below `before`; empty bounds: no
/// bound.
std::optional<Sighting> newestSighting(Database& database, const std::string& code,
                                       const std::string& after = {}, const std::string& before = {});
/// What is left of an item's tag, 4 (as new) to 0 (about to fail): the best of the last three readings that
/// could tell, since the tag was given. Of all items, or of that one; what nobody could tell of has none.
std::map<std::string, double> printGrades(Database& database, const std::string& code = {});
std::optional<double> printGrade(Database& database, const std::string& code);
bool isAnythingSeen(Database& database); ///< some sighting of a kit's tag stands
/// Where that was.
std::optional<LastSeen> lastSeen(Database& database, const std::string& code, const std::string& after = {});

std::optional<SignOff> signOff(Database& database, const std::string& check);
/// Launches and returns of all boats, in the order in which they were signed.
std::vector<SignOff> signOffsOfBoats(Database& database);
/// The answer that was signed; empty: the check is not signed.
std::optional<CheckAnswer> signedAnswer(Database& database, const std::string& check);
/// The newest sign-off of a boat, launch or return; of one phase when `phase` is given.
std::optional<SignOff> newestSignOff(Database& database, const std::string& boat,
                                     std::optional<Phase> phase = {});
/// Boats whose newest launch was urgent and that were not whole since; few, whatever the record's size.
std::vector<SignOff> standingUrgent(Database& database);
/// The first launch or return sign-off of a boat with a stamp above `after`.
std::optional<SignOff> firstSignOff(Database& database, const std::string& boat, const std::string& after);
/// All launch and return sign-offs of a boat, newest first: so many rows as it has trips.
std::vector<SignOff> signOffsOf(Database& database, const std::string& boat);
/// The newest signed launch check in which that tag stands, with a stamp below `before` when given.
std::optional<SignOff> newestLaunchOf(Database& database, const std::string& code,
                                      const std::string& before = {});
/// The newest launch check of a boat signed before `before`.
std::optional<SignOff> newestLaunchSignedBefore(Database& database, const std::string& boat,
                                                const std::string& before);

/// Whether that tag stands in a return check of that boat signed after `after`.
bool cameBackOn(Database& database, const std::string& boat, const std::string& code,
                const std::string& after);
/// The return check, signed or not, of the first standing sighting of that tag in one, with a stamp above
/// `after`.
std::optional<CheckRun> firstReturnOf(Database& database, const std::string& code, const std::string& after);

const std::vector<std::string>& tables();

} // namespace checkTables
} // namespace core
