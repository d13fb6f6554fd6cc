#include "core/club/club_log.h"
#include "core/club/club_record.h"
#include "core/record/verification.h"
#include "core/store/club_file.h"
#include "tests/core/disk/disk_acts.h"
#include "tests/core/disk/disk_figures.h"
#include "tests/core/disk/disk_folder.h"
#include "tests/support/errors.h"
#include "tests/support/short_memory.h"
#include "tests/support/watched_disk.h"

#include <gmock/gmock.h>
#include <sqlite3.h>

namespace {

namespace fs = std::filesystem;
using core::Club;
using core::ErrorKind;
using namespace support;

/// What fails, the n-th time or from then on.
struct Fault {
    std::string name;
    std::function<void(int nth, bool lasting)> begin;
    std::function<bool()> hasFailed;
    std::function<void()> end;
    int DiskFigures::*injected;
    int DiskFigures::*told;
};

/// Each act is tried with each failure on a club of its own, which has to be whole afterwards.
class Faults : public testing::Test {
protected:
    static void SetUpTestSuite() { s_template = std::make_unique<DiskFolder>(); }
    static void TearDownTestSuite() { s_template.reset(); }

    std::vector<Fault> diskFaults() {
        std::vector<Fault> all;
        for (const DiskCall call : everyDiskCall)
            for (const int code :
                 isEverythingTried() ? failuresOf(call) : std::vector{failuresOf(call).front()})
                all.push_back(
                    {std::string(support::nameOf(call)) + " " + std::to_string(code),
                     [this, call, code](int nth, bool lasting) { disk.fail(call, nth, code, lasting); },
                     [this] { return disk.hasFailed(); }, [this] { disk.heal(); }, &DiskFigures::diskFaults,
                     &DiskFigures::diskErrors});
        return all;
    }
    std::vector<Fault> memoryFaults() {
        return {{"memory", shortMemory::fail, shortMemory::hasFailed, shortMemory::heal,
                 &DiskFigures::memoryFaults, &DiskFigures::memoryErrors}};
    }
    /// Calls `one` with each number until nothing fails any more.
    void eachTime(const std::vector<Fault>& faults, const char* act,
                  const std::function<bool(const Fault&, int, bool)>& one) {
        const int most = isEverythingTried() ? 20000 : 2;
        for (const Fault& fault : faults)
            for (const bool lasting : {false, true})
                for (int nth = 1; nth < (lasting ? most : 20000); nth = nextToTry(nth)) {
                    SCOPED_TRACE(std::string(act) + ": " + fault.name + ", " + std::to_string(nth) +
                                 (lasting ? " and on" : ""));
                    s_template->copyTo(folder.path());
                    if (!one(fault, nth, lasting) || HasFatalFailure()) break;
                }
    }
    /// Runs it with that failure; an exception is told as what it is.
    Told run(const Fault& fault, int nth, bool lasting, const std::function<Told()>& act) {
        fault.begin(nth, lasting);
        Told said;
        try {
            said = act();
        } catch (const std::exception& thrown) {
            ADD_FAILURE() << "an exception came out: " << thrown.what();
        }
        fault.end();
        if (!fault.hasFailed()) return said;
        ++(figures().*fault.injected);
        if (said) ++(figures().*fault.told);
        if (said) {
            EXPECT_TRUE(said->kind() == ErrorKind::DiskFailed || said->kind() == ErrorKind::FileLocked)
                << described(*said);
        }
        return said;
    }
    void expectSound(const fs::path& file) {
        auto club = Club::open(file);
        ASSERT_TRUE(club) << file << ": " << described(club.error());
        EXPECT_THAT(club->record().verify(false)->problems, testing::IsEmpty()) << file;
    }

    bool tryAct(const ClubAct& act, std::size_t facts, const Fault& fault, int nth, bool lasting);
    bool tryFileAct(const FileAct& act, const Fault& fault, int nth, bool lasting);
    void tryActs(const std::vector<Fault>& faults);
    void tryFileActs(const std::vector<Fault>& faults);
    void expectAsIfKilled(const Hashes& before, std::size_t facts, bool wasDone, bool lasting);

