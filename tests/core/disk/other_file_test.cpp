#include "core/club/club_exchange.h"
#include "tests/core/disk/file_promises.h"

#include <sys/stat.h>

namespace {

namespace fs = std::filesystem;
using core::Club;
using core::ClubExchange;
using namespace support;

/// A merge looks into a file of somebody else's, on a stick say, and leaves no trace there.
class OtherFile : public FilePromises {
protected:
    OtherFile() {
        fs::copy_file(file, own);
        fs::remove(file);
        m_before = factsOf(own);
    }
    ~OtherFile() override { ::chmod(folder.path().c_str(), 0700); }

    static int factsOf(const fs::path& club) { return static_cast<int>(hashesOf(club).size()); }
    /// How many facts come in; nothing beside the other file is made, and nothing of it is changed.
    int merged() {
        const auto names = namesIn(folder.path());
        const std::string club = contentOf(van), log = contentOf(van.string() + "-wal");
        const auto in = Club::open(own)->exchange().merge({van}, ClubExchange::Forks::Refused);
        EXPECT_TRUE(in) << described(in.error());
        EXPECT_EQ(namesIn(folder.path()), names);
        EXPECT_EQ(contentOf(van), club);
        EXPECT_EQ(contentOf(van.string() + "-wal"), log);
        return in ? in->facts : 0;
    }
    void makeReadOnly() {
        ::chmod(van.c_str(), 0444);
        ::chmod((van.string() + "-wal").c_str(), 0444);
        ::chmod(folder.path().c_str(), 0555);
        ::chmod(own.c_str(), 0666);
        ::chmod(m_ownFolder.path().c_str(), 0777);
    }

    ScratchFolder m_ownFolder;
    const fs::path own = m_ownFolder / "club.tholepin", van = folder / "van";
    int m_before = 0;
};

TEST_F(OtherFile, hasNothingBesideItAfterwards) {
    const int all = merged();
    EXPECT_GT(all, 5);
    EXPECT_EQ(factsOf(own), m_before + all);
    EXPECT_EQ(merged(), 0);
}

TEST_F(OtherFile, withALogOfItsOwnIsTakenInWithWhatTheLogHolds) {
    EXPECT_GT(merged(), 5);
    leaveLogOf("van", "scan");
    EXPECT_EQ(merged(), 1);
    leaveLogOf("van", "log entry");
    EXPECT_EQ(merged(), 1);
    EXPECT_EQ(merged(), 0);
}

TEST_F(OtherFile, onALockedStickIsTakenIn) {
    makeReadOnly();
    asGuest([&] { EXPECT_GT(merged(), 5); });
}

TEST_F(OtherFile, onALockedStickWithALogOfItsOwnIsTakenInWithWhatTheLogHolds) {
    int all = 0;
    {
        const ScratchFolder another;
        fs::copy_file(own, another / "club.tholepin");
        Club club = Club::open(another / "club.tholepin").value();
        all = club.exchange().merge({van}, ClubExchange::Forks::Refused)->facts;
    }
    leaveLogOf("van", "scan");
    makeReadOnly();
    asGuest([&] { EXPECT_EQ(merged(), all + 1); });
}

/// Its program goes on with it; what it keeps beside it stays.
TEST_F(OtherFile, thatAnotherProgramHasOpenIsTakenInAsItIsNow) {
    Club other = Club::open(van).value();
    ASSERT_FALSE(clubAct("scan").run(other, folder.path()));
    const int first = merged();
    EXPECT_GT(first, 5);
    ASSERT_FALSE(clubAct("log entry").run(other, folder.path()));
    EXPECT_EQ(merged(), 1);
    ASSERT_FALSE(clubAct("log entry").run(other, folder.path()));
}

} // namespace
