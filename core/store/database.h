#pragma once

#include "core/base/database_file.h"
#include "core/base/store_failure.h"
#include "core/store/statement.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>

struct sqlite3;
struct sqlite3_stmt;

namespace core {

/// A connection to one SQLite file. Belongs to one thread. Every failure throws StoreFailure.
class Database {
public:
    enum class Mode {
        Create,
        ReadWrite,
        ReadOnly,  ///< leaves nothing beside the file, unless another one has it open or its log holds
                   ///< something
        Immutable, ///< read without locks: nobody may write to the file meanwhile
        Unlocked,  ///< the same with what its log holds, and nothing is made beside it
        Alone,     ///< read while nobody else has it open (else DatabaseLocked), and it stays as it is
        Memory,
        Passing ///< of its own, gone when it is closed; on the disk as far as it is large
    };

    /// Opens and sets what must be set before any transaction: foreign keys, busy timeout, synchronous=EXTRA.
    Database(const std::filesystem::path& file, Mode mode);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    /// Statements are kept by their text, so that a hot path prepares once. Not re-entrant for one text:
    /// finish reading before the same text is prepared again.
    Statement prepare(std::string_view sql);
    /// A whole script, trigger bodies included.
    void script(const std::string& sql);
    std::int64_t number(std::string_view sql); ///< the single value of a query
    std::string value(std::string_view sql);

    /// After the schema stands: WAL and FULL (see docs/decisions/durability.md). Where there can be no WAL it
    /// stays with a rollback journal and EXTRA.
    void switchToWal();
    /// Puts all that is in the write-ahead log into the file and empties the log. False: not all of it, for
    /// another program reads in it.
    bool emptyLog();
    /// The same while nothing is being done, without waiting: whoever copies or replaces the file then has
    /// all of it.
    void rest();
    /// A copy of the whole content, made by SQLite's backup interface.
    void copyTo(Database& target);
    bool isInPlace(); ///< the file is at its path, and no other one
    /// Throws FileReplaced when the file is no longer at its path: what is written to it would be lost.
    void requireFileInPlace();
    /// How often a connection of this program, this one or another, has waited for a lock on the file: a
    /// number that only grows while it is open. From any thread.
    std::uint64_t waits() const { return m_open->waits(); }
    /// Another number than before whenever something was written since, by this connection or another one.
    std::int64_t changeMark();
    sqlite3* handle() const { return m_handle; }
    std::string path() const; ///< empty in memory

private:
    sqlite3* m_handle = nullptr;
    std::optional<OpenDatabase> m_open;
    bool m_tidiesUp = false; ///< opened to be read, with nothing in its log
    std::unordered_map<std::string, sqlite3_stmt*> m_statements;
    std::int64_t m_changeMark = 0;
    std::int64_t m_changesOfOthers = 0;
    std::int64_t m_changesOfOwn = 0;
};

/// What is read while it lives is of one moment, whatever other programs write. Within a transaction it is so
/// anyway.
class ReadSnapshot {
public:
    explicit ReadSnapshot(Database& database);
    ~ReadSnapshot();
    ReadSnapshot(const ReadSnapshot&) = delete;
    ReadSnapshot& operator=(const ReadSnapshot&) = delete;

private:
    Database& m_database;
    bool m_isOwn;
};

/// Immediate write transaction to the file that is at its path; rolls back unless committed.
class Transaction {
public:
    explicit Transaction(Database& database);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    void commit();

private:
    Database& m_database;
    Statement m_rollback;
    bool m_open = true;
    bool m_hasFailed = false; ///< to commit
};

} // namespace core
