#include "core/base/error_code.h"
#include "core/club/club_copy.h"
#include "core/store/database.h"
#include "tests/core/disk/file_promises.h"
#include "tests/support/watched_disk.h"

#include <fcntl.h>
#include <fstream>
#include <gmock/gmock.h>
#include <sqlite3.h>
#include <sstream>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;
using core::Club;
using core::Database;
using core::ErrorCode;
using namespace support;

TEST_F(FilePromises, aFormatThatNobodyWritesIsSaidAndNothingChanged) {
    const std::pair<int, ErrorCode> formats[] = {
        {0, ErrorCode::FormatUnknown}, {-7, ErrorCode::FormatUnknown}, {99, ErrorCode::FileNewer}};
    for (const auto& [format, code] : formats) {
        {
            Database(file, Database::Mode::ReadWrite)
                .script("PRAGMA user_version = " + std::to_string(format));
        }
        const std::string before = contentOf(file);
        EXPECT_EQ(refusal(Club::Access::ReadOnly), code) << format;
        EXPECT_EQ(refusal(Club::Access::ReadWrite), code) << format;
        EXPECT_EQ(core::copyClub(file, folder / "copy.tholepin", true).error().code, code) << format;
        EXPECT_EQ(contentOf(file), before) << format;
        EXPECT_FALSE(fs::exists(folder / "copy.tholepin"));
    }
}

constexpr auto manyPages =
    "CREATE TABLE a (b); INSERT INTO a SELECT randomblob(9000) FROM (WITH RECURSIVE n(i) AS "
    "(SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < 50) SELECT i FROM n)";

/// A cut in the middle of a write with a rollback journal, as in a backup that is opened to work with.
class HotJournal : public FilePromises {
protected:
    void cut(const std::string& name, const std::string& sql) {
        const ScratchFolder killed;
        {
            Database database(folder / name, Database::Mode::ReadWrite);
            database.script("PRAGMA cache_spill = 1; PRAGMA cache_size = 1; BEGIN IMMEDIATE; " + sql);
            copyFolder(folder.path(), killed.path());
            database.script("ROLLBACK");
        }
        copyFolder(killed.path(), folder.path());
        ASSERT_GT(fs::file_size(folder / (name + "-journal")), 0u);
    }
};

TEST_F(HotJournal, isRolledBackForWhoOnlyReads) {
    cut("backup.tholepin", std::string("UPDATE item SET kit_type = 'x'; ") + manyPages);
    expectRead(folder / "backup.tholepin");
}

TEST_F(HotJournal, ofACreationThatWasCutSaysUnfinished) {
    for (const auto access : {Club::Access::ReadOnly, Club::Access::ReadWrite}) {
        fs::remove(file);
        std::ofstream(file).close(); // as an older program made it: at its own name
        cut("club.tholepin", manyPages);
        ASSERT_GT(fs::file_size(file), 0u);
        EXPECT_EQ(refusal(access), ErrorCode::FileUnfinished);
    }
}

class LockedFolder : public HotJournal {
protected:
    /// The files may be read and nothing may be made; with `fileMode` for the files.
    void lock(mode_t fileMode, mode_t folderMode) {
        for (const std::string& name : namesIn(folder.path()))
            ::chmod((folder / name).c_str(), fileMode);
        ::chmod(folder.path().c_str(), folderMode);
    }
    ~LockedFolder() override { ::chmod(folder.path().c_str(), 0700); }
};

TEST_F(LockedFolder, isRead) {
    const auto names = namesIn(folder.path());
    for (const mode_t fileMode : {0444u, 0666u}) {
        lock(fileMode, 0555);
        asGuest([&] {
            expectRead(file);
            expectRead(folder / "backup.tholepin");
        });
        EXPECT_EQ(namesIn(folder.path()), names);
    }
}

TEST_F(LockedFolder, withAFileOfAnotherInAFolderForAllIsRead) {
    lock(0444, 0777);
    for (int time = 0; time < 2; ++time)
        asGuest([&] { expectRead(file); });
}

