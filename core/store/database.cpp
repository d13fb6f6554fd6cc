#include "core/store/database.h"

#include "core/base/error_code.h"
#include "core/store/new_file.h"
#include "core/store/sqlite_failure.h"

#include <chrono>
#include <fmt/format.h>
#include <sqlite3.h>
#include <thread>

namespace core {
namespace {

/// How long another one's lock is waited for. Looked at each millisecond: SQLite's own waiting grows to a
/// tenth of a second, when who gives way (giving_way.h) has done so long ago.
int waitForLock(void* open, int tries) {
    constexpr int mostTries = 2000;
    if (tries == mostTries) return 0;
    static_cast<OpenDatabase*>(open)->countWait();
    std::this_thread::sleep_for(std::chrono::milliseconds(1));
    return 1;
}

int flagsOf(Database::Mode mode) {
    switch (mode) {
    case Database::Mode::Create:
        return SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE;
    case Database::Mode::ReadWrite:
    case Database::Mode::Alone: // to lock it and to leave nothing beside it, SQLite must be able to write
        return SQLITE_OPEN_READWRITE;
    case Database::Mode::ReadOnly:
    case Database::Mode::Unlocked:
        return SQLITE_OPEN_READONLY;
    case Database::Mode::Immutable:
        return SQLITE_OPEN_READONLY | SQLITE_OPEN_URI;
    case Database::Mode::Memory:
        return SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | SQLITE_OPEN_MEMORY;
    case Database::Mode::Passing:
        return SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE;
    }
    return SQLITE_OPEN_READONLY;
}

/// SQLite's own form of a file's URI: what means something in one is written as a number.
std::string immutableUri(const std::filesystem::path& file) {
    std::string uri = "file:";
    for (const char c : std::filesystem::absolute(file).string())
        uri += c == '%' || c == '?' || c == '#' ? fmt::format("%{:02x}", c) : std::string(1, c);
    return uri + "?immutable=1";
}

std::string nameOf(const std::filesystem::path& file, Database::Mode mode) {
    if (mode == Database::Mode::Memory) return ":memory:";
    if (mode == Database::Mode::Passing) return {}; // SQLite, "Temporary Databases"
    // A name that begins with "file:" would be read as a URI, and name another file.
    return mode == Database::Mode::Immutable ? immutableUri(file) : std::filesystem::absolute(file).string();
}

/// Then SQLite keeps in this program's memory what it would share with others beside the file, and nothing of
/// the log goes to the file when it is closed.
void keepAlone(sqlite3* handle) {
    sqlite3_busy_timeout(handle, 0); // who has it open has it for long
    const int code = sqlite3_exec(handle, "PRAGMA locking_mode = EXCLUSIVE", nullptr, nullptr, nullptr);
    if (code != SQLITE_OK) fail(handle, code);
    if (holdsSomething(sqlite3_db_filename(handle, "main"), "-wal"))
        sqlite3_db_config(handle, SQLITE_DBCONFIG_NO_CKPT_ON_CLOSE, 1, nullptr);
}

bool isAnythingBeside(const std::filesystem::path& file) {
    std::error_code unknown;
    return std::filesystem::exists(file.string() + "-wal", unknown) ||
           std::filesystem::exists(file.string() + "-shm", unknown);
}

/// Who may only read cannot take away what SQLite made beside the file for reading. Who may write does, by
/// closing it, if nobody else has it open ("Write-Ahead Logging", 2.1 and 8).
void tidyUpAfterReading(const std::string& file) {
    if (!isAnythingBeside(file)) return;
    sqlite3* handle = nullptr;
    if (sqlite3_open_v2(file.c_str(), &handle, SQLITE_OPEN_READWRITE | SQLITE_OPEN_NOMUTEX, nullptr) ==
        SQLITE_OK)
        sqlite3_exec(handle, "PRAGMA user_version", nullptr, nullptr, nullptr); // from here on it is in use
    sqlite3_close_v2(handle);
}

} // namespace

Database::Database(const std::filesystem::path& file, Mode mode) {
    const std::string name = nameOf(file, mode);
    m_tidiesUp = mode == Mode::ReadOnly && !holdsSomething(file, "-wal"); // what a killed one wrote stays
    const char* disk = mode == Mode::Unlocked ? "unix-none" : nullptr;    // of SQLite's own: without locks
    const int code = sqlite3_open_v2(name.c_str(), &m_handle, flagsOf(mode) | SQLITE_OPEN_NOMUTEX, disk);
    try {
        if (code != SQLITE_OK) fail(m_handle, code);
        m_open.emplace(path());
        sqlite3_extended_result_codes(m_handle, 1);
        sqlite3_busy_handler(m_handle, waitForLock, &*m_open);
        if (mode == Mode::Alone || mode == Mode::Unlocked) keepAlone(m_handle); // before anything is read
        // What a file's own schema says is foreign text: it runs nothing and corrupts nothing. What is
        // deleted, an erased measure say, is overwritten.
        sqlite3_db_config(m_handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
        script("PRAGMA foreign_keys = ON; PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON; "
               "PRAGMA secure_delete = ON; PRAGMA synchronous = EXTRA;");
    } catch (...) {
        sqlite3_close_v2(m_handle);
        throw;
    }
}

Database::~Database() {
    if (!isInPlace()) emptyLog(); // or whatever stands at the old name would be taken to go with the log
    for (const auto& [sql, statement] : m_statements)
        sqlite3_finalize(statement);
    const std::string toTidy = m_tidiesUp && isInPlace() ? path() : std::string();
    sqlite3_close_v2(m_handle);
    if (!toTidy.empty()) tidyUpAfterReading(toTidy);
}

Statement Database::prepare(std::string_view sql) {
    const std::string key(sql);
    auto found = m_statements.find(key);
    if (found == m_statements.end()) {
        sqlite3_stmt* statement = nullptr;
        const int code = sqlite3_prepare_v3(m_handle, key.c_str(), static_cast<int>(key.size()),
                                            SQLITE_PREPARE_PERSISTENT, &statement, nullptr);
        if (code != SQLITE_OK) fail(m_handle, code);
        found = m_statements.emplace(key, statement).first;
    }
    sqlite3_reset(found->second);
    sqlite3_clear_bindings(found->second);
    return Statement(found->second);
}

void Database::script(const std::string& sql) {
    const int code = sqlite3_exec(m_handle, sql.c_str(), nullptr, nullptr, nullptr);
    if (code != SQLITE_OK) fail(m_handle, code);
}

std::int64_t Database::number(std::string_view sql) {
    Statement statement = prepare(sql);
    const std::int64_t result = statement.step() ? statement.integer(0) : 0;
    statement.run();
    return result;
}

std::string Database::value(std::string_view sql) {
    Statement statement = prepare(sql);
    std::string result = statement.step() ? statement.text(0) : std::string();
    statement.run();
    return result;
}

void Database::switchToWal() {
    // Only now: the rollback journal of the file's creation, deleted without a sync of its folder, could come
    // back after a power cut and roll the file back to empty.
    if (value("PRAGMA journal_mode = WAL") == "wal") script("PRAGMA synchronous = FULL");
}

void Database::copyTo(Database& target) {
    sqlite3_backup* backup = sqlite3_backup_init(target.m_handle, "main", m_handle, "main");
    if (backup == nullptr) fail(target.m_handle, sqlite3_errcode(target.m_handle));
    sqlite3_backup_step(backup, -1);
    const int code = sqlite3_backup_finish(backup);
    if (code != SQLITE_OK) fail(target.m_handle, code);
}

std::string Database::path() const {
    return sqlite3_db_filename(m_handle, "main");
}

bool Database::emptyLog() {
    return sqlite3_wal_checkpoint_v2(m_handle, nullptr, SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr) ==
           SQLITE_OK;
}

void Database::rest() {
    if (sqlite3_get_autocommit(m_handle) == 0) return;
    sqlite3_busy_timeout(m_handle, 0);
    emptyLog();
    sqlite3_busy_handler(m_handle, waitForLock, &*m_open);
}

ReadSnapshot::ReadSnapshot(Database& database)
    : m_database(database)
    , m_isOwn(sqlite3_get_autocommit(database.handle()) != 0) {
    if (m_isOwn) m_database.script("BEGIN");
}

ReadSnapshot::~ReadSnapshot() {
    if (m_isOwn) sqlite3_exec(m_database.handle(), "COMMIT", nullptr, nullptr, nullptr);
}

bool Database::isInPlace() {
    int hasMoved = 0; // of a database in memory nothing is told
    sqlite3_file_control(m_handle, "main", SQLITE_FCNTL_HAS_MOVED, &hasMoved);
    return hasMoved == 0;
}

void Database::requireFileInPlace() {
    if (isInPlace()) return;
    // What was written since is in the log, which kept the old name: into the file with it, wherever that is
    // now, and out of the way of whatever stands at the old name.
    emptyLog();
    throw StoreFailure({ErrorCode::FileReplaced, {}, path()});
}

std::int64_t Database::changeMark() {
    const std::int64_t ofOthers = number("PRAGMA data_version");
    const std::int64_t ofOwn = sqlite3_total_changes64(m_handle);
    if (ofOthers != m_changesOfOthers || ofOwn != m_changesOfOwn) ++m_changeMark;
    m_changesOfOthers = ofOthers;
    m_changesOfOwn = ofOwn;
    return m_changeMark;
}

Transaction::Transaction(Database& database)
    : m_database(database)
    , m_rollback(database.prepare("ROLLBACK")) { // now: later there may be no memory for it
    if (sqlite3_get_autocommit(database.handle()) == 0) m_rollback.run();
    database.requireFileInPlace();
    database.script("BEGIN IMMEDIATE");
}

Transaction::~Transaction() {
    if (!m_open) return;
    try {
        if (sqlite3_get_autocommit(m_database.handle()) == 0) m_rollback.run();
    } catch (const StoreFailure&) { // the next one rolls it back
        return;
    }
    // What was to be committed may stand whole in the log, where it would count after all if this program
    // were killed now, although an error is told. It goes with the log; nothing is left to be done if it
    // cannot.
    if (m_hasFailed) m_database.emptyLog();
}

void Transaction::commit() {
    m_hasFailed = true;
    m_database.script("COMMIT");
    m_open = m_hasFailed = false;
    m_database.requireFileInPlace(); // it may have been replaced while this was written
}

} // namespace core
