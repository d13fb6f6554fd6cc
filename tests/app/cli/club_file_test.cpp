#include "tests/app/cli/small_club.h"

#include <sqlite3.h>

#include <fstream>

namespace small_club {
namespace {

using testing::HasSubstr;
using Words = std::vector<std::string>;

/// Every command that takes a club file, with what else it needs; FILE, CODES and DIR are filled in.
const std::vector<Words>& commands() {
    static const std::vector<Words> all{
        {"import", "FILE", "DIR"},
        {"export", "FILE", "DIR"},
        {"check", "FILE", "--boat", "Teal", "--phase", "launch", "--codes", "CODES"},
        {"boats", "FILE"},
        {"missing", "FILE"},
        {"due", "FILE"},
        {"tags", "FILE", "--out", "DIR/tags.pdf"},
        {"tags", "FILE", "--mint", "1"},
        {"scene", "FILE", "--boat", "Teal", "--out", "DIR/scene"},
        {"log", "FILE"},
        {"log-add", "FILE", "--boat", "Teal", "--text", "bung seeps"},
        {"log-close", "FILE", "e1", "--closing", "mended"},
        {"history", "FILE", "Teal"},
        {"end", "FILE", "person", "Bo Lind", "--on", "2026-10-31"},
        {"verify", "FILE"},
        {"verify", "FILE", "--rebuild"},
    };
    return all;
}

class ClubFile : public SmallClub, public testing::WithParamInterface<Words> {
protected:
    Words filled(const std::string& file) const {
        Words words = GetParam();
        for (std::string& word : words) {
            if (word == "FILE") word = file;
            if (word == "CODES") word = write("codes.txt", lines(wholeKit()));
            if (word.starts_with("DIR")) word = (m_folder / "csv").string() + word.substr(3);
        }
        return words;
    }
    std::string bytesOf(const std::filesystem::path& file) const {
        std::ifstream in(file, std::ios::binary);
        return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
    }
    void setUserVersion(int version) const {
        sqlite3* database = nullptr;
        ASSERT_EQ(sqlite3_open(m_file.c_str(), &database), SQLITE_OK);
        const std::string sql = "PRAGMA user_version = " + std::to_string(version);
        EXPECT_EQ(sqlite3_exec(database, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK);
        EXPECT_EQ(sqlite3_close(database), SQLITE_OK);
    }
};

TEST_P(ClubFile, thatIsMissingIsBadInput) {
    const Ran ran = ctl(filled(m_folder / "none.tholepin"));
    EXPECT_EQ(ran.exit, 2);
    EXPECT_TRUE(ran.out.empty()) << ran.out;
    expectOneErrorLine(ran);
    EXPECT_THAT(ran.err, HasSubstr("none.tholepin"));
    EXPECT_FALSE(std::filesystem::exists(m_folder / "none.tholepin"));
}

TEST_P(ClubFile, thatIsSomethingElseIsBadInputAndStaysAsItIs) {
    const std::string text = "Dear committee, the shed roof leaks again.\n";
    const std::string file = write("letter.txt", text);
    const Ran ran = ctl(filled(file));
    EXPECT_EQ(ran.exit, 2);
    EXPECT_TRUE(ran.out.empty()) << ran.out;
    expectOneErrorLine(ran);
    EXPECT_EQ(bytesOf(file), text);
}

TEST_P(ClubFile, ofANewerProgramIsRefusedAndStaysAsItIs) {
    setUserVersion(999);
    const std::string before = content();
    const Ran ran = ctl(filled(m_file));
    EXPECT_EQ(ran.exit, 2);
    EXPECT_TRUE(ran.out.empty()) << ran.out;
    expectOneErrorLine(ran);
    EXPECT_THAT(ran.err, HasSubstr("newer"));
    EXPECT_EQ(content(), before);
}

INSTANTIATE_TEST_SUITE_P(Commands, ClubFile, testing::ValuesIn(commands()));

class UnreadableFile : public SmallClub {
protected:
    void change(const char* sql) const {
        sqlite3* database = nullptr;
        ASSERT_EQ(sqlite3_open(m_file.c_str(), &database), SQLITE_OK);
        EXPECT_EQ(sqlite3_exec(database, sql, nullptr, nullptr, nullptr), SQLITE_OK)
            << sqlite3_errmsg(database);
        EXPECT_EQ(sqlite3_close(database), SQLITE_OK);
    }
    void expectFailed(const std::vector<std::string>& words) const {
        const Ran ran = run(words);
        EXPECT_EQ(ran.exit, 3) << words.front();
        EXPECT_TRUE(ran.out.empty()) << ran.out;
        expectOneErrorLine(ran);
    }
};

TEST_F(UnreadableFile, lacksATableAndEveryReaderSaysSoInOneLine) {
    ASSERT_EQ(check(wholeKit(), {"--sign", "Ada Thorne"}).exit, 0);
    for (const char* reader : {"boats", "missing", "due", "log", "make-ready", "replace", "lasting"})
        EXPECT_LE(run({reader, "--today", today}).exit, 1) << reader;
    change("DROP TABLE taken_back; DROP TABLE log_entry; DROP TABLE kit_type; DROP TABLE sign_off");
    for (const char* reader : {"boats", "missing", "due", "log", "make-ready", "replace", "lasting"})
        expectFailed({reader, "--today", today});
}

TEST_F(UnreadableFile, holdsASignatureThatIsNoJson) {
    ASSERT_EQ(check(wholeKit(), {"--sign", "Ada Thorne", "--at", "2026-03-14T07:00:00Z"}).exit, 0);
    const std::vector<std::string> aboard{"aboard", "--boat", "Teal", "--on", "2026-03-14T08:00:00Z"};
    EXPECT_EQ(run(aboard).exit, 0);
    change("UPDATE sign_off SET answer = '{'");
    expectFailed(aboard);
}

using LockedFile = SmallClub;

TEST_F(LockedFile, failsAWriterWithExitThreeAndNothingIsRecorded) {
    const std::string before = content();
    sqlite3* holder = nullptr;
    ASSERT_EQ(sqlite3_open(m_file.c_str(), &holder), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(holder, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    const Ran held = run({"log-add", "--boat", "Teal", "--text", "bung seeps"});
    EXPECT_EQ(held.exit, 3);
    expectOneErrorLine(held);
    ASSERT_EQ(sqlite3_exec(holder, "ROLLBACK", nullptr, nullptr, nullptr), SQLITE_OK);
    ASSERT_EQ(sqlite3_close(holder), SQLITE_OK);
    EXPECT_EQ(content(), before);

    EXPECT_EQ(run({"log-add", "--boat", "Teal", "--text", "bung seeps"}).exit, 0);
    EXPECT_NE(content(), before);
}

TEST_F(LockedFile, canStillBeReadWhileAnotherWrites) {
    sqlite3* holder = nullptr;
    ASSERT_EQ(sqlite3_open(m_file.c_str(), &holder), SQLITE_OK);
    ASSERT_EQ(sqlite3_exec(holder, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr), SQLITE_OK);
    EXPECT_EQ(run({"missing", "--today", today}).exit, 1);
    EXPECT_EQ(sqlite3_close(holder), SQLITE_OK);
}

} // namespace
} // namespace small_club
