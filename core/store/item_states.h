#pragma once

#include "core/register/item.h"
#include "core/upkeep/service_state.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

class Database;

/// The state that an item really is in: the newest given state, unless it is 'missing' and the item was seen
/// since, or somebody recorded a service of it; without any, what its service records say.
struct StateNow {
    ItemState state = ItemState::Serviceable;
    std::optional<CalendarDay> since;
    std::string why;
    std::string given;        ///< the text in force, empty: none was given
    std::string missingStamp; ///< of the fact that marked it missing, while it is
    std::string missingCheck; ///< the return check that missed it, if one did
    StateApart apart;         ///< what it is apart from being missing
    std::string apartStamp;   ///< of the fact that gave it that; empty: none did
};

/// What the record says of the states of items. All throw StoreFailure.
namespace itemStates {

/// The state before any sighting with a stamp of `before` or later counts; empty: now.
StateNow now(Database& database, const std::string& code, const std::vector<ServiceRecord>& services,
             const std::string& before = {});
/// Ids of the facts by which the item is written off, or missing besides, newest first; empty: it is
/// neither.
std::vector<std::string> goneSince(Database& database, const std::string& code);
std::vector<std::string>
codesEverMissing(Database& database); ///< that were given the state "missing" once; by code
/// Stamp of the newest fact that gave the item a home boat or place, or took it; empty: none.
std::string homeGivenAt(Database& database, const std::string& code);

} // namespace itemStates
} // namespace core
