#include "core/club/club_copy.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "tests/core/club/small_club.h"
#include "tests/support/full_disk.h"

#include <sys/stat.h>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;
using core::Club;
using support::SmallClub;

constexpr const char* sharedKnife = "KGFB6J8WF9";

/// While it lives this process may do what anybody may. Who runs the tests without root's rights is that
/// already.
class Anybody {
public:
    Anybody() {
        constexpr uid_t nobody = 65534;
        if (::geteuid() == 0) m_isChanged = ::seteuid(nobody) == 0;
    }
    ~Anybody() { EXPECT_TRUE(!m_isChanged || ::seteuid(0) == 0); }
    Anybody(const Anybody&) = delete;
    Anybody& operator=(const Anybody&) = delete;

private:
    bool m_isChanged = false;
};

/// A club file in a folder to which everybody may write, as on a shared disk, and which somebody may only
/// read.
class ReadOnlyFile : public testing::Test {
protected:
    ReadOnlyFile() {
        ::chmod(small.folder.path().c_str(), 0777);
        EXPECT_TRUE(core::copyClub(small.file(), file, false));
        EXPECT_TRUE(Club::open(file)) << "from here on it has a log";
        forReadersOnly(file);
    }
    static void forReadersOnly(const fs::path& which) { ::chmod(which.c_str(), 0444); }
    static core::ItemState stateOfKnife(const fs::path& which) {
        const auto club = Club::open(which, Club::Access::ReadOnly);
        EXPECT_TRUE(club) << which;
        return club ? club->kit().item(sharedKnife)->state : core::ItemState::Missing;
    }
    core::Outcome writeOff(Club& club) {
        return club.kit().writeOff(sharedKnife, "lost", "Bram Oke", small.now);
    }
    void expectNothingBeside() const {
        EXPECT_FALSE(fs::exists(file.string() + "-wal"));
        EXPECT_FALSE(fs::exists(file.string() + "-shm"));
    }
    SmallClub small;
    fs::path file = small.folder / "shared.tholepin";
};

TEST_F(ReadOnlyFile, hasNothingBesideItThatWouldBeInItsOwnersWay) {
    {
        const Anybody reader;
        EXPECT_EQ(stateOfKnife(file), core::ItemState::Serviceable);
        expectNothingBeside();
    }
    ::chmod(file.c_str(), 0644);
    auto club = Club::open(file);
    ASSERT_TRUE(club);
    EXPECT_TRUE(writeOff(*club));
}

TEST_F(ReadOnlyFile, isReadWhileItsOwnerWritesToIt) {
    ASSERT_TRUE(writeOff(small.club));
    ::chmod(small.file().c_str(), 0644);
    for (const char* end : {"-wal", "-shm"})
        ::chmod((small.file().string() + end).c_str(), 0644);
    const Anybody reader;
    EXPECT_EQ(stateOfKnife(small.file()), core::ItemState::WrittenOff);
}

TEST_F(ReadOnlyFile, isReadWithTheLogOfAProgramThatWasKilled) {
    ASSERT_TRUE(writeOff(small.club)); // it stands in the log
    const fs::path cut = small.folder / "cut.tholepin";
    for (const char* end : {"", "-wal"}) {
        fs::copy_file(small.file().string() + end, cut.string() + end);
        forReadersOnly(cut.string() + end);
    }
    ASSERT_GT(fs::file_size(cut.string() + "-wal"), 0U);
    ::chmod(small.folder.path().c_str(), 0755); // nobody but root makes anything there
    const Anybody reader;
    EXPECT_EQ(stateOfKnife(cut), core::ItemState::WrittenOff);
}

TEST_F(ReadOnlyFile, isReadOnAFullDiskByItsOwnerAsWell) {
    ::chmod(file.c_str(), 0644);
    {
        const support::FullDisk full(0);
        EXPECT_EQ(stateOfKnife(file), core::ItemState::Serviceable);
        EXPECT_FALSE(Club::open(file)) << "nothing can be written";
    }
    EXPECT_EQ(stateOfKnife(file), core::ItemState::Serviceable);
    expectNothingBeside();
}

} // namespace
