#include "tests/app/cli/small_club.h"

#include <sys/mount.h>
#include <unistd.h>

#include <fstream>

namespace small_club {
namespace {

using testing::HasSubstr;
namespace fs = std::filesystem;

bool isLeft(const fs::path& file) {
    return fs::exists(file) || fs::exists(file.string() + "-wal") || fs::exists(file.string() + "-shm");
}

class Create : public testing::Test {
protected:
    support::ScratchFolder m_folder;
};

TEST_F(Create, makesAClubFileAndCountsTheRows) {
    writeFiles(m_folder / "csv", csvFiles());
    const Ran ran =
        ctl({"create", m_folder / "a.tholepin", "--club", "A", "--from", m_folder / "csv", "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(Json::parse(ran.out)["accepted"]["items.csv"], 9);
    EXPECT_EQ(Json::parse(ran.out)["accepted"]["boats.csv"], 2);
    EXPECT_TRUE(Json::parse(ran.out)["rejected"].empty());
    EXPECT_TRUE(fs::exists(m_folder / "a.tholepin"));
}

TEST_F(Create, withoutAFolderMakesAnEmptyClub) {
    EXPECT_EQ(ctl({"create", m_folder / "a.tholepin", "--club", "A"}).exit, 0);
    const Ran boats = ctl({"boats", m_folder / "a.tholepin", "--json"});
    EXPECT_EQ(boats.exit, 0);
    EXPECT_TRUE(Json::parse(boats.out)["boats"].empty());
}

TEST_F(Create, refusesAnExistingFileAndLeavesItAsItIs) {
    ASSERT_EQ(ctl({"create", m_folder / "a.tholepin", "--club", "A"}).exit, 0);
    const std::string before = textOf(m_folder / "a.tholepin");
    const Ran ran = ctl({"create", m_folder / "a.tholepin", "--club", "B"});
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_EQ(textOf(m_folder / "a.tholepin"), before);
}

TEST_F(Create, withOneBadRowLeavesNoFile) {
    auto files = csvFiles();
    files["items.csv"] += unknownTag + ",spoon,,Teal,,,,,,,,\n";
    writeFiles(m_folder / "csv", files);
    const Ran ran =
        ctl({"create", m_folder / "a.tholepin", "--club", "A", "--from", m_folder / "csv", "--json"});
    EXPECT_EQ(ran.exit, 2);
    const Json rejected = Json::parse(ran.out)["rejected"];
    ASSERT_EQ(rejected.size(), 1U);
    EXPECT_EQ(rejected[0]["file"], "items.csv");
    EXPECT_EQ(rejected[0]["row"], 11);
    EXPECT_EQ(rejected[0]["column"], "kit_type");
    EXPECT_THAT(ran.err, HasSubstr("items.csv:11:kit_type"));
    EXPECT_FALSE(isLeft(m_folder / "a.tholepin"));
}

TEST_F(Create, fromAFolderThatIsNotThereLeavesNoFile) {
    const Ran ran = ctl({"create", m_folder / "a.tholepin", "--club", "A", "--from", m_folder / "none"});
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_FALSE(isLeft(m_folder / "a.tholepin"));
}

/// A disk with no more room than this; only root may mount one.
class SmallDisk {
public:
    explicit SmallDisk(const fs::path& at, const char* options)
        : m_at(at) {
        fs::create_directories(at);
        m_mounted = mount("tmpfs", at.c_str(), "tmpfs", 0, options) == 0;
    }
    ~SmallDisk() {
        if (m_mounted) umount2(m_at.c_str(), MNT_DETACH);
    }
    bool isMounted() const { return m_mounted; }

private:
    fs::path m_at;
    bool m_mounted = false;
};

/// Where no small disk can be mounted, a device that is always full stands in for the output that has no
/// room.
TEST_F(Create, onAFullDiskFailsAndLeavesNothing) {
    writeFiles(m_folder / "csv", csvFiles());
    const SmallDisk disk(m_folder / "disk", "size=64k");
    if (!disk.isMounted()) {
        const Ran ran =
            support::runProgram("/bin/sh", {"-c", std::string(THOLEPINCTL) + " --help > /dev/full"});
        EXPECT_EQ(ran.exit, 3);
        expectOneErrorLine(ran);
        return;
    }
    const fs::path file = m_folder / "disk" / "a.tholepin";
    const Ran ran = ctl({"create", file, "--club", "A", "--from", m_folder / "csv"});
    EXPECT_EQ(ran.exit, 3) << ran.err;
    expectOneErrorLine(ran);
    EXPECT_FALSE(isLeft(file));
}

TEST_F(Create, onADiskWithRoomIsFine) {
    const SmallDisk disk(m_folder / "disk", "size=8m");
    EXPECT_EQ(ctl({"create", m_folder / "disk" / "a.tholepin", "--club", "A"}).exit, 0);
}

using FullDisk = SmallClub;

TEST_F(FullDisk, failsACheckInOneLineAndNothingIsRecorded) {
    const SmallDisk disk(m_folder / "disk", "size=1200k");
    const fs::path file = m_folder / "disk" / "club.tholepin";
    fs::copy_file(m_file, file);
    const std::vector<std::string> words{"check",  file,      "--boat", "Teal",    "--phase",
                                         "launch", "--codes", "-",      "--today", today};
    if (disk.isMounted()) {
        const std::string before = contentOf(file);
        std::ofstream filler(m_folder / "disk" / "filler");
        while (filler << std::string(4096, '.') << std::flush) {
        }
        const Ran ran = ctl(words, lines(wholeKit()));
        EXPECT_EQ(ran.exit, 3) << ran.err;
        EXPECT_TRUE(ran.out.empty());
        expectOneErrorLine(ran);
        filler.close();
        fs::remove(m_folder / "disk" / "filler");
        EXPECT_EQ(contentOf(file), before);
    }
    EXPECT_EQ(ctl(words, lines(wholeKit())).exit, 1)
        << "with room it goes on: nobody is named, the points are open";
}

using Import = SmallClub;

TEST_F(Import, takesNewRowsAndSaysHowMany) {
    writeFiles(m_folder / "more", {{"items.csv", "code,kit_type,boat\n" + unknownTag + ",knife,Coot\n"}});
    const Ran ran = run({"import", m_folder / "more", "--json", "--today", today});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(Json::parse(ran.out)["accepted"]["items.csv"], 1);
    EXPECT_EQ(run({"history", unknownTag}).exit, 0);
}

TEST_F(Import, onlyPlansInADryRun) {
    writeFiles(m_folder / "more", {{"items.csv", "code,kit_type,boat\n" + unknownTag + ",knife,Coot\n"}});
    const std::string before = content();
    EXPECT_EQ(run({"import", m_folder / "more", "--dry-run"}).exit, 0);
    EXPECT_EQ(content(), before);
}

TEST_F(Import, withBadRowsListsEachAndChangesNothing) {
    writeFiles(m_folder / "more", {{"items.csv", "code,kit_type,boat\n" + unknownTag +
                                                     ",knife,Coot\n,paddle,Swan\n,spoon,Coot\n"}});
    const std::string before = content();
    const Ran ran = run({"import", m_folder / "more"});
    EXPECT_EQ(ran.exit, 2);
    EXPECT_THAT(ran.err, HasSubstr("items.csv:3:boat"));
    EXPECT_THAT(ran.err, HasSubstr("items.csv:4:kit_type"));
    EXPECT_EQ(content(), before);
}

TEST_F(Import, ofAFolderThatIsNotThereChangesNothing) {
    const std::string before = content();
    const Ran ran = run({"import", m_folder / "none"});
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_EQ(content(), before);
}

TEST_F(Import, ofItsOwnExportChangesNothing) {
    const std::string before = content();
    ASSERT_EQ(run({"export", m_folder / "out"}).exit, 0);
    EXPECT_TRUE(fs::exists(m_folder / "out" / "items.csv"));
    EXPECT_EQ(run({"import", m_folder / "out", "--today", today}).exit, 0);
    EXPECT_EQ(content(), before);
}

using Export = SmallClub;

TEST_F(Export, keepsMeasuresToThoseWhoAreNamed) {
    ASSERT_EQ(run({"export", m_folder / "out"}).exit, 0);
    EXPECT_THAT(textOf(m_folder / "out" / "people.csv"), testing::Not(HasSubstr("62")));
    ASSERT_EQ(run({"export", m_folder / "out", "--measures-of", "Ada Thorne"}).exit, 0);
    EXPECT_THAT(textOf(m_folder / "out" / "people.csv"), HasSubstr("62"));
    EXPECT_EQ(run({"export", m_folder / "out", "--measures-of", "Nobody"}).exit, 2);
}

TEST_F(Export, whereNothingCanBeWrittenFails) {
    const std::string file = write("plain", "a file, no folder");
    const Ran ran = run({"export", file + "/out"});
    EXPECT_EQ(ran.exit, 3);
    expectOneErrorLine(ran);
}

} // namespace
} // namespace small_club
