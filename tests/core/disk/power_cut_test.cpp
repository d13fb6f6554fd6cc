#include "core/base/error_code.h"
#include "core/club/club_copy.h"
#include "core/club/club_record.h"
#include "core/record/verification.h"
#include "core/store/club_file.h"
#include "tests/core/disk/disk_acts.h"
#include "tests/core/disk/disk_figures.h"
#include "tests/core/disk/disk_folder.h"
#include "tests/support/errors.h"
#include "tests/support/platter.h"
#include "tests/support/watched_disk.h"

#include <fstream>
#include <gmock/gmock.h>
#include <set>

namespace {

namespace fs = std::filesystem;
using core::Club;
using core::ErrorKind;
using namespace support;

/// What a program was told, and when.
struct Acknowledged {
    std::size_t after; ///< so many events
    fs::path file;
    Hashes record;
};

/// Runs something on the watched disk, then lets the power go before each call and looks at what is left.
class PowerCut : public testing::Test {
protected:
    PowerCut() {
        m_before.copyTo(folder.path());
        disk.tell([this](const DiskEvent& event) {
            if (!isLooking) events.push_back(event);
        });
    }
    ~PowerCut() override { disk.tell({}); }

    /// From here on it is recorded.
    void begin() {
        platter.emplace(folder.path());
        events.clear();
    }
    /// It was told that all that stands in the file now is done.
    void acknowledge(const std::string& name) {
        isLooking = true;
        acknowledged.push_back({events.size(), folder / name, hashesOf(folder / name)});
        isLooking = false;
    }
    Club openClub(const std::string& name = "club.tholepin") { return Club::open(folder / name).value(); }
    void act(Club& club, const char* name) {
        const Told said = clubAct(name).run(club, folder.path());
        ASSERT_FALSE(said) << name << described(*said);
        acknowledge("club.tholepin");
    }
    void cutEverywhere();

private:
    void cut(std::size_t at, Loss loss, Names names);
    void open(std::size_t at);
    void expectAcknowledged(std::size_t at);
    void expectClub(const fs::path& file, std::size_t at);
    bool isSound(const fs::path& file);
    const Acknowledged* newestOf(const fs::path& file, std::size_t at) const;

