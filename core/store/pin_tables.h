#pragma once

#include "core/base/instant.h"
#include "core/store/database.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// PINs of people, what is asked of signatures, and the wrong PINs that were given. All throw StoreFailure.
namespace core::pinTables {

/// What a fact did to a person's PIN; the newest of a person holds.
enum class Change { Set, Cleared, Reset };

struct ChangeRow {
    std::string id, stamp; ///< of the fact
    std::string person;    ///< as the person is called now
    Change change = Change::Set;
    Instant at; ///< when it was recorded
    std::string by;
};
void put(Database& database, const ChangeRow& row);

/// A PIN that holds.
struct PinNow {
    std::string fact; ///< id of the fact that set it
    std::string person;
    std::string sealed; ///< see Pin; empty: what is kept is not what the fact tells of
};
/// Empty: the person has none, or it was erased, or is not in this file.
std::optional<PinNow> of(Database& database, const std::string& person);
std::vector<PinNow> all(Database& database); ///< by person
/// Ids of all facts that ever set that person's PIN.
std::vector<std::string> factsThatSet(Database& database, const std::string& person);
/// PINs that were reset at that instant or later, newest first.
std::vector<ChangeRow> resetsSince(Database& database, Instant at);

void putSignaturesProven(Database& database, const std::string& stamp, bool isAsked);
bool areSignaturesProven(Database& database);

/// Wrong PINs given for one person on one computer, since the last right one. Not in the record: they are of
/// this file on this computer.
struct WrongPins {
    std::int64_t wrong = 0;
    std::int64_t at = 0;    ///< the last, in milliseconds since 1970 by the computer's clock
    std::string boot;       ///< since which start of the computer it is `awake`
    std::int64_t awake = 0; ///< and that many milliseconds after it
};
WrongPins wrongPins(Database& database, const std::string& computer, const std::string& person);
/// None left: `wrong` 0.
void putWrongPins(Database& database, const std::string& computer, const std::string& person,
                  const WrongPins& wrong);

/// Names of the tables that facts are applied to, for comparing a rebuild.
const std::vector<std::string>& tables();

} // namespace core::pinTables
