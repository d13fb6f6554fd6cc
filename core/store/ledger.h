#pragma once

#include "core/record/facts.h"
#include "core/record/verification.h"
#include "core/store/database.h"
#include "core/store/kept_keys.h"

#include <optional>
#include <string>
#include <vector>

namespace core {

/// Appends facts to this machine's chain, signed with its key, and applies each to the tables, in the
/// caller's transaction; the caller says how that ended.
///
/// Which machine writes is decided at the first append of each transaction: the one whose key this user has
/// and whose newest known fact is in the file. There is none in a copy made with a file manager, in a
/// restored backup, for another user or on another computer: a new machine begins there. So no two files go
/// on with one chain.
class Ledger {
public:
    explicit Ledger(Database& database)
        : m_database(database) {}
    ~Ledger() { undone(); }
    Ledger(const Ledger&) = delete;
    Ledger& operator=(const Ledger&) = delete;

    /// Needs an open write transaction. Returns the fact as it was written. StoreFailure when the file cannot
    /// be written, or the newest fact's instant cannot be read.
    Fact append(const FactBody& body, const std::string& by);

    /// What is appended from now on, until the transaction ends, says that it is proven by that person's PIN;
    /// empty: by nobody's.
    void prove(const std::string& person) { m_proven = person; }
    const std::string& prover() const { return m_proven; }

    /// The machine that would go on with its chain here; empty: a new one would begin. Changes nothing.
    std::string machineToGoOn() const;

    /// What was appended is about to be committed. The key's note of the newest fact is made now: should the
    /// program be killed before it can be made, another file of the same age could go on with the chain.
    void committing();
    void committed(); ///< it is in the file
    void undone();    ///< it is not; does nothing when nothing was appended

private:
    void begin();
    void end();
    void chooseMachine();
    Fact next(const std::string& by) const;
    void put(Fact& fact, const FactBody& body, const std::string& proven);
    bool isInFile(const OwnMachine& machine) const;

    Database& m_database;
    std::optional<KeptKeys> m_keys;
    std::optional<OwnMachine> m_own;      ///< of the last transaction that wrote
    bool m_isKept = false;                ///< its key is, or will be, among the kept ones
    std::optional<KeptKeys::Turn> m_turn; ///< while something is written with a kept key
    bool m_isWriting = false;             ///< something was appended that is neither committed nor undone
    ChainHead m_newHead;
    std::string m_proven;   ///< by whose PIN; empty: nobody's
    bool m_isNoted = false; ///< the new head stands with the key, and is not committed yet
};

/// The id of the club that the file is of: of the machine that began it. Empty in an empty file.
std::string clubOf(Database& database);

/// The machine that this user would go on with in the file: of those that wrote there the one that wrote
/// most. Empty: a new one would begin.
std::string ownMachineOf(Database& database);

/// Applies one fact to the tables. Order-free: whatever the order in which the facts of several machines
/// arrive, the tables come out the same. Needs the fact in the fact table (an old fact of a row makes the row
/// be built anew).
void apply(Database& database, const Fact& fact);
/// The same of a fact that was just made of `body`.
void apply(Database& database, const Fact& fact, const FactBody& body);

/// Names of the tables that facts are applied to: a rebuild makes them, verify compares them.
std::vector<std::string> derivedTables();

/// Empties `target`'s tables and applies all facts of `source` to them in the order of their stamps. The two
/// may be one.
void rebuildTables(Database& source, Database& target);

/// Looks for what was changed behind the program's back: each machine's chain (numbers without gaps, hashes,
/// signatures, canonical bodies), the schema, the tables against tables made anew from the facts, private
/// cells against their digests, and SQLite's own integrity check.
Verification verifyStore(Database& database);

} // namespace core
