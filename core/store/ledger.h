#pragma once

#include "core/record/facts.h"
#include "core/record/verification.h"
#include "core/store/database.h"

#include <string>

namespace core {

/// Appends facts to this machine's chain and applies each to the tables, in the caller's transaction.
class Ledger {
public:
    explicit Ledger(Database& database);

    /// Needs an open write transaction. Returns the fact as it was written.
    Fact append(const FactBody& body, const std::string& by);

    const std::string& device() const { return m_device; }
    std::string head() const; ///< hash of the newest fact of this machine, empty if none

    /// Gives a new file its machine. Needs an open write transaction.
    static void nameDevice(Database& database);

private:
    Database& m_database;
    std::string m_device;
};

/// Applies one fact to the tables. Order-free: whatever the order in which the facts of several machines
/// arrive, the tables come out the same. Needs the fact in the fact table (an old fact of a row makes the row
/// be built anew).
void apply(Database& database, const Fact& fact);
/// The same of a fact that was just made of `body`.
void apply(Database& database, const Fact& fact, const FactBody& body);

/// Empties `target`'s tables and applies all facts of `source` to them in the order of their stamps. The two
/// may be one.
void rebuildTables(Database& source, Database& target);

/// Looks for what was changed behind the program's back: each machine's chain (numbers without gaps, hashes,
/// canonical bodies), the tables against tables made anew from the facts, and SQLite's own integrity check.
/// Leaves `head` empty.
Verification verifyStore(Database& database);

} // namespace core
