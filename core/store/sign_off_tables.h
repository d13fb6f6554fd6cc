#pragma once

#include "core/check/boat_check.h"
#include "core/check/check_record.h"
#include "core/store/database.h"

#include <optional>
#include <string>
#include <vector>

/// Rows of the tables about what was signed. All throw StoreFailure, also for a row that cannot be
/// understood: the error says where it stands.
namespace core::signOffTables {

/// `answer`: as it was signed, see core/record/documents.h.
void putSignOff(Database& database, const SignOff& signOff, const std::string& outcome,
                const std::string& answer);

bool isUrgentEnded(Database& database, const std::string& check);
void putUrgentEnded(Database& database, const std::string& check, const std::string& stamp);

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

} // namespace core::signOffTables
