#pragma once

#include "core/record/facts.h"
#include "core/store/database.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace core::factTable {

void insert(Database& database, const Fact& fact);
std::optional<Fact> newestOf(Database& database, const std::string& machine);
std::optional<Fact> inChain(Database& database, const std::string& machine, std::int64_t seq);
std::vector<std::string> machines(Database& database); ///< that wrote to it, by id
/// The key that the machine's chain begins with; empty where it does not begin with its own.
std::string publicKeyOf(Database& database, const std::string& machine);
/// The facts of a machine with larger numbers than `seq`, by number.
void forEachAfter(Database& database, const std::string& machine, std::int64_t seq,
                  const std::function<void(const Fact&)>& visit);
/// The first `most` of them.
std::vector<Fact> after(Database& database, const std::string& machine, std::int64_t seq, int most);
/// The one with the largest, or smallest, stamp.
std::optional<Fact> newest(Database& database);
std::optional<Fact> oldest(Database& database);

std::string head(Database& database);                      ///< hash of the newest; empty: there is none
bool isThere(Database& database, const std::string& hash); ///< looks at all facts
/// Every fact by machine and number: the order of the chains.
void forEachInChain(Database& database, const std::function<void(const Fact&)>& visit);
/// Every fact by stamp: the order in which the newest comes last.
void forEachByStamp(Database& database, const std::function<void(const Fact&)>& visit);
/// Which row of the register that fact wrote: what the next two find it by.
void putRowOf(Database& database, const std::string& fact, std::string_view kind, const std::string& key);
/// The facts that wrote one row of the register, by stamp.
std::vector<Fact> ofRow(Database& database, const std::string& kind, const std::string& key);
/// The facts that wrote rows of that kind, by stamp.
std::vector<Fact> ofKind(Database& database, const std::string& kind);
/// The facts of a kind that writes no row, by stamp. Looks at all facts.
std::vector<Fact> ofPlainKind(Database& database, const std::string& kind);
std::optional<Fact> byStamp(Database& database, const std::string& stamp);
std::optional<Fact> byId(Database& database, const std::string& id);
/// The fact that stands so many places after that one in its chain; before it where `places` is negative.
std::optional<Fact> beside(Database& database, const Fact& fact, int places);
/// The facts of that kind which wrote a row whose key begins with `key` and a separator.
std::vector<Fact> ofRowsUnder(Database& database, const std::string& kind, const std::string& key);

/// Names of the tables that facts are applied to, for comparing a rebuild.
const std::vector<std::string>& tables();

/// Every fact about an item, a boat or a person, in any order, some of them twice: what wrote its rows, its
/// checks, sightings, what was taken back, signatures and log entries. Names in the register's spelling.
std::vector<Fact> ofItem(Database& database, const std::string& code);
std::vector<Fact> ofBoat(Database& database, const std::string& boat);
std::vector<Fact> ofPerson(Database& database, const std::string& person);

/// What the fact says, empty for a kind of a later program; throws StoreFailure when it cannot be read.
std::optional<FactBody> bodyOf(const Fact& fact);
/// The same of a fact that wrote a row.
RowWritten rowOf(const Fact& fact);
/// When the fact was recorded; throws StoreFailure like bodyOf.
Instant recordedAt(const Fact& fact);

} // namespace core::factTable
