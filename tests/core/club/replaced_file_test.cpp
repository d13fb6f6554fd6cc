#include "core/club/club_answers.h"
#include "core/club/club_copy.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "tests/core/club/small_club.h"

#include <fcntl.h>
#include <gmock/gmock.h>
#include <sys/stat.h>

namespace {

namespace fs = std::filesystem;
using core::Club;
using core::ErrorCode;
using support::SmallClub;

mode_t modeOf(const fs::path& file) {
    struct stat status {};
    EXPECT_EQ(::stat(file.c_str(), &status), 0);
    return status.st_mode & 0777;
}

/// What a program that keeps folders in step does to a file while it is open.
class ReplacedFile : public testing::Test {
protected:
    core::Outcome writeOff() {
        return small.club.kit().writeOff("KGFB6J8WF9", "lost", "Bram Oke", small.now);
    }
    void expectRefused() {
        const auto refused = writeOff();
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, ErrorCode::FileReplaced);
        EXPECT_EQ(refused.error().where, small.file().string());
    }
    SmallClub small;
};

TEST_F(ReplacedFile, byAnotherIsNotWrittenToAndNeitherIsTheOther) {
    ASSERT_TRUE(core::copyClub(small.file(), small.folder / "other.tholepin", false));
    fs::rename(small.folder / "other.tholepin", small.file());
    expectRefused();
    const auto there = Club::open(small.file(), Club::Access::ReadOnly);
    ASSERT_TRUE(there);
    EXPECT_EQ(there->kit().item("KGFB6J8WF9")->state, core::ItemState::Serviceable);
    EXPECT_THAT(there->record().verify(false)->problems, testing::IsEmpty());
}

TEST_F(ReplacedFile, deletedOrMovedIsNotWrittenTo) {
    fs::rename(small.file(), small.folder / "moved.tholepin");
    expectRefused();
    fs::rename(small.folder / "moved.tholepin", small.file());
    EXPECT_TRUE(writeOff()) << "it is there again";
}

/// It was ticked: it is in the file, wherever that is now, and in no other.
TEST_F(ReplacedFile, whatWasRecordedBeforeIsInTheFileThatWasMoved) {
    small.scan(small.open(), "KGFB6J8WF9");
    ASSERT_TRUE(core::copyClub(small.file(), small.folder / "elsewhere.tholepin", false));
    fs::rename(small.file(), small.folder / "moved.tholepin");
    fs::rename(small.folder / "elsewhere.tholepin", small.file());
    expectRefused();
    const auto moved = Club::open(small.folder / "moved.tholepin", Club::Access::ReadOnly);
    ASSERT_TRUE(moved);
    const auto history = moved->answers().history("KGFB6J8WF9");
    EXPECT_TRUE(std::any_of(history->begin(), history->end(),
                            [](const auto& line) { return line.kind == "tag-seen"; }));
    EXPECT_THAT(moved->record().verify(false)->problems, testing::IsEmpty());
    const auto there = Club::open(small.file());
    ASSERT_TRUE(there);
    EXPECT_THAT(there->record().verify(false)->problems, testing::IsEmpty());
}

TEST_F(ReplacedFile, untouchedIsWrittenTo) {
    EXPECT_TRUE(writeOff());
}

TEST(PrivateFile, newOneIsItsOwnersAlone) {
    SmallClub small;
    EXPECT_EQ(modeOf(small.file()), 0600u);
}

TEST(PrivateFile, copyIsForWhoeverMayReadTheClub) {
    SmallClub small;
    for (const mode_t mode : {0400u, 0440u, 0600u, 0640u, 0644u, 0755u}) {
        ASSERT_EQ(::chmod(small.file().c_str(), mode), 0);
        const fs::path backup = small.folder / ("backup-" + std::to_string(mode));
        ASSERT_TRUE(core::copyClub(small.file(), backup, true));
        EXPECT_EQ(modeOf(backup), (mode & 0666u) | 0600u) << "its owner may go on with it";
        const fs::path club = small.folder / ("club-" + std::to_string(mode));
        ASSERT_TRUE(core::copyClub(backup, club, false));
        EXPECT_EQ(modeOf(club), 0600u) << "a club to work with";
    }
}

TEST(PrivateFile, noPlantedLinkIsFollowed) {
    SmallClub small;
    const fs::path aim = small.folder / "aim", link = small.folder / "link.tholepin";
    fs::create_symlink(aim, link);
    EXPECT_FALSE(Club::create(link, "Linked"));
    EXPECT_FALSE(core::copyClub(small.file(), link, false));
    EXPECT_FALSE(fs::exists(aim));
    fs::remove(link);
    EXPECT_TRUE(Club::create(link, "Not linked"));
}

/// A disc or a locked stick: nothing can be made beside the file. Told by its header: the numbers at 18 and
/// 19 are 1 for a rollback journal, 2 for a write-ahead log (SQLite's file format, section 1.3.3).
TEST(Backup, isReadWhereNothingCanBeWrittenBesideIt) {
    SmallClub small;
    ASSERT_TRUE(core::copyClub(small.file(), small.folder / "backup.tholepin", false));
    std::ifstream in(small.folder / "backup.tholepin", std::ios::binary);
    std::string header(100, ' ');
    in.read(header.data(), 100);
    EXPECT_EQ(header[18], 1);
    EXPECT_EQ(header[19], 1);
    EXPECT_FALSE(fs::exists(small.folder / "backup.tholepin-wal"));
    const auto club = Club::open(small.folder / "backup.tholepin", Club::Access::ReadOnly);
    ASSERT_TRUE(club);
    EXPECT_FALSE(fs::exists(small.folder / "backup.tholepin-shm")) << "nor is anything made to read it";
    EXPECT_EQ(club->kit().item("KGFB6J8WF9")->kitType, "knife");
}

} // namespace
