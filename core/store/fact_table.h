#pragma once

#include "core/record/fact.h"
#include "core/store/database.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace core::factTable {

std::string device(Database& database);
void setDevice(Database& database, const std::string& device);

void insert(Database& database, const Fact& fact);
std::optional<Fact> newestOf(Database& database, const std::string& device);

/// Every fact by device and number: the order of the chains.
void forEachInChain(Database& database, const std::function<void(const Fact&)>& visit);
/// Every fact by stamp: the order in which the newest comes last.
void forEachByStamp(Database& database, const std::function<void(const Fact&)>& visit);
/// The facts that wrote one row of the register, by stamp.
std::vector<Fact> ofRow(Database& database, const std::string& kind, const std::string& key);
/// The facts that wrote rows of that kind, by stamp.
std::vector<Fact> ofKind(Database& database, const std::string& kind);
std::optional<Fact> byStamp(Database& database, const std::string& stamp);

} // namespace core::factTable
