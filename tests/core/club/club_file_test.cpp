#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/club/club_copy.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "core/club/club_register.h"
#include "core/store/club_file.h"
#include "core/store/ledger.h"
#include "tests/core/club/small_club.h"
#include "tests/support/watched_disk.h"

#include <array>
#include <gmock/gmock.h>
#include <sstream>

namespace {

namespace fs = std::filesystem;
using core::Club;
using core::Database;
using core::ErrorKind;
using support::SmallClub;

std::string bytesOf(const fs::path& file) {
    std::ostringstream bytes;
    bytes << std::ifstream(file, std::ios::binary).rdbuf();
    return bytes.str();
}

ErrorKind refusalOf(const fs::path& file) {
    const std::string before = fs::is_regular_file(file) ? bytesOf(file) : std::string();
    const auto club = Club::open(file);
    EXPECT_FALSE(club);
    if (fs::is_regular_file(file)) {
        EXPECT_EQ(bytesOf(file), before);
    }
    return club ? ErrorKind::BadInput : club.error().kind();
}

namespace {

/// The schema's steps and one more.
std::vector<core::Migration> withNextStep(std::string_view sql) {
    std::vector<core::Migration> steps(core::migrations().begin(), core::migrations().end());
    steps.push_back({steps.back().version + 1, sql});
    return steps;
}

} // namespace

TEST(ClubFile, createsOnceAndOpensAgain) {
    const support::ScratchFolder folder;
    const auto file = folder / "a.tholepin";
    { ASSERT_TRUE(Club::create(file, "Harbour club")); }
    EXPECT_EQ(Club::open(file)->name(), "Harbour club");
    const std::string before = bytesOf(file);
    const auto again = Club::create(file, "Other");
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind(), ErrorKind::FileExists);
    EXPECT_EQ(bytesOf(file), before);
}

/// What a copy is known to be of, and since when the club is.
TEST(ClubFile, originStaysAsItWasInTheFileAndItsCopiesAndIsAnotherInAnotherFile) {
    const support::ScratchFolder folder;
    const core::Instant before = core::Instant::now();
    auto club = Club::create(folder / "a.tholepin", "Harbour club");
    ASSERT_TRUE(club);
    const auto origin = club->record().origin();
    ASSERT_TRUE(origin);
    EXPECT_EQ(origin->fact.size(), 64u) << "SHA-256 in hex";
    EXPECT_GE(origin->at, before);
    EXPECT_LE(origin->at, core::Instant::now());
    std::ofstream(folder / "boats.csv") << "boat,boat_class\nTeal,inflatable\n";
    ASSERT_TRUE(club->register_().importCsv(folder.path(), before.localDay(), false));
    EXPECT_EQ(club->record().origin()->fact, origin->fact);
    ASSERT_TRUE(core::copyClub(folder / "a.tholepin", folder / "copy.tholepin", false));
    EXPECT_EQ(Club::open(folder / "copy.tholepin")->record().origin()->fact, origin->fact);
    EXPECT_NE(Club::create(folder / "b.tholepin", "Harbour club")->record().origin()->fact, origin->fact);
}

TEST(ClubFile, refusesWhatIsNoClubFile) {
    const support::ScratchFolder folder;
    EXPECT_EQ(refusalOf(folder / "none"), ErrorKind::FileMissing);
    EXPECT_EQ(refusalOf(folder.path()), ErrorKind::NotAClubFile);
    support::writeFile(folder / "text", std::string(5000, 'x'));
    EXPECT_EQ(refusalOf(folder / "text"), ErrorKind::NotAClubFile);
    support::writeFile(folder / "empty", "");
    EXPECT_EQ(refusalOf(folder / "empty"), ErrorKind::FileUnfinished);
    { Database(folder / "other", Database::Mode::Create).script("CREATE TABLE t (a)"); }
    EXPECT_EQ(refusalOf(folder / "other"), ErrorKind::NotAClubFile);
}

TEST(ClubFile, aNewerFileIsRefusedAndNotTouched) {
    SmallClub small;
    { Database(small.file(), Database::Mode::ReadWrite).script("PRAGMA user_version = 99"); }
    small.close(); // closes the first
    EXPECT_EQ(refusalOf(small.file()), ErrorKind::FileNewer);
}