    const DiskFolder m_before;

protected:
    WatchedDisk disk;
    ScratchFolder folder;
    ScratchFolder image;
    std::optional<Platter> platter;
    std::vector<DiskEvent> events;
    std::vector<Acknowledged> acknowledged;
    std::vector<std::string> neverThere; ///< names
    std::set<std::size_t> wholeSizes;    ///< of the record after each act; empty: not looked at
    bool isMigrated = false;             ///< the images' files are of the next format
    bool isLooking = false;
    std::size_t cutsOfShortForm = 24;
    std::mt19937 random{20260314};
    std::set<std::size_t> seen;
};

const Acknowledged* PowerCut::newestOf(const fs::path& file, std::size_t at) const {
    const Acknowledged* newest = nullptr;
    for (const Acknowledged& each : acknowledged)
        if (each.file.filename() == file.filename() && each.after <= at) newest = &each;
    return newest;
}

/// Opens to read first: who only reads finds it as whole as who writes, or is told that it is unfinished.
bool PowerCut::isSound(const fs::path& file) {
    if (isMigrated) {
        const auto database = core::clubFile::open(file, false, stepsAndOne());
        return database->value("PRAGMA integrity_check") == "ok";
    }
    for (const auto access : {Club::Access::ReadOnly, Club::Access::ReadWrite}) {
        auto club = Club::open(file, access);
        if (!club) {
            ADD_FAILURE() << file << ": " << described(club.error());
            return false;
        }
        if (access == Club::Access::ReadOnly) {
            EXPECT_FALSE(club->name().empty()) << file;
            continue;
        }
        const auto found = club->record().verify(false);
        if (!found || !found->problems.empty()) {
            ADD_FAILURE() << file << ": " << described(found ? found->problems.front() : found.error());
            return false;
        }
    }
    return true;
}

void PowerCut::expectClub(const fs::path& file, std::size_t at) {
    const Acknowledged* told = newestOf(file, at);
    std::string all = std::to_string(told == nullptr ? 0 : told->after + 1) + file.string();
    for (const char* end : {"", "-wal", "-journal"})
        all += end + contentOf(file.string() + end);
    if (!seen.insert(std::hash<std::string>()(all)).second) return; // as in another image
    ++figures().filesOpened;
    if (told == nullptr) {
        const auto club = Club::open(file, Club::Access::ReadOnly);
        if (!club && club.error().kind() == ErrorKind::FileUnfinished) {
            ++figures().unfinished;
            return;
        }
    }
    if (!isSound(file)) {
        ++figures().damaged;
        return;
    }
    const Hashes there = hashesOf(file);
    if (!wholeSizes.empty()) {
        EXPECT_THAT(wholeSizes, testing::Contains(there.size())) << "a part of an act";
    }
    const Acknowledged* last = newestOf(file, events.size());
    if (last != nullptr) {
        EXPECT_TRUE(holdsAll(last->record, there)) << file << " holds what nobody did";
    }
    if (told == nullptr || holdsAll(there, told->record)) return;
    ++figures().lost;
    ADD_FAILURE() << file << " lost " << told->record.size() - there.size() << " acknowledged";
}

void PowerCut::expectAcknowledged(std::size_t at) {
    for (const fs::path& file : clubsIn(image.path()))
        expectClub(file, at);
    for (const Acknowledged& told : acknowledged) {
        if (told.after > at || fs::exists(image / told.file.filename().string())) continue;
        ++figures().lost;
        ADD_FAILURE() << told.file << " is not there";
    }
    for (const std::string& name : neverThere)
        EXPECT_FALSE(fs::exists(image / name)) << name;
}

void PowerCut::cut(std::size_t at, Loss loss, Names names) {
    const Image left = platter->image(loss, names, random);
    ++figures().imagesCut;
    std::size_t hash = std::hash<std::size_t>()(acknowledged.empty() ? 0 : at);
    for (const auto& [path, bytes] : left)
        hash = hash * 31 + std::hash<std::string>()(path) + std::hash<std::string>()(bytes) * 17;
    if (!seen.insert(hash).second) return;
    SCOPED_TRACE("cut before event " + std::to_string(at) + ", loss " +
                 std::to_string(static_cast<int>(loss)) + ", names " +
                 std::to_string(static_cast<int>(names)));
    layOut(left, folder.path(), image.path());
    if (random() % 4 == 0) // what programs share in memory is a file, too, which nobody syncs
        for (const fs::path& file : clubsIn(image.path()))
            std::ofstream(file.string() + "-shm") << std::string(32768, static_cast<char>(random()));
    expectAcknowledged(at);
}

void PowerCut::cutEverywhere() {
    isLooking = true;
    const std::size_t some = isEverythingTried() ? 1 : 1 + events.size() / cutsOfShortForm;
    for (std::size_t at = 0; at <= events.size(); ++at) {
        if (at > 0) platter->replay(events[at - 1]);
        if (at % some != 0 && at != events.size()) continue;
        for (const Loss loss : everyLoss)
            for (const Names names : everyNames)
                if (!HasFailure()) cut(at, loss, names);
    }
    EXPECT_GT(events.size(), 1u);
}

TEST_F(PowerCut, whileAClubIsCreatedLeavesItWholeOrNotThere) {
    begin();
    { ASSERT_TRUE(Club::create(folder / "new.tholepin", "New club")); }
    acknowledge("new.tholepin");
    cutEverywhere();
}

TEST_F(PowerCut, inADayOfActsKeepsWhatWasTold) {
    begin();
    {
        Club club = openClub();
        for (const char* name : {"open check", "scan", "point", "undo", "receive", "scan", "import"})
            act(club, name);
    }
    acknowledge("club.tholepin");
    Club club = openClub(); // again, with the log gone
    for (const char* name : {"log entry", "write off", "sign"})
        act(club, name);
    cutEverywhere();
}

TEST_F(PowerCut, inADayOfOtherActsKeepsWhatWasTold) {
    begin();
    {
        Club club = openClub();
        for (const char* name :
             {"photo", "fit out", "happened", "withdraw record", "move", "event ends", "event", "end"})
            act(club, name);
    }
    Club club = openClub();
    for (const char* name : {"rename", "scan"})
        act(club, name);
    cutsOfShortForm = 8;
    cutEverywhere();
}

TEST_F(PowerCut, whileAnothersRecordIsMergedTakesAllOfItOrNothing) {
    const std::string van = contentOf(folder / "van");
    const std::size_t before = hashesOf(folder / "club.tholepin").size();
    begin();
    Club club = openClub();
    act(club, "merge");
    ASSERT_GT(acknowledged.back().record.size(), before + 10);
    act(club, "scan");
    wholeSizes = {before, acknowledged.front().record.size(), acknowledged.back().record.size()};
    for (const DiskEvent& event : events)
        EXPECT_NE(event.path, (folder / "van").string());
    EXPECT_EQ(contentOf(folder / "van"), van);
    cutsOfShortForm = 8;
    cutEverywhere();
}

/// As on some network and stick file systems: the rollback journal stays, and what is told of it, too.
TEST_F(PowerCut, whereThereIsNoLogKeepsWhatWasTold) {
    fs::rename(folder / "backup.tholepin", folder / "club.tholepin");
    disk.shareNoMemory();
    begin();
    Club club = openClub();
    for (const char* name : {"open check", "scan", "log entry"})
        act(club, name);
    EXPECT_FALSE(fs::exists(folder / "club.tholepin-wal"));
    cutEverywhere();
}

TEST_F(PowerCut, whileABackupIsMadeLeavesItWholeOrNotThere) {
    const Club inUse = openClub();
    begin();
    ASSERT_TRUE(core::copyClub(folder / "club.tholepin", folder / "second.tholepin", true));
    acknowledge("second.tholepin");
    cutEverywhere();
}

TEST_F(PowerCut, whileABackupIsRestoredAndGoneOnWithKeepsWhatWasTold) {
    fs::remove(folder / "club.tholepin");
    begin();
    ASSERT_TRUE(core::copyClub(folder / "backup.tholepin", folder / "club.tholepin", false));
    acknowledge("club.tholepin");
    Club club = openClub();
    act(club, "scan");
    cutEverywhere();
}

TEST_F(PowerCut, whileATamperedBackupIsRefusedNeverLeavesItAtItsName) {
    begin();
    const auto refused = core::copyClub(folder / "tampered", folder / "restored.tholepin", false);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, core::ErrorCode::RecordDamaged);
    neverThere = {"restored.tholepin"};
    cutEverywhere();
}

