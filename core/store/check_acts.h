#pragma once

#include "core/check/check_record.h"
#include "core/register/operation.h"
#include "core/store/database.h"

#include <optional>
#include <string>
#include <vector>

/// What was done in checks besides the sightings, what of it was taken back, and checks that were let go.
/// Each act stands under the id of its fact; the newest holds that was not taken back. All throw
/// StoreFailure.
namespace core::checkActs {

/// Of a fact that is about a check.
struct ActPlace {
    const std::string& id; ///< of the fact
    const std::string& stamp;
    const std::string& check;
};

void putNames(Database& database, const ActPlace& place, const std::vector<std::string>& people);
void putPoint(Database& database, const ActPlace& place, const std::string& point, double value);
/// `isAct`: somebody gave it; else the check was opened with it, which is nothing that an undo takes back.
void putEvent(Database& database, const ActPlace& place, const std::string& event, bool isAct);
/// `body`: JSON, see core/record/documents.h.
void putOperation(Database& database, const ActPlace& place, const std::string& boat,
                  const std::string& body);
void putTakenBack(Database& database, const std::string& act, const std::string& stamp);
void putClosed(Database& database, const std::string& check, const std::string& stamp,
               const std::string& reason);

std::vector<std::string> names(Database& database, const std::string& check);
std::optional<double> pointValue(Database& database, const std::string& check, const std::string& point);
std::string eventOf(Database& database, const std::string& check); ///< empty: filed under none
std::optional<Operation> operation(Database& database, const std::string& check);
bool isTakenBack(Database& database, const std::string& act);
bool isClosed(Database& database, const std::string& check);

/// What stands of a check, newest first, at most so many.
std::vector<RecordedAct> standing(Database& database, const std::string& check, int most);

const std::vector<std::string>& tables();

} // namespace core::checkActs