TEST(ClubFile, aLockedFileIsSaidToBeLocked) {
    SmallClub small;
    const auto check = small.open();
    {
        Database other(small.file(), Database::Mode::ReadWrite);
        core::Transaction writing(other);
        const auto seen = small.club.checks().scan(check, core::ScannedText::typed("K80NSC1FX4"),
                                                   core::SeenBy::Typed, small.now);
        ASSERT_FALSE(seen);
        EXPECT_EQ(seen.error().kind(), ErrorKind::FileLocked);
    }
    EXPECT_TRUE(small.club.checks().scan(check, core::ScannedText::typed("K80NSC1FX4"), core::SeenBy::Typed,
                                         small.now));
}

// store-notes: FULL in WAL mode, and EXTRA before it, are what lost nothing in 5,931 replayed power cuts.
TEST(ClubFile, isKeptInWalModeWithFullSyncs) {
    const support::ScratchFolder folder;
    const auto file = folder / "a.tholepin";
    const auto made = core::clubFile::create(file, [](Database& fresh) {
        EXPECT_EQ(fresh.number("PRAGMA synchronous"), 3); // EXTRA
        EXPECT_EQ(fresh.value("PRAGMA journal_mode"), "delete");
        EXPECT_EQ(fresh.number("PRAGMA foreign_keys"), 1);
    });
    EXPECT_EQ(made->number("PRAGMA synchronous"), 2); // FULL
    EXPECT_EQ(made->value("PRAGMA journal_mode"), "wal");
    const auto opened = core::clubFile::open(file, false);
    EXPECT_EQ(opened->number("PRAGMA synchronous"), 2);
    EXPECT_EQ(opened->number("PRAGMA foreign_keys"), 1);
}

std::vector<std::string> namesIn(const fs::path& folder) {
    std::vector<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder))
        names.push_back(entry.path().filename());
    return names;
}

TEST(ClubFile, whoOnlyReadsLeavesNothingBesideIt) {
    const SmallClub small;
    const fs::path file = small.folder / "read" / "club.tholepin";
    fs::create_directory(file.parent_path());
    { ASSERT_TRUE(Club::create(file, "Sandbay")); }
    const std::string before = bytesOf(file);
    {
        Club reading = Club::open(file, Club::Access::ReadOnly).value();
        EXPECT_TRUE(reading.record().verify(false)->problems.empty());
        EXPECT_GT(namesIn(file.parent_path()).size(), 1U) << "while it reads, what others would need";
    }
    EXPECT_THAT(namesIn(file.parent_path()), testing::ElementsAre("club.tholepin"));
    EXPECT_EQ(bytesOf(file), before);
}

TEST(ClubFile, whoOnlyReadsTakesNothingFromWhoWrites) {
    SmallClub small;
    { (void)Club::open(small.file(), Club::Access::ReadOnly).value().record().verify(false); }
    for (const char* end : {"-wal", "-shm"})
        EXPECT_TRUE(fs::exists(small.file().string() + end)) << end;
    small.open();
    const Club again = Club::open(small.file(), Club::Access::ReadOnly).value();
    EXPECT_TRUE(again.checks().unfinishedOf("Petrel", core::Phase::Launch));
}

TEST(ClubFile, anOlderFileIsBackedUpAndThenMigratedWithItsRows) {
    SmallClub small;
    small.close();
    const auto steps = withNextStep("ALTER TABLE item ADD COLUMN colour TEXT NOT NULL DEFAULT '';");
    {
        const auto database = core::clubFile::open(small.file(), false, steps);
        EXPECT_EQ(database->number("PRAGMA user_version"), steps.back().version);
        EXPECT_EQ(database->number("SELECT count(*) FROM item WHERE colour = ''"), 7);
    }
    const auto backup = Club::open(small.file().string() + ".before-" + std::to_string(steps.back().version));
    ASSERT_TRUE(backup);
    EXPECT_EQ(backup->kit().item("K80NSC1FX4")->kitType, "paddle");
}