/// What a program committed that was killed then, or a file that was copied together with its log.
TEST_F(LockedFolder, withALogBesideTheFileIsReadWithWhatTheLogHolds) {
    const auto before = static_cast<int>(hashesOf(file).size());
    leaveLogOf("club.tholepin", "scan");
    const auto names = namesIn(folder.path());
    lock(0444, 0555);
    asGuest([&] { expectRead(file); });
    EXPECT_EQ(namesIn(folder.path()), names);
    asGuest([&] {
        const auto club = Club::open(file, Club::Access::ReadOnly);
        EXPECT_EQ(club->record().verify(false)->facts, before + 1);
    });
}

TEST_F(LockedFolder, whereSomethingWasCutShortSaysSo) {
    const fs::path backup = folder / "backup.tholepin";
    cut("backup.tholepin", manyPages);
    lock(0444, 0555);
    asGuest([&] {
        const auto club = Club::open(backup, Club::Access::ReadOnly);
        ASSERT_FALSE(club);
        EXPECT_EQ(club.error().code, ErrorCode::FileCutShort);
    });
    lock(0600, 0700);
    expectRead(backup);
}

/// A link to the club, in a folder of its own: what stands beside the club counts.
TEST_F(HotJournal, beneathALinkIsRolledBack) {
    cut("backup.tholepin", manyPages);
    fs::create_directories(folder / "desk");
    fs::create_symlink(folder / "backup.tholepin", folder / "desk" / "link.tholepin");
    expectRead(folder / "desk" / "link.tholepin");
}

/// What a killed program left goes; what a running one makes stays.
class Unfinished : public FilePromises {
protected:
    const fs::path left = folder / ".new.tholepin.tholepin-unfinished";
    void leave() {
        for (const char* end : {"", "-journal", "-wal", "-shm"})
            std::ofstream(left.string() + end) << "half a club";
    }
    bool isAnythingLeft() {
        const auto names = namesIn(folder.path());
        return std::any_of(names.begin(), names.end(), [](const auto& name) {
            return name.find(".tholepin-unfinished") != std::string::npos;
        });
    }
};

TEST_F(Unfinished, isSweptUpWhenItIsMadeAgain) {
    leave();
    EXPECT_TRUE(Club::create(folder / "new.tholepin", "New club"));
    EXPECT_FALSE(isAnythingLeft());
    fs::remove(folder / "new.tholepin");
    leave();
    EXPECT_TRUE(core::copyClub(file, folder / "new.tholepin", true));
    EXPECT_FALSE(isAnythingLeft());
}

TEST_F(Unfinished, isSweptUpWhenTheFileIsOpened) {
    { EXPECT_TRUE(Club::create(folder / "new.tholepin", "New club")); }
    leave();
    EXPECT_TRUE(Club::open(folder / "new.tholepin"));
    EXPECT_FALSE(isAnythingLeft());
}

TEST_F(Unfinished, ofARunningProgramIsLeftAlone) {
    leave();
    const int handle = ::open(left.c_str(), O_RDWR | O_CLOEXEC);
    ASSERT_EQ(::flock(handle, LOCK_EX | LOCK_NB), 0);
    const auto refused = Club::create(folder / "new.tholepin", "New club");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::FileExists);
    EXPECT_EQ(contentOf(left), "half a club");
    ::close(handle);
    EXPECT_TRUE(Club::create(folder / "new.tholepin", "New club"));
}

TEST_F(Unfinished, aLinkOfThatNameIsNotFollowed) {
    std::ofstream(folder / "notes") << "somebody's notes";
    fs::create_symlink(folder / "notes", left);
    EXPECT_FALSE(Club::create(folder / "new.tholepin", "New club"));
    EXPECT_EQ(contentOf(folder / "notes"), "somebody's notes");
}

/// SQLite would play it into the new file, or its club was moved away without it.
TEST_F(Unfinished, nothingIsMadeBesideTheLogOfAnother) {
    for (const char* end : {"-wal", "-journal"}) {
        const fs::path beside = folder / (std::string("new.tholepin") + end);
        std::ofstream(beside) << "a log";
        const auto refused = Club::create(folder / "new.tholepin", "New club");
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, ErrorCode::FileExists);
        EXPECT_EQ(refused.error().where, beside.string());
        fs::remove(beside);
    }
    EXPECT_TRUE(Club::create(folder / "new.tholepin", "New club"));
}

} // namespace
