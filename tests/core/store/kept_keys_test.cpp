#include "tests/core/store/machine_chain.h"

#include <fcntl.h>
#include <gmock/gmock.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

using core::Club;
using support::fs::path;

/// Folders in the user's state folder, one a club, and what programs that were killed leave there.
class KeptKeyFolders : public testing::Test {
protected:
    static constexpr time_t hour = 60 * 60;

    /// As if nobody had touched it and what is in it for that long.
    static void age(const path& folder, time_t seconds) {
        const timespec then{::time(nullptr) - seconds, 0};
        const timespec both[] = {then, then};
        for (const auto& entry : std::filesystem::directory_iterator(folder))
            ::utimensat(AT_FDCWD, entry.path().c_str(), both, 0);
        ASSERT_EQ(::utimensat(AT_FDCWD, folder.c_str(), both, 0), 0);
    }
    path make(const std::string& name, std::initializer_list<const char*> files) {
        const path folder = m_state / name;
        ::mkdir(folder.c_str(), 0700);
        for (const char* file : files)
            ::close(::open((folder / file).c_str(), O_CREAT | O_WRONLY, 0600));
        return folder;
    }
    void createAnother() {
        ASSERT_TRUE(Club::create(m_files / ("club" + std::to_string(++m_made) + ".tholepin"), "Another"));
    }
    std::size_t folders() const {
        return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(m_state.path()),
                                                      std::filesystem::directory_iterator()));
    }

    support::ScratchFolder m_files, m_state;
    support::StateFolder m_inUse{m_state.path()};
    int m_made = 0;
};

const char* const someClub = "0123456789abcdef0123456789abcdef";

TEST_F(KeptKeyFolders, thatAKilledCreateLeftGoAfterADay) {
    const path csv = m_files / "csv";
    std::filesystem::create_directories(csv);
    support::writeFile(csv / "places.csv", "place\nShed\n");
    const pid_t child = ::fork();
    if (child == 0) {
        (void)Club::createFrom(m_files / "killed.tholepin", "Killed", csv,
                               *core::CalendarDay::parse("2026-03-14"), [](int, int) { ::_exit(0); });
        ::_exit(1);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    ASSERT_EQ(status, 0);
    ASSERT_EQ(folders(), 1U);
    createAnother();
    EXPECT_EQ(folders(), 2U) << "it may be in the making";
    for (const auto& entry : std::filesystem::directory_iterator(m_state.path()))
        age(entry.path(), 25 * hour);
    createAnother();
    EXPECT_EQ(folders(), 2U) << "of the two clubs that there are";
    EXPECT_FALSE(std::filesystem::exists(m_files / "killed.tholepin"));
}

TEST_F(KeptKeyFolders, thatMayBeSomebodysStay) {
    const path young = make("0" + std::string(31, 'a'), {"lock"}),
               key = make("1" + std::string(31, 'a'), {"lock", someClub}),
               note = make("2" + std::string(31, 'a'), {"lock", "note.txt"}),
               others = make("of mine", {"lock"}), held = make("3" + std::string(31, 'a'), {"lock"});
    for (const path& each : {key, note, others, held})
        age(each, 25 * hour);
    age(young, 23 * hour);
    const int lock = ::open((held / "lock").c_str(), O_RDWR);
    ASSERT_EQ(::flock(lock, LOCK_EX | LOCK_NB), 0);
    createAnother();
    for (const path& each : {young, key, note, others, held})
        EXPECT_TRUE(std::filesystem::exists(each / "lock")) << each;
    ::close(lock); // its program ended
    createAnother();
    EXPECT_FALSE(std::filesystem::exists(held));
    for (const path& each : {young, key, note, others})
        EXPECT_TRUE(std::filesystem::exists(each / "lock")) << each;
}

TEST_F(KeptKeyFolders, withoutALockGoToo) {
    const path empty = make(someClub, {});
    age(empty, 25 * hour);
    createAnother();
    EXPECT_FALSE(std::filesystem::exists(empty));
}

} // namespace
