#include "core/store/club_file.h"

#include "core/base/error_code.h"
#include "core/record/verification.h"
#include "core/store/file_steps.h"
#include "core/store/ledger.h"
#include "core/store/new_file.h"
#include "core/store/schema.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

namespace core::clubFile {
namespace {

constexpr int applicationId = 0x54484f4c; // "THOL"

[[noreturn]] void refuse(ErrorCode code, const std::filesystem::path& file,
                         std::vector<std::string> arguments = {}) {
    throw StoreFailure({code, std::move(arguments), file.string()});
}

void requireFile(const std::filesystem::path& file) {
    std::error_code error;
    const auto status = std::filesystem::status(file, error);
    if (!std::filesystem::exists(status)) refuse(ErrorCode::NoSuchFile, file);
    if (!std::filesystem::is_regular_file(status)) refuse(ErrorCode::NotAFile, file);
    if (std::filesystem::file_size(file, error) == 0 && !error) refuse(ErrorCode::FileUnfinished, file);
}

void requireClub(Database& database, const std::filesystem::path& file, int newest) {
    const auto id = database.number("PRAGMA application_id");
    const auto version = database.number("PRAGMA user_version");
    const auto tables = database.number("SELECT count(*) FROM sqlite_schema");
    if (id == 0 && version == 0 && tables == 0) refuse(ErrorCode::FileUnfinished, file);
    if (id != applicationId) refuse(ErrorCode::NotAClubFile, file);
    if (version < 1) refuse(ErrorCode::FormatUnknown, file, {std::to_string(version)});
    // Before the first step of the migrations nothing was released.
    if (version < migrations().front().version) refuse(ErrorCode::FileOlder, file, {std::to_string(version)});
    if (version > newest)
        refuse(ErrorCode::FileNewer, file, {std::to_string(version), std::to_string(newest)});
}

/// Beside the file, under a name that nothing has yet.
std::filesystem::path backUp(Database& database, const std::filesystem::path& file, std::int64_t version) {
    std::filesystem::path place = fmt::format("{}.before-{}", file.string(), version + 1);
    for (int number = 2; std::filesystem::exists(std::filesystem::symlink_status(place)); ++number)
        place = fmt::format("{}.before-{}.{}", file.string(), version + 1, number);
    copy(database, place, readersOf(file));
    return place;
}

/// Whatever a program that was killed committed, and did not live to sync: nothing of it is told before it is
/// on disk. After the first reading, for that finds what is in the log. The log is no file that SQLite locks.
void syncLog(const std::filesystem::path& file) {
    if (!holdsSomething(file, "-wal")) return;
    fileSteps::syncFile(file.string() + "-wal");
    fileSteps::syncFolder(file.parent_path());
}

/// Who only reads cannot roll back what was cut short: a writer does, who then writes nothing.
void rollBackForReader(const std::filesystem::path& file) {
    if (!holdsSomething(file, "-journal")) return;
    try {
        Database(file, Database::Mode::ReadWrite).number("SELECT count(*) FROM sqlite_schema");
    } catch (const StoreFailure&) { // the reader says what is wrong, if anything is
        return;
    }
}

bool isBusyBeside(const std::filesystem::path& file) {
    return holdsSomething(file, "-wal") || holdsSomething(file, "-journal");
}

/// A copy in memory, brought up to date: the file stays as it is.
std::unique_ptr<Database> copyInMemory(Database& database, std::span<const Migration> steps) {
    auto copy = std::make_unique<Database>(std::filesystem::path(), Database::Mode::Memory);
    database.copyTo(*copy);
    migrate(*copy, steps);
    return copy;
}

/// Another number when something was written to the file or its log since, by whoever can.
std::string marksOf(const std::filesystem::path& file) {
    std::string marks;
    for (const char* end : {"", "-wal", "-journal"}) {
        struct stat status {};
        const bool isThere = ::stat((file.string() + end).c_str(), &status) == 0;
        marks += isThere ? fmt::format("{} {} {}.{} ", status.st_ino, status.st_size, status.st_mtim.tv_sec,
                                       status.st_mtim.tv_nsec)
                         : "- ";
    }
    return marks;
}

/// Where SQLite can keep nothing beside the file: all of it at once, with what its log holds, as when
/// somebody copied both or a program was killed. Without locks, so it counts only if nobody wrote meanwhile.
std::unique_ptr<Database> copyWithoutLocks(const std::filesystem::path& file,
                                           std::span<const Migration> steps) {
    if (holdsSomething(file, "-journal")) refuse(ErrorCode::FileCutShort, file);
    const bool hasLog = holdsSomething(file, "-wal");
    Database database(file, hasLog ? Database::Mode::Unlocked : Database::Mode::Immutable);
    requireClub(database, file, steps.back().version);
    if (hasLog) syncLog(file);
    return copyInMemory(database, steps);
}

std::unique_ptr<Database> openWhereNothingIsWritten(const std::filesystem::path& file,
                                                    std::span<const Migration> steps) {
    constexpr int tries = 3; // somebody else may be at work there
    for (int left = tries; left > 0; --left) {
        const std::string before = marksOf(file);
        try {
            auto copy = copyWithoutLocks(file, steps);
            if (marksOf(file) == before) return copy;
        } catch (const StoreFailure&) {
            if (marksOf(file) == before) throw;
        }
    }
    refuse(ErrorCode::DatabaseLocked, file);
}

bool mayWrite(const std::filesystem::path& path) {
    return ::faccessat(AT_FDCWD, path.c_str(), W_OK, AT_EACCESS) == 0;
}

/// On a disc or a locked stick it cannot; and what somebody leaves there who may not write to the file
/// itself, its owner could not write to.
bool mayKeepBeside(const std::filesystem::path& file) {
    return mayWrite(file.has_parent_path() ? file.parent_path() : ".") && mayWrite(file);
}

std::unique_ptr<Database> openToRead(const std::filesystem::path& file, std::span<const Migration> steps) {
    const bool keepsBeside = mayKeepBeside(file);
    if (!keepsBeside && !isBusyBeside(file)) return openWhereNothingIsWritten(file, steps);
    try {
        rollBackForReader(file);
        auto database = std::make_unique<Database>(file, Database::Mode::ReadOnly);
        requireClub(*database, file, steps.back().version);
        syncLog(file);
        if (database->number("PRAGMA user_version") == steps.back().version) return database;
        return copyInMemory(*database, steps);
    } catch (const StoreFailure& failure) {
        const ErrorCode code = failure.error.code;
        const bool maybeNoRoom = code == ErrorCode::DatabaseFailed; // for what stands beside it: a full disk
        if (!maybeNoRoom && (keepsBeside || code != ErrorCode::FileCutShort)) throw;
    }
    return openWhereNothingIsWritten(file, steps);
}

/// Empty: another program has it open, or it cannot be written to, or it is no club, which openToRead says.
std::unique_ptr<Database> openAlone(const std::filesystem::path& file, std::span<const Migration> steps) {
    try {
        auto database = std::make_unique<Database>(file, Database::Mode::Alone);
        requireClub(*database, file, steps.back().version);
        syncLog(file);
        if (database->number("PRAGMA user_version") == steps.back().version) return database;
        return copyInMemory(*database, steps);
    } catch (const StoreFailure&) {
        return nullptr;
    }
}

/// SQLite, too, keeps its files beside what a link names.
std::filesystem::path behindLinks(const std::filesystem::path& named) {
    std::error_code unknown;
    const std::filesystem::path linked = std::filesystem::canonical(named, unknown);
    return unknown ? named : linked;
}

void makeSchema(Database& fresh, const std::function<void(Database&)>& fill) {
    Transaction transaction(fresh);
    for (const Migration& step : migrations())
        fresh.script(std::string(step.sql));
    fresh.script(fmt::format("PRAGMA user_version = {}; PRAGMA application_id = {};",
                             migrations().back().version, applicationId));
    fill(fresh);
    transaction.commit();
}

void requireSound(Database& database, const std::filesystem::path& file) {
    const Verification found = verifyStore(database);
    if (!found.problems.empty())
        throw StoreFailure({ErrorCode::RecordDamaged, {}, file.string(), {found.problems.front()}});
}

/// Steps are committed one by one; where that cannot be told any more, the copy is better kept.
bool isUntouched(Database& database, std::int64_t before, int newest) {
    try {
        return before + 1 == newest || database.number("PRAGMA user_version") == before;
    } catch (const StoreFailure&) {
        return false;
    }
}

void migrateWithBackup(Database& database, const std::filesystem::path& file,
                       std::span<const Migration> steps) {
    const auto before = database.number("PRAGMA user_version");
    const auto copied = backUp(database, file, before);
    try {
        migrate(database, steps);
    } catch (...) {
        if (isUntouched(database, before, steps.back().version)) removeWithTraces(copied);
        throw;
    }
}

/// SQLite keeps its log by the name: two names of one file would have two.
void requireOneName(const std::filesystem::path& file) {
    std::error_code unknown;
    if (std::filesystem::hard_link_count(file, unknown) > 1 && !unknown)
        refuse(ErrorCode::FileHasTwoNames, file);
}

/// Of the newest version; an older one is migrated first.
void requireOwnSchema(Database& database, const std::filesystem::path& file) {
    if (database.number("PRAGMA user_version") != migrations().back().version) return;
    if (const auto altered = schemaDifferences(database); !altered.empty())
        refuse(ErrorCode::FileAltered, file, {altered.front()});
}

} // namespace

std::unique_ptr<Database> create(const std::filesystem::path& file,
                                 const std::function<void(Database&)>& fill) {
    NewFile fresh(file);
    {
        Database database(fresh.place(), Database::Mode::ReadWrite);
        makeSchema(database, fill);
        database.switchToWal();
        requireSound(database, file);
    }
    fresh.finish(ownersAlone);
    try {
        auto database = std::make_unique<Database>(file, Database::Mode::ReadWrite);
        database->switchToWal();
        return database;
    } catch (...) {
        fresh.discard();
        throw;
    }
}

std::unique_ptr<Database> open(const std::filesystem::path& named, bool readOnly,
                               std::span<const Migration> steps) {
    requireFile(named);
    const std::filesystem::path file = behindLinks(named);
    if (readOnly) return openToRead(file, steps);
    requireOneName(file);
    auto database = std::make_unique<Database>(file, Database::Mode::ReadWrite);
    requireClub(*database, file, steps.back().version);
    requireOwnSchema(*database, file);
    NewFile::sweep(file);
    syncLog(file);
    if (database->number("PRAGMA user_version") < steps.back().version)
        migrateWithBackup(*database, file, steps);
    database->switchToWal();
    return database;
}

std::unique_ptr<Database> openAside(const std::filesystem::path& named) {
    requireFile(named);
    const std::filesystem::path file = behindLinks(named);
    auto alone = mayKeepBeside(file) ? openAlone(file, migrations()) : nullptr;
    return alone ? std::move(alone) : openToRead(file, migrations());
}

mode_t readersOf(const std::filesystem::path& file) {
    struct stat status {};
    const bool isKnown = ::stat(file.c_str(), &status) == 0;
    return isKnown ? (status.st_mode & 0666) | ownersAlone : ownersAlone;
}

void copy(Database& source, const std::filesystem::path& to, mode_t readers,
          const std::function<void(Database&)>& look) {
    NewFile fresh(to);
    {
        Database target(fresh.place(), Database::Mode::ReadWrite);
        source.copyTo(target);
        // A copy is read where nothing can be written beside it, too: on a stick that is locked, on a disc.
        if (target.value("PRAGMA journal_mode = DELETE") != "delete")
            refuse(ErrorCode::FileNotMade, to, {std::generic_category().message(EBUSY)});
        if (look) look(target);
    }
    fresh.finish(readers);
}

void remove(const std::filesystem::path& file) {
    removeWithTraces(file);
}

} // namespace core::clubFile
