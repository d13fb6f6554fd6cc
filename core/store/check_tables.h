#pragma once

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

/// Rows of the tables about checks, but for what was signed (sign_off_tables.h). All throw StoreFailure, also
/// for a row that cannot be understood: the error says where it stands.
namespace checkTables {

CheckRun runOf(const Statement& row); ///< its columns: id, stamp, boat, phase, opened

void putRun(Database& database, const CheckRun& run);
void putSighting(Database& database, const Sighting& sighting);

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

/// The return check, signed or not, of the first standing sighting of that tag in one, with a stamp above
/// `after`.
std::optional<CheckRun> firstReturnOf(Database& database, const std::string& code, const std::string& after);

const std::vector<std::string>& tables();

} // namespace checkTables
} // namespace core
