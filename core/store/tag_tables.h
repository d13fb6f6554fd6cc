#pragma once

#include "core/store/database.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace core::tagTables {

/// The item's new tag.
void put(Database& database, const std::string& tag, const std::string& stamp, const std::string& item);

/// The code of the item that a tag names now: the tag itself unless tags were changed. Empty: the tag was
/// replaced.
std::optional<std::string> itemOf(Database& database, const std::string& tag);
/// The tag that names the item now: its own code unless that was replaced.
std::string tagOf(Database& database, const std::string& item);
/// The code of the item that a tag names or once named: the tag itself unless it is a later tag of an item.
std::string everOf(Database& database, const std::string& tag);
/// The later tags of all items: item and the tag that names it now.
std::map<std::string, std::string> changed(Database& database);

const std::vector<std::string>& tables();

} // namespace core::tagTables
