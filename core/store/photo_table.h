#pragma once

#include "core/register/photo.h"
#include "core/store/database.h"

#include <optional>
#include <string>
#include <vector>

/// Photographs, which stand beside the facts, and what each is of; one that was taken back is of nothing. All
/// throw StoreFailure.
namespace core::photoTable {

void put(Database& database, const std::string& stamp, const Photo& photo);
/// Those of an item and of the log entries about it, as they were recorded.
std::vector<Photo> ofItem(Database& database, const std::string& item);
std::vector<Photo> ofBoat(Database& database, const std::string& boat); ///< of the log entries about it
std::vector<Photo> ofEntry(Database& database, const std::string& entry);
std::vector<Photo> all(Database& database);

/// Puts the picture beside the record; one that is there already stays.
void keep(Database& database, const std::string& sha256, const std::string& bytes);
std::optional<std::string> bytesOf(Database& database, const std::string& sha256);
std::vector<std::string> kept(Database& database); ///< hashes under which pictures stand there

/// Names of the tables that facts are applied to, for comparing a rebuild.
const std::vector<std::string>& tables();

} // namespace core::photoTable
