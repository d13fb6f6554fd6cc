#include "core/base/error_code.h"
#include "core/base/store_failure.h"
#include "core/store/club_file.h"
#include "core/store/file_steps.h"
#include "core/store/kept_keys.h"
#include "core/store/new_file.h"
#include "tests/core/store/machine_chain.h"
#include "tests/support/full_disk.h"

#include <gmock/gmock.h>
#include <sys/stat.h>
#include <unistd.h>

namespace {

using core::ErrorCode;
using core::KeptKeys;
using core::NewFile;
using core::OwnMachine;
using core::StoreFailure;
using core::fileSteps::Step;
using support::MachineChain;
using support::fs::path;

const char* const aClub = "0123456789abcdef0123456789abcdef";

/// An environment variable for the length of a test.
class Variable {
public:
    Variable(const char* name, const std::string& value)
        : m_name(name) {
        if (const char* before = std::getenv(name)) m_before = before;
        ::setenv(name, value.c_str(), 1);
    }
    ~Variable() {
        if (m_before)
            ::setenv(m_name, m_before->c_str(), 1);
        else
            ::unsetenv(m_name);
    }
    Variable(const Variable&) = delete;
    Variable& operator=(const Variable&) = delete;

private:
    const char* m_name;
    std::optional<std::string> m_before;
};

ErrorCode codeOf(const std::function<void()>& work) {
    try {
        work();
    } catch (const StoreFailure& failure) {
        return failure.error.code;
    }
    return ErrorCode::EndOfCodes;
}

std::string contentOf(const path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

/// What this user keeps beside the club files, where the folder cannot be used as it should.
class KeptNotes : public testing::Test {
protected:
    path folder() const { return m_state / aClub; }
    support::ScratchFolder m_state;
    support::StateFolder m_inUse{m_state.path()};
};

// XDG Base Directory Specification 0.8: paths that are not absolute are to be ignored.
TEST(StateFolder, isWhereTheSpecificationHasIt) {
    const Variable own("THOLEPIN_STATE", ""), home("HOME", "/home/bram");
    {
        const Variable state("XDG_STATE_HOME", "/var/state");
        EXPECT_EQ(core::stateFolder(), "/var/state/tholepin");
    }
    const Variable state("XDG_STATE_HOME", "state");
    EXPECT_EQ(core::stateFolder(), "/home/bram/.local/state/tholepin");
    const Variable nowhere("HOME", "bram");
    EXPECT_EQ(core::stateFolder(), path());
    const KeptKeys keys(aClub);
    EXPECT_FALSE(keys.putNote("note", "7"));
    EXPECT_FALSE(keys.note("note"));
    EXPECT_FALSE(KeptKeys::Turn(keys).isHeld());
    EXPECT_FALSE(KeptKeys::isAnyOf(aClub));
}

TEST_F(KeptNotes, areWholeOrAsTheyWere) {
    const KeptKeys keys(aClub);
    EXPECT_FALSE(keys.note("note"));
    EXPECT_TRUE(keys.putNote("note", {})) << "nothing is to be taken away";
    ASSERT_TRUE(keys.putNote("note", "seven"));
    ASSERT_TRUE(keys.putNote("note", "eight"));
    {
        const support::FullDisk full(3);
        EXPECT_FALSE(keys.putNote("note", "nine hundred"));
    }
    EXPECT_EQ(KeptKeys(aClub).note("note"), "eight");
    ASSERT_TRUE(keys.putNote("note", {}));
    EXPECT_FALSE(keys.note("note"));
    std::filesystem::create_directory(folder() / "note");
    EXPECT_FALSE(keys.putNote("note", "ten")) << "a folder has the name";
    EXPECT_FALSE(keys.putNote("note", {}));
    EXPECT_FALSE(keys.note("note"));
    std::filesystem::create_directory(folder() / "other.new");
    EXPECT_FALSE(keys.putNote("other", "ten"));
}

TEST_F(KeptNotes, ofAnybodysAreNotRead) {
    const KeptKeys keys(aClub);
    ASSERT_TRUE(keys.putNote("note", "seven"));
    ::chmod((folder() / "note").c_str(), 0644);
    EXPECT_FALSE(keys.note("note"));
    ::chmod((folder() / "note").c_str(), 0600);
    EXPECT_EQ(keys.note("note"), "seven");
    std::filesystem::create_hard_link(folder() / "note", folder() / "twice");
    EXPECT_FALSE(keys.note("note"));
    ::chmod(folder().c_str(), 0755);
    EXPECT_TRUE(KeptKeys(aClub).putNote("ten", "ten")) << "others may look into the folder, and no more";
    ::chmod(folder().c_str(), 0775);
    EXPECT_FALSE(KeptKeys(aClub).putNote("note", "ten")) << "others may write to the folder";
    EXPECT_FALSE(KeptKeys("no club").putNote("note", "ten"));
}

/// A key that was half written is none, so that a new machine begins.
TEST_F(KeptNotes, aKeyOfWhichTheDiskTookAPartIsNone) {
    const KeptKeys keys(aClub);
    OwnMachine machine{core::MachineKey::fresh(), {7, std::string(64, 'a')}};
    {
        const support::FullDisk full(100);
        keys.put(machine);
    }
    EXPECT_TRUE(keys.all().empty());
    keys.put(machine);
    ASSERT_EQ(keys.all().size(), 1U);
    EXPECT_EQ(keys.all().front().head.seq, 7);
    const path file = folder() / machine.key.machine();
    EXPECT_EQ(std::filesystem::file_size(file), 65U * 2 + 19 + 65);
    std::fstream(file, std::ios::in | std::ios::out).seekp(65 * 2) << "x";
    EXPECT_TRUE(keys.all().empty()) << "its number is none";
}

/// The few steps that are done without SQLite.
class FileStep : public testing::Test {
protected:
    ~FileStep() override { core::fileSteps::watch({}); }
    /// The step fails with that number of errno, undone.
    static void fail(Step which, int number) {
        core::fileSteps::watch(
            [=](Step step, const path&, const path&) { return step == which ? number : 0; });
    }
    support::ScratchFolder m_folder;
    const path m_file = m_folder / "club.tholepin";
};

TEST_F(FileStep, ofWhatCannotBeSyncedIsNoFailure) {
    EXPECT_NO_THROW(core::fileSteps::syncFile("/dev/null")); // fsync(2): EINVAL
    EXPECT_EQ(codeOf([&] { core::fileSteps::syncFile(m_file); }), ErrorCode::FileNotWritten) << "not there";
    EXPECT_NO_THROW(core::fileSteps::syncFolder({})) << "where the program runs";
    fail(Step::SyncFolder, EIO);
    EXPECT_EQ(codeOf([&] { core::fileSteps::syncFolder(m_folder.path()); }), ErrorCode::FileNotWritten);
    EXPECT_EQ(codeOf([&] { core::fileSteps::make(m_folder / "no" / "file"); }), ErrorCode::FileNotMade);
}

/// As on a file system that cannot rename without replacing, such as NFS (rename(2): EINVAL).
TEST_F(FileStep, aNameIsTakenFirstWhereNothingElseKeepsItFree) {
    fail(Step::Rename, EINVAL);
    const path other = m_folder / "other";
    support::writeFile(m_file, "club");
    core::fileSteps::renameNoReplace(m_file, other);
    EXPECT_EQ(contentOf(other), "club");
    support::writeFile(m_file, "second");
    EXPECT_EQ(codeOf([&] { core::fileSteps::renameNoReplace(m_file, other); }), ErrorCode::FileExists);
    EXPECT_EQ(contentOf(other), "club");
    const path third = m_folder / "third";
    EXPECT_EQ(codeOf([&] { core::fileSteps::renameNoReplace(m_folder / "nothing", third); }),
              ErrorCode::FileNotMade);
    EXPECT_FALSE(std::filesystem::exists(third)) << "the name is free again";
}

TEST_F(FileStep, aNewFileIsFinishedOnlyWhenItIsWhole) {
    EXPECT_EQ(codeOf([&] { NewFile(m_folder / "club.tholepin-unfinished"); }), ErrorCode::FileNotMade);
    EXPECT_EQ(codeOf([&] { NewFile(m_file).finish(0600); }), ErrorCode::FileReplaced) << "it is empty";
    EXPECT_EQ(codeOf([&] {
                  NewFile made(m_file);
                  support::writeFile(made.place(), "club");
                  support::writeFile(made.place().string() + "-wal", "more");
                  made.finish(0600);
              }),
              ErrorCode::FileNotMade);
    EXPECT_EQ(codeOf([&] {
                  NewFile made(m_file);
                  std::filesystem::remove(made.place());
                  support::writeFile(made.place(), "another");
                  made.finish(0600);
              }),
              ErrorCode::FileReplaced);
    fail(Step::SyncFolder, EIO);
    EXPECT_EQ(codeOf([&] {
                  NewFile made(m_file);
                  support::writeFile(made.place(), "club");
                  made.finish(0600);
              }),
              ErrorCode::FileNotWritten);
    EXPECT_TRUE(std::filesystem::is_empty(m_folder.path())) << "nothing is left of any";
    core::fileSteps::watch({});
    NewFile made(m_file);
    EXPECT_EQ(codeOf([&] { NewFile{m_file}; }), ErrorCode::FileExists) << "it is being made";
    support::writeFile(made.place(), "club");
    made.finish(0640);
    struct stat status {};
    ASSERT_EQ(::stat(m_file.c_str(), &status), 0);
    EXPECT_EQ(status.st_mode & 0777, 0640U);
}

/// Between its name and its opening somebody writes over it.
TEST_F(FileStep, aClubThatCannotBeOpenedOnceItIsMadeIsNotLeft) {
    core::fileSteps::watch([&](Step step, const path&, const path&) {
        if (step == Step::SyncFolder) support::writeFile(m_file, std::string(8192, 'x'));
        return 0;
    });
    const support::StateFolder state(m_folder / "state");
    const auto club = core::Club::create(m_file, "Quillmere");
    ASSERT_FALSE(club);
    EXPECT_FALSE(std::filesystem::exists(m_file));
    core::fileSteps::watch({});
    EXPECT_TRUE(core::Club::create(m_file, "Quillmere"));
}

TEST_F(MachineChain, ofGarbagePagesIsDamage) {
    { core::Club::open(m_file)->rest(); }
    const auto size = std::filesystem::file_size(m_file);
    std::fstream file(m_file, std::ios::in | std::ios::out | std::ios::binary);
    file.seekp(4096);
    file << std::string(size - 4096, 'x');
    file.close();
    const auto club = core::Club::open(m_file);
    ASSERT_FALSE(club);
    EXPECT_EQ(club.error().code, ErrorCode::DatabaseDamaged);
}

} // namespace
