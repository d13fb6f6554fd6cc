#include "core/club/club_register.h"
#include "core/store/file_steps.h"
#include "tests/core/store/machine_chain.h"

#include <fcntl.h>
#include <functional>
#include <gmock/gmock.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

using core::Club;
using core::fileSteps::Step;
using support::fs::path;

const core::RegisterEdit shed{core::SheetId::Places, {{{}, {{"place", "Shed"}}, {}}}};
const core::Moment now{*core::Instant::parse("2026-03-14T06:40:00Z"),
                       *core::CalendarDay::parse("2026-03-14")};

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
    std::size_t folders() const { return folders(m_state); }
    static std::size_t folders(const support::ScratchFolder& state) {
        return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(state.path()),
                                                      std::filesystem::directory_iterator()));
    }
    std::size_t keys() const { return keys(m_state); }
    static std::size_t keys(const support::ScratchFolder& state) {
        std::size_t found = 0;
        for (const auto& each : std::filesystem::recursive_directory_iterator(state.path()))
            found += each.is_regular_file() && core::isMachineId(each.path().filename().string()) ? 1 : 0;
        return found;
    }
    /// `work` ends it, as a kill would.
    static void inAKilledProgram(const std::function<void()>& work) {
        const pid_t child = ::fork();
        if (child == 0) {
            work();
            ::_exit(1);
        }
        int status = 0;
        ::waitpid(child, &status, 0);
        ASSERT_EQ(status, 0);
    }
    void createKilledBefore(Step end) {
        core::fileSteps::watch([end](Step step, const path&, const path&) {
            if (step == end) ::_exit(0);
            return 0;
        });
        (void)Club::create(m_files / "killed.tholepin", "Killed");
    }
    void expectGoneAfterADay() {
        ASSERT_EQ(folders(), 1U);
        EXPECT_EQ(keys(), 0U);
        createAnother();
        EXPECT_EQ(folders(), 2U) << "it may be in the making";
        for (const auto& entry : std::filesystem::directory_iterator(m_state.path()))
            age(entry.path(), 25 * hour);
        createAnother();
        EXPECT_EQ(folders(), 2U) << "of the two clubs that there are";
        EXPECT_FALSE(std::filesystem::exists(m_files / "killed.tholepin"));
    }
    static void write(const path& file) {
        auto club = Club::open(file);
        ASSERT_TRUE(club);
        ASSERT_TRUE(club->register_().write(shed, {}, now));
        EXPECT_THAT(club->record().verify(false)->problems, testing::IsEmpty());
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
    inAKilledProgram([&] {
        (void)Club::createFrom(m_files / "killed.tholepin", "Killed", csv,
                               *core::CalendarDay::parse("2026-03-14"), [](int, int) { ::_exit(0); });
    });
    expectGoneAfterADay();
}

/// The file is whole and has not got its name yet.
TEST_F(KeptKeyFolders, thatACreateLeftWhichWasKilledAtTheEndGoToo) {
    inAKilledProgram([&] { createKilledBefore(Step::Rename); });
    expectGoneAfterADay();
}

TEST_F(KeptKeyFolders, ofAFileThatHadItsNameAreUsed) {
    inAKilledProgram([&] { createKilledBefore(Step::SyncFolder); });
    ASSERT_EQ(folders(), 1U);
    write(m_files / "killed.tholepin");
    EXPECT_EQ(folders(), 1U);
    EXPECT_EQ(keys(), 1U);
}

/// What was only planned leaves nothing, and the key of what is written then is kept.
TEST_F(KeptKeyFolders, ofAPlanGoAndAreMadeAgainToWrite) {
    createAnother();
    const support::ScratchFolder another;
    const support::StateFolder anothers(another.path());
    auto club = Club::open(m_files / "club1.tholepin");
    ASSERT_TRUE(club);
    ASSERT_TRUE(club->register_().plan(shed, now));
    EXPECT_EQ(keys(another), 0U);
    EXPECT_EQ(folders(another), 0U);
    ASSERT_TRUE(club->register_().write(shed, {}, now));
    EXPECT_EQ(keys(another), 1U);
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
