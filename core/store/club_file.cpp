#include "core/store/club_file.h"

#include "core/base/error_code.h"
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

/// Only its owner reads what a club knows of its people.
constexpr mode_t ownersAlone = 0600;

/// Makes the file, atomically refusing one that exists, or a link.
void claim(const std::filesystem::path& file) {
    const int handle =
        ::open(file.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_NOFOLLOW | O_CLOEXEC, ownersAlone);
    if (handle >= 0) {
        ::close(handle);
        return;
    }
    if (errno == EEXIST) refuse(ErrorCode::FileExists, file);
    refuse(ErrorCode::FileNotMade, file, {std::generic_category().message(errno)});
}

/// Its owner goes on working with it, and it is never a program.
mode_t readersOf(Database& database) {
    struct stat status {};
    const bool isKnown = ::stat(database.path().c_str(), &status) == 0;
    return isKnown ? (status.st_mode & 0666) | ownersAlone : ownersAlone;
}

void removeTraces(const std::filesystem::path& file) {
    std::error_code ignored;
    for (const char* end : {"", "-journal", "-wal", "-shm"})
        std::filesystem::remove(file.string() + end, ignored);
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
    copy(database, place, CopyFor::ReadersOfSource);
    return place;
}

} // namespace

std::unique_ptr<Database> create(const std::filesystem::path& file,
                                 const std::function<void(Database&)>& fill) {
    claim(file);
    try {
        auto database = std::make_unique<Database>(file, Database::Mode::ReadWrite);
        Transaction transaction(*database);
        for (const Migration& step : migrations())
            database->script(std::string(step.sql));
        database->script(fmt::format("PRAGMA user_version = {}; PRAGMA application_id = {};",
                                     migrations().back().version, applicationId));
        fill(*database);
        transaction.commit();
        database->switchToWal();
        return database;
    } catch (...) {
        removeTraces(file);
        throw;
    }
}

std::unique_ptr<Database> open(const std::filesystem::path& file, bool readOnly,
                               std::span<const Migration> steps) {
    requireFile(file);
    auto database =
        std::make_unique<Database>(file, readOnly ? Database::Mode::ReadOnly : Database::Mode::ReadWrite);
    const int newest = steps.back().version;
    requireClub(*database, file, newest);
    const auto version = database->number("PRAGMA user_version");
    if (readOnly && version == newest) return database;
    if (const auto altered = schemaDifferences(*database);
        version == migrations().back().version && !altered.empty())
        refuse(ErrorCode::FileAltered, file, {altered.front()});
    if (readOnly) { // the file stays as it is: its copy is brought up to date
        auto copy = std::make_unique<Database>(std::filesystem::path(), Database::Mode::Memory);
        database->copyTo(*copy);
        migrate(*copy, steps);
        return copy;
    }
    if (version < newest) {
        const auto copied = backUp(*database, file, version);
        try {
            migrate(*database, steps);
        } catch (...) {
            removeTraces(copied); // the file is as it was
            throw;
        }
    }
    database->switchToWal();
    return database;
}

void copy(Database& source, const std::filesystem::path& to, CopyFor whom) {
    claim(to);
    try {
        Database target(to, Database::Mode::ReadWrite);
        source.copyTo(target);
        // A copy is read where nothing can be written beside it, too: on a stick that is locked, on a disc.
        target.script("PRAGMA journal_mode = DELETE");
        // Last, for the original may be one that nobody can write.
        if (whom == CopyFor::ReadersOfSource) ::chmod(to.c_str(), readersOf(source));
    } catch (...) {
        removeTraces(to);
        throw;
    }
}

void remove(const std::filesystem::path& file) {
    removeTraces(file);
}

} // namespace core::clubFile