TEST(ClubFile, aFailingMigrationChangesNothing) {
    SmallClub small;
    small.close();
    const auto steps =
        withNextStep("ALTER TABLE item ADD COLUMN colour TEXT; INSERT INTO nothing VALUES (1);");
    const fs::path copy = small.file().string() + ".before-" + std::to_string(steps.back().version);
    for (int time = 0; time < 2; ++time) { // and the failure is not in the way of the next try
        EXPECT_THROW(core::clubFile::open(small.file(), false, steps), core::StoreFailure);
        EXPECT_FALSE(fs::exists(copy));
    }
    const auto good = withNextStep("ALTER TABLE item ADD COLUMN colour2 TEXT;");
    {
        support::SmallClub other;
        other.close();
        const std::string taken = other.file().string() + ".before-" + std::to_string(good.back().version);
        std::ofstream(taken) << "somebody's notes";
        EXPECT_NO_THROW(core::clubFile::open(other.file(), false, good));
        EXPECT_EQ(fs::file_size(taken), 16u) << "left as it is";
        EXPECT_TRUE(fs::exists(taken + ".2"));
    }
    const auto database = core::clubFile::open(small.file(), false);
    EXPECT_EQ(database->number("PRAGMA user_version"), core::migrations().back().version);
    EXPECT_EQ(database->number("SELECT count(*) FROM pragma_table_info('item') WHERE name = 'colour'"), 0);
}

TEST(ClubFile, aFormatThatWasNeverReleasedIsRefusedAndNotTouched) {
    SmallClub small;
    small.close();
    for (const char* version : {"0", "1", "2", "-7"}) {
        Database(small.file(), Database::Mode::ReadWrite)
            .script("PRAGMA journal_mode = DELETE; PRAGMA user_version = " + std::string(version));
        const std::string before = bytesOf(small.file());
        for (const auto access : {Club::Access::ReadOnly, Club::Access::ReadWrite}) {
            const auto refused = Club::open(small.file(), access);
            ASSERT_FALSE(refused);
            EXPECT_EQ(refused.error().code, *version == '1' || *version == '2'
                                                ? core::ErrorCode::FileOlder
                                                : core::ErrorCode::FormatUnknown);
            EXPECT_EQ(refused.error().arguments, std::vector<std::string>{version});
        }
        EXPECT_EQ(bytesOf(small.file()), before);
    }
    Database(small.file(), Database::Mode::ReadWrite).script("PRAGMA user_version = 3");
    EXPECT_TRUE(Club::open(small.file()));
}

TEST(ClubFile, aFullDiskAtAnyWriteOfTheCreationLeavesNothing) {
    support::WatchedDisk disk;
    bool made = false;
    int writes = 0;
    for (; !made && writes < 2000; writes += writes < 20 ? 1 : 7) {
        const support::ScratchFolder folder;
        disk.fillAfter(writes);
        const auto club = Club::create(folder / "a.tholepin", "a");
        disk.empty();
        made = static_cast<bool>(club);
        if (!made) {
            EXPECT_EQ(club.error().kind(), ErrorKind::DiskFailed) << writes;
            EXPECT_TRUE(fs::is_empty(folder.path())) << writes;
        }
    }
    EXPECT_TRUE(made);
    EXPECT_GT(writes, 10);
}

TEST(ClubFile, aFullDiskAtAnyWriteOfAnImportChangesNothing) {
    support::WatchedDisk disk;
    SmallClub small;
    const auto before = small.club.record().verify(false);
    fs::create_directories(small.folder / "more");
    support::writeFile(small.folder / "more" / "places.csv", "place\nshed\nloft\nvan\n");
    bool done = false;
    for (int writes = 0; !done && writes < 500; ++writes) {
        disk.fillAfter(writes);
        const auto plan = small.club.register_().importCsv(small.folder / "more", small.now.today, false);
        disk.empty();
        done = static_cast<bool>(plan);
        const auto now = small.club.record().verify(false);
        ASSERT_TRUE(now->problems.empty()) << writes;
        EXPECT_EQ(now->facts, done ? before->facts + 3 : before->facts) << writes;
    }
    EXPECT_TRUE(done);
}

} // namespace