TEST_F(PowerCut, whileAFileIsMigratedKeepsWhatWasTold) {
    begin();
    acknowledge("club.tholepin");
    { core::clubFile::open(folder / "club.tholepin", false, stepsAndOne()); }
    const std::string before = "club.tholepin.before-" + std::to_string(stepsAndOne().back().version);
    acknowledged.push_back({events.size(), folder / before, acknowledged.front().record});
    isMigrated = true;
    cutEverywhere();
}

/// A program was killed between the commit and its sync: what it wrote is in memory of the system, not on
/// disk.
class UnsyncedLog : public PowerCut, public testing::WithParamInterface<Club::Access> {};

TEST_P(UnsyncedLog, isOnDiskBeforeItIsTold) {
    {
        const ScratchFolder killed;
        Club club = openClub();
        EXPECT_FALSE(clubAct("scan").run(club, folder.path()));
        copyFolder(folder.path(), killed.path());
        { const Club closed = std::move(club); }
        copyFolder(killed.path(), folder.path());
    }
    begin();
    platter->unsync((folder / "club.tholepin-wal").string());
    const auto club = Club::open(folder / "club.tholepin", GetParam());
    ASSERT_TRUE(club);
    acknowledge("club.tholepin");
    ASSERT_EQ(acknowledged.back().record.size(), hashesOf(folder / "backup.tholepin").size() + 1);
    cutEverywhere();
}

INSTANTIATE_TEST_SUITE_P(ReaderAndWriter, UnsyncedLog,
                         testing::Values(Club::Access::ReadOnly, Club::Access::ReadWrite),
                         [](const auto& each) {
                             return each.param == Club::Access::ReadOnly ? "reader" : "writer";
                         });

} // namespace
