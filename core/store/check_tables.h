#pragma once

#include "core/store/database.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// Rows of the tables about checks, as texts of the record. Instants are ISO, stamps order what was written.
struct CheckRun {
    std::string check;
    std::string stamp;
    std::string boat;  ///< or the place of a stocktake
    std::string phase; ///< "launch", "return" or "stocktake"
    std::string opened;
};

struct Sighting {
    std::string id; ///< the fact's id
    std::string stamp;
    std::string check;
    std::string code;
    std::string at;
    std::string seenBy;
};

struct SignOff {
    std::string check;
    std::string stamp;
    std::string boat;
    std::string phase;
    std::string by;
    std::string at;
    std::string outcome;
    std::string urgent;
    std::string answer; ///< JSON, see ledger/answer_json.h
};

namespace checkTables {

void putRun(Database& database, const CheckRun& run);
void putNames(Database& database, const std::string& check, const std::string& stamp,
              const std::vector<std::string>& people);
void putSighting(Database& database, const Sighting& sighting);
void putUndone(Database& database, const std::string& sighting, const std::string& stamp);
void putPoint(Database& database, const std::string& check, const std::string& point,
              const std::string& stamp, double value);
void putSignOff(Database& database, const SignOff& signOff);

std::optional<CheckRun> run(Database& database, const std::string& check);
/// The newest check of that boat and phase that is not signed.
std::optional<CheckRun> unfinished(Database& database, const std::string& boat, const std::string& phase);
/// Of boats and places, newest first.
std::vector<CheckRun> allUnfinished(Database& database);
std::vector<CheckRun> runsOf(Database& database, const std::string& boat);
std::vector<std::string> names(Database& database, const std::string& check);
std::optional<double> pointValue(Database& database, const std::string& check, const std::string& point);

/// Standing sightings (not undone) of a check, oldest first; each tag may stand more than once.
std::vector<Sighting> sightings(Database& database, const std::string& check);
/// The newest standing sighting of a tag with a stamp above `after` and below `before`; empty bounds: no
/// bound.
std::optional<Sighting> newestSighting(Database& database, const std::string& code,
                                       const std::string& after = {}, const std::string& before = {});

std::optional<SignOff> signOff(Database& database, const std::string& check);
/// The newest sign-off of a boat, launch or return; of one phase when `phase` is given.
std::optional<SignOff> newestSignOff(Database& database, const std::string& boat,
                                     const std::string& phase = {});
/// Launch and return sign-offs of a boat with a stamp above `after`, newest first.
std::vector<SignOff> signOffsOf(Database& database, const std::string& boat, const std::string& after = {});
/// The newest signed launch check in which that tag stands, with a stamp below `before` when given.
std::optional<SignOff> newestLaunchOf(Database& database, const std::string& code,
                                      const std::string& before = {});

/// The newest launch check of a boat signed before `before`.
std::optional<SignOff> newestLaunchSignedBefore(Database& database, const std::string& boat,
                                                const std::string& before);
/// The return check, signed or not, of the first standing sighting of that tag in one, with a stamp above
/// `after`.
std::optional<CheckRun> firstReturnOf(Database& database, const std::string& code, const std::string& after);

void clear(Database& database);
const std::vector<std::string>& tables();

} // namespace checkTables
} // namespace core
