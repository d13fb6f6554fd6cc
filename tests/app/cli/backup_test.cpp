#include "tests/app/cli/small_club.h"

#include <sqlite3.h>

namespace small_club {
namespace {

namespace fs = std::filesystem;

using Backup = SmallClub;

TEST_F(Backup, isTheSameRecordAndIsRestored) {
    const Ran ran = run({"backup", m_folder / "copy.tholepin", "--json"});
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_TRUE(Json::parse(ran.out)["problems"].empty());
    EXPECT_EQ(contentOf(m_folder / "copy.tholepin"), content());
    const std::string before = content();
    fs::remove(m_file);
    EXPECT_EQ(ctl({"restore", m_folder / "copy.tholepin", m_file}).exit, 0);
    EXPECT_EQ(content(), before);
    EXPECT_EQ(run({"verify"}).exit, 0);
}

TEST_F(Backup, neverWritesOverAFile) {
    write("copy.tholepin", "something else");
    const Ran ran = run({"backup", m_folder / "copy.tholepin"});
    EXPECT_EQ(ran.exit, 2);
    expectOneErrorLine(ran);
    EXPECT_EQ(fs::file_size(m_folder / "copy.tholepin"), 14U);
    EXPECT_EQ(ctl({"restore", m_file, m_folder / "copy.tholepin"}).exit, 2);
    expectOneErrorLine(ctl({"restore", m_folder / "copy.tholepin", m_folder / "new.tholepin"}));
    EXPECT_FALSE(fs::exists(m_folder / "new.tholepin"));
}

TEST_F(Backup, ofARecordThatWasChangedIsToldAndNotRestored) {
    sqlite3* database = nullptr;
    ASSERT_EQ(sqlite3_open(m_file.c_str(), &database), SQLITE_OK);
    EXPECT_EQ(sqlite3_exec(database, "UPDATE item SET kit_type = 'anchor' WHERE code = 'KD0XPAMAJG'", nullptr,
                           nullptr, nullptr),
              SQLITE_OK);
    sqlite3_close(database);
    const Ran ran = run({"backup", m_folder / "copy.tholepin", "--json"});
    EXPECT_EQ(ran.exit, 1);
    EXPECT_FALSE(Json::parse(ran.out)["problems"].empty());
    const Ran back = ctl({"restore", m_folder / "copy.tholepin", m_folder / "new.tholepin"});
    EXPECT_EQ(back.exit, 3);
    expectOneErrorLine(back);
    EXPECT_FALSE(fs::exists(m_folder / "new.tholepin"));
}

} // namespace
} // namespace small_club