    bool isInUse = false; ///< something was recorded since the club was opened: the log holds it
    WatchedDisk disk;
    ScratchFolder folder;
    const fs::path file = folder / "club.tholepin";
    static std::unique_ptr<DiskFolder> s_template;
};
std::unique_ptr<DiskFolder> Faults::s_template;

/// What the next program finds when this one is killed at this moment.
void Faults::expectAsIfKilled(const Hashes& before, std::size_t facts, bool wasDone, bool lasting) {
    const ScratchFolder killed;
    copyFolder(folder.path(), killed.path());
    if (!wasDone) expectSound(killed / "club.tholepin");
    const auto after = hashesOf(killed / "club.tholepin");
    EXPECT_TRUE(holdsAll(after, before));
    if (wasDone)
        EXPECT_EQ(after.size(), before.size() + facts);
    else if (lasting) // then what was half done cannot be taken away, either
        EXPECT_THAT(after.size(), testing::AnyOf(before.size(), before.size() + facts));
    else
        EXPECT_EQ(after.size(), before.size());
    if (!wasDone && after.size() != before.size()) ++figures().standsAfterKill;
}

bool Faults::tryAct(const ClubAct& act, std::size_t facts, const Fault& fault, int nth, bool lasting) {
    Hashes before;
    {
        auto club = Club::open(file);
        if (isInUse) {
            EXPECT_TRUE(club->log().add("Tern", "oar is worn", core::Severity::Remark, {}, today()));
        }
        before = hashesOf(file);
        const Told said = run(fault, nth, lasting, [&] { return act.run(*club, folder.path()); });
        if (!fault.hasFailed()) {
            EXPECT_FALSE(said) << described(*said);
            return false;
        }
        expectAsIfKilled(before, facts, !said, lasting);
        const auto now = hashesOf(file);
        EXPECT_TRUE(holdsAll(now, before)) << "what was acknowledged before is there";
        if (said && now.size() != before.size()) ++figures().answersLost;
        if (said && now.size() == before.size()) {
            const Told again = act.run(*club, folder.path());
            EXPECT_FALSE(again) << described(*again);
        }
    }
    expectSound(file);
    EXPECT_EQ(hashesOf(file).size(), before.size() + facts) << "it is there, once";
    EXPECT_EQ(contentOf(folder / "van"), s_template->contentOf("van")) << "another's file";
    return true;
}

bool Faults::tryFileAct(const FileAct& act, const Fault& fault, int nth, bool lasting) {
    const auto names = namesIn(folder.path());
    const auto before = hashesOf(file);
    const Told said = run(fault, nth, lasting, [&] { return act.run(folder.path()); });
    if (!fault.hasFailed()) {
        EXPECT_FALSE(said) << described(*said);
        return false;
    }
    const bool isMigrated =
        core::Database(file, core::Database::Mode::ReadOnly).number("PRAGMA user_version") ==
        stepsAndOne().back().version;
    if (said && isMigrated) ++figures().answersLost;
    if (said && act.isMaking && !isMigrated) {
        auto left = namesIn(folder.path()); // beside the club that was read, which is in use
        std::erase_if(left, [](const auto& name) {
            return name == "club.tholepin-wal" || name == "club.tholepin-shm";
        });
        EXPECT_EQ(left, names) << "nothing is left";
    }
    if (said) {
        const Told again = act.run(folder.path());
        EXPECT_FALSE(again) << described(*again);
    }
    EXPECT_EQ(hashesOf(file), before);
    const std::string backup = s_template->contentOf("backup.tholepin");
    for (const fs::path& each : clubsIn(folder.path()))
        if (contentOf(each) != backup && (each != file || std::string_view(act.name) != "migrate"))
            expectSound(each);
    return true;
}

void Faults::tryActs(const std::vector<Fault>& faults) {
    for (const ClubAct& act : clubActs()) {
        s_template->copyTo(folder.path());
        const auto before = hashesOf(file).size();
        ASSERT_FALSE(act.run(*Club::open(file), folder.path())) << act.name;
        const auto facts = hashesOf(file).size() - before;
        ASSERT_GT(facts, 0u) << act.name;
        const bool isTried = isInUse ? std::string_view(act.name) == "scan" : act.isTriedAlways;
        if (!isEverythingTried() && !isTried) continue;
        eachTime(faults, act.name, [&](const Fault& fault, int nth, bool lasting) {
            return tryAct(act, facts, fault, nth, lasting);
        });
    }
}

void Faults::tryFileActs(const std::vector<Fault>& faults) {
    for (const FileAct& act : fileActs())
        eachTime(faults, act.name, [&](const Fault& fault, int nth, bool lasting) {
            return tryFileAct(act, fault, nth, lasting);
        });
}

TEST_F(Faults, ofTheDiskInAnActLeaveItDoneOrUndone) {
    tryActs(diskFaults());
    EXPECT_GT(figures().diskErrors, 50);
}

TEST_F(Faults, ofTheDiskInALaterActLeaveItDoneOrUndone) {
    isInUse = true;
    tryActs(diskFaults());
}

TEST_F(Faults, ofTheDiskWhileAFileIsMadeOrOpenedLeaveNothingBehind) {
    tryFileActs(diskFaults());
    EXPECT_GT(figures().diskErrors, 50);
}

TEST_F(Faults, ofMemoryInAnActLeaveItDoneOrUndone) {
    tryActs(memoryFaults());
    EXPECT_GT(figures().memoryErrors, 20);
}

TEST_F(Faults, ofMemoryWhileAFileIsMadeOrOpenedLeaveNothingBehind) {
    tryFileActs(memoryFaults());
    EXPECT_GT(figures().memoryErrors, 20);
}

} // namespace
