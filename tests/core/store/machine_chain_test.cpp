#include "tests/core/store/machine_chain.h"

#include "core/record/machine_key.h"
#include "core/store/kept_keys.h"

#include <gmock/gmock.h>
#include <map>
#include <set>
#include <sys/stat.h>

namespace {

namespace fs = std::filesystem;
using core::Club;
using core::Database;
using core::Fact;
using support::MachineChain;
using support::StateFolder;

TEST_F(MachineChain, beginsWithItsKeyAndIsSigned) {
    const auto facts = factsOf(m_file);
    ASSERT_EQ(facts.size(), 3U);
    EXPECT_EQ(facts[0].kind, "machine-begun");
    EXPECT_EQ(facts[1].kind, "club-named");
    const auto begun = std::get<core::MachineBegun>(**core::bodyOf(facts[0]));
    EXPECT_EQ(core::machineOf(begun.publicKey), facts[0].machine);
    EXPECT_EQ(begun.continues, "");
    for (const Fact& fact : facts)
        EXPECT_TRUE(core::isSignedBy(fact, begun.publicKey));
    const auto found = looked(m_file);
    EXPECT_TRUE(found.problems.empty());
    ASSERT_EQ(found.machines.size(), 1U);
    EXPECT_TRUE(found.machines[0].isSigned);
    EXPECT_EQ(found.machines[0].facts, 3);
    EXPECT_EQ(found.machines[0].head, facts[2].hash);
    EXPECT_EQ(found.head, facts[2].hash);
}

TEST_F(MachineChain, goesOnFromProgramToProgram) {
    for (int i = 0; i < 5; ++i)
        writeTo(m_file);
    EXPECT_EQ(looked(m_file).machines.size(), 1U);
    EXPECT_EQ(factsOf(m_file).size(), 8U);
}

TEST_F(MachineChain, theKeyIsItsUsersAlone) {
    struct stat status {};
    ASSERT_EQ(::stat((m_folder / "state").c_str(), &status), 0);
    EXPECT_EQ(status.st_mode & 0777, 0700u);
    const std::string machine = factsOf(m_file).front().machine;
    ASSERT_EQ(::stat((m_folder / "state" / machine / machine).c_str(), &status), 0);
    EXPECT_EQ(status.st_mode & 0777, 0600u);
}

/// The machine and number of every fact that both files hold with another hash.
int forksOf(const std::vector<Fact>& one, const std::vector<Fact>& other) {
    std::map<std::pair<std::string, std::int64_t>, std::string> hashes;
    for (const Fact& fact : one)
        hashes[{fact.machine, fact.seq}] = fact.hash;
    int forks = 0;
    for (const Fact& fact : other)
        if (const auto found = hashes.find({fact.machine, fact.seq}); found != hashes.end())
            forks += found->second != fact.hash ? 1 : 0;
    return forks;
}

// Whatever the order in which a file and its copies are written to, no two go on with one chain.
TEST_F(MachineChain, aCopyGoesOnAsAMachineOfItsOwn) {
    writeTo(m_file);
    const fs::path copy = copied(m_file, "copy.tholepin");
    writeTo(copy); // the first to write keeps the chain
    writeTo(m_file);
    const fs::path third = copied(copy, "third.tholepin");
    writeTo(third);
    writeTo(m_file);
    writeTo(copy);
    writeTo(third);
    const std::vector<fs::path> files{m_file, copy, third};
    for (const fs::path& one : files) {
        EXPECT_TRUE(looked(one).problems.empty());
        for (const fs::path& other : files)
            EXPECT_EQ(forksOf(factsOf(one), factsOf(other)), 0) << one << ' ' << other;
    }
    EXPECT_EQ(looked(m_file).machines.size(), 2U);
}

TEST_F(MachineChain, aCopyIsNoForkEvenWhileBothAreOpen) {
    const fs::path copy = copied(m_file, "copy.tholepin");
    auto one = Club::open(m_file), other = Club::open(copy);
    for (int i = 0; i < 3; ++i)
        for (Club* club : {&*one, &*other})
            ASSERT_TRUE(club->log().add("Petrel", "seat loose", core::Severity::Remark, "", m_now));
    EXPECT_EQ(forksOf(factsOf(m_file), factsOf(copy)), 0);
    EXPECT_EQ(looked(m_file).machines.size() + looked(copy).machines.size(), 3U);
}

TEST_F(MachineChain, anOlderStateOfTheFileIsGoneOnWithByANewMachine) {
    const fs::path backup = copied(m_file, "backup.tholepin");
    writeTo(m_file);
    const auto newer = factsOf(m_file);
    fs::remove(m_file);
    copied(backup, "club.tholepin");
    writeTo(m_file);
    const auto found = looked(m_file);
    EXPECT_TRUE(found.problems.empty());
    EXPECT_EQ(found.machines.size(), 2U);
    EXPECT_EQ(forksOf(newer, factsOf(m_file)), 0);
}

TEST_F(MachineChain, anotherUserIsAnotherMachineAndTheFirstGoesOn) {
    StateFolder::use(m_folder / "other");
    writeTo(m_file);
    writeTo(m_file);
    EXPECT_EQ(looked(m_file).machines.size(), 2U);
    StateFolder::use(m_folder / "state");
    writeTo(m_file);
    const auto facts = factsOf(m_file);
    EXPECT_EQ(looked(m_file).machines.size(), 2U);
    EXPECT_EQ(facts.back().machine, facts.front().machine);
    const auto begun = std::find_if(facts.begin() + 1, facts.end(),
                                    [](const Fact& fact) { return fact.kind == "machine-begun"; });
    ASSERT_NE(begun, facts.end());
    EXPECT_EQ(std::get<core::MachineBegun>(**core::bodyOf(*begun)).continues, (begun - 1)->hash);
}

// What was written after something was known sorts after it, whatever the clocks say.
TEST_F(MachineChain, aFactSortsBehindAllThatStoodInTheFile) {
    std::set<std::string> ids;
    for (int i = 0; i < 6; ++i) {
        StateFolder::use(m_folder / (i % 2 == 0 ? "other" : "state"));
        writeTo(m_file);
        const Fact newest = factsOf(m_file).back();
        EXPECT_TRUE(ids.insert(newest.id).second);
        EXPECT_THAT(newest.body, testing::HasSubstr(", " + std::to_string(i + 1)));
    }
}

TEST_F(MachineChain, withoutAStateFolderTheRecordIsWrittenAllTheSame) {
    support::writeFile(m_folder / "file", "no folder");
    StateFolder::use(m_folder / "file");
    writeTo(m_file);
    writeTo(m_file);
    EXPECT_TRUE(looked(m_file).problems.empty());
    EXPECT_EQ(looked(m_file).machines.size(), 3U) << "each program is a machine of its own";
}

TEST_F(MachineChain, withoutAStateFolderAProgramIsOneMachineHoweverOftenItWrites) {
    support::writeFile(m_folder / "file", "no folder");
    StateFolder::use(m_folder / "file");
    auto club = Club::open(m_file);
    for (int i = 0; i < 5; ++i)
        ASSERT_TRUE(club->log().add("Petrel", "seat loose", core::Severity::Remark, "", m_now));
    EXPECT_EQ(looked(m_file).machines.size(), 2U);
    EXPECT_TRUE(looked(m_file).problems.empty());
}

TEST_F(MachineChain, aKeyThatCannotBeReadIsNoKey) {
    const std::string machine = factsOf(m_file).front().machine;
    support::writeFile(m_folder / "state" / machine / machine, "garbage");
    writeTo(m_file);
    EXPECT_TRUE(looked(m_file).problems.empty());
    EXPECT_EQ(looked(m_file).machines.size(), 2U);
}

TEST_F(MachineChain, aHeadThatWasLostIsHarmless) {
    const std::string machine = factsOf(m_file).front().machine;
    const fs::path key = m_folder / "state" / machine / machine;
    fs::copy_file(key, m_folder / "old");
    writeTo(m_file);
    fs::copy_file(m_folder / "old", key, fs::copy_options::overwrite_existing);
    writeTo(m_file);
    EXPECT_EQ(looked(m_file).machines.size(), 1U);
    EXPECT_TRUE(looked(m_file).problems.empty());
}

// A folder, or a disk, that was copied: both would go on with one chain.
TEST_F(MachineChain, aKeyCountsOnlyWhereItWasMade) {
    fs::copy(m_folder / "state", m_folder / "copy of state", fs::copy_options::recursive);
    fs::permissions(m_folder / "copy of state", fs::perms::owner_all);
    for (const auto& entry : fs::directory_iterator(m_folder / "copy of state"))
        fs::permissions(entry.path(), fs::perms::owner_all);
    StateFolder::use(m_folder / "copy of state");
    writeTo(m_file);
    EXPECT_EQ(looked(m_file).machines.size(), 2U);
    StateFolder::use(m_folder / "state");
    writeTo(m_file);
    EXPECT_EQ(looked(m_file).machines.size(), 2U) << "the first goes on where it was made";
}

TEST_F(MachineChain, aKeyThatOthersCanReadOrReplaceIsNotUsed) {
    const std::string machine = factsOf(m_file).front().machine;
    const fs::path key = m_folder / "state" / machine / machine;
    for (const auto& [path, open, closed] :
         {std::tuple(key, fs::perms(0644), fs::perms(0600)),
          std::tuple(m_folder / "state", fs::perms(0775), fs::perms(0755))}) {
        const auto before = looked(m_file).machines.size();
        fs::permissions(path, open);
        writeTo(m_file);
        EXPECT_EQ(looked(m_file).machines.size(), before + 1) << path;
        fs::permissions(path, closed);
        writeTo(m_file);
        EXPECT_EQ(looked(m_file).machines.size(), before + 1) << path;
    }
}

// Whoever holds the key's lock does not keep others from recording.
TEST_F(MachineChain, aLockThatIsNotGivenBackIsNotWaitedForWithoutEnd) {
    const std::string club = factsOf(m_file).front().machine;
    const core::KeptKeys keys(club);
    const core::KeptKeys::Turn turn(keys);
    ASSERT_TRUE(turn.isHeld());
    auto other = Club::open(m_file);
    for (int i = 0; i < 3; ++i)
        ASSERT_TRUE(other->log().add("Petrel", "seat loose", core::Severity::Remark, "", m_now));
    EXPECT_EQ(looked(m_file).machines.size(), 2U);
}

// What is read is of one moment, so a whole record is never told to be damaged while another program writes.
TEST_F(MachineChain, aLookThroughTheRecordIsOfOneMoment) {
    Database reader(m_file, Database::Mode::ReadOnly);
    const auto facts = [&] { return reader.number("SELECT count(*) FROM fact"); };
    const auto before = facts();
    {
        const core::ReadSnapshot snapshot(reader);
        EXPECT_EQ(facts(), before);
        writeTo(m_file);
        EXPECT_EQ(facts(), before);
    }
    EXPECT_EQ(facts(), before + 1);
}

TEST_F(MachineChain, aFileWithTwoNamesIsReadAndNotWritten) {
    fs::create_hard_link(m_file, m_folder / "second.tholepin");
    for (const char* name : {"club.tholepin", "second.tholepin"}) {
        const auto refused = Club::open(m_folder / name);
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, core::ErrorCode::FileHasTwoNames);
        EXPECT_TRUE(Club::open(m_folder / name, Club::Access::ReadOnly));
    }
    fs::remove(m_folder / "second.tholepin");
    EXPECT_TRUE(Club::open(m_file));
}

// SQLite would read such a name as a URI, and write over the file that it names.
TEST_F(MachineChain, aNameThatLooksLikeAUriIsAName) {
    const fs::path before = fs::current_path();
    fs::current_path(m_folder.path());
    const auto facts = factsOf(m_file).size();
    EXPECT_TRUE(Club::create("file:club.tholepin?x=", "Other"));
    EXPECT_EQ(factsOf(m_file).size(), facts);
    EXPECT_EQ(Club::open("file:club.tholepin?x=")->name(), "Other");
    fs::current_path(before);
}

TEST_F(MachineChain, aFactThatWasNotWrittenLeavesNoMachine) {
    StateFolder::use(m_folder / "other");
    {
        auto club = Club::open(m_file);
        EXPECT_FALSE(club->log().add("No such boat", "seat loose", core::Severity::Remark, "", m_now));
    }
    EXPECT_EQ(looked(m_file).machines.size(), 1U);
    writeTo(m_file);
    EXPECT_EQ(looked(m_file).machines.size(), 2U);
}

} // namespace
