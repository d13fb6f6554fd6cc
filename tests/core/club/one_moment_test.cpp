#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "tests/core/club/small_club.h"

#include <cstring>
#include <fstream>
#include <functional>
#include <gmock/gmock.h>
#include <sqlite3.h>

namespace {

using support::SmallClub;

/// What another program does as soon as the first statement that reads this table has run.
struct Interruption {
    std::string after;
    std::function<void()> act;
};
Interruption* waiting = nullptr;

int interrupt(unsigned, void*, void* statement, void*) {
    const char* sql = sqlite3_sql(static_cast<sqlite3_stmt*>(statement));
    if (sql == nullptr || waiting == nullptr || std::strstr(sql, waiting->after.c_str()) == nullptr) return 0;
    const Interruption due = *waiting;
    waiting = nullptr;
    due.act();
    return 0;
}
int traceEach(sqlite3* database, char**, const sqlite3_api_routines*) {
    return sqlite3_trace_v2(database, SQLITE_TRACE_PROFILE, interrupt, nullptr);
}

/// An answer that is read from several tables while another program writes to all of them in one act.
class OneMoment : public testing::Test {
protected:
    OneMoment() {
        sqlite3_auto_extension(reinterpret_cast<void (*)()>(traceEach));
        reader.emplace(core::Club::open(small.file(), core::Club::Access::ReadOnly).value());
    }
    ~OneMoment() override {
        waiting = nullptr;
        sqlite3_cancel_auto_extension(reinterpret_cast<void (*)()>(traceEach));
    }

    /// The other program takes somebody in with a knife of her own, in one import.
    void newPersonWithKnife() {
        const auto folder = small.folder / "both";
        std::filesystem::create_directories(folder);
        support::writeFile(folder / "people.csv", "person,role\nNia Marsh,crew\n");
        support::writeFile(folder / "items.csv", "code,kit_type,person\n,knife,Nia Marsh\n");
        ASSERT_TRUE(small.club.register_().importCsv(folder, small.now.today, false)->rejected.empty());
        ++writes;
    }
    std::string exported(const char* file) const {
        std::ifstream stream(small.folder / "out" / file);
        return {std::istreambuf_iterator<char>(stream), {}};
    }

    SmallClub small;
    std::optional<core::Club> reader;
    int writes = 0;
};

TEST_F(OneMoment, anExportKnowsThePeopleWhomItsItemsName) {
    Interruption comesBetween{"FROM person", [this] { newPersonWithKnife(); }};
    waiting = &comesBetween;
    ASSERT_TRUE(reader->register_().exportCsv(small.folder / "out", {}));
    ASSERT_EQ(writes, 1) << "nothing came between";
    EXPECT_EQ(exported("items.csv").find("Nia Marsh"), std::string::npos);
    EXPECT_EQ(exported("people.csv").find("Nia Marsh"), std::string::npos);
    std::filesystem::remove_all(small.folder / "out");
    ASSERT_TRUE(reader->register_().exportCsv(small.folder / "out", {}));
    EXPECT_NE(exported("items.csv").find("Nia Marsh"), std::string::npos);
    EXPECT_NE(exported("people.csv").find("Nia Marsh"), std::string::npos);
}

TEST_F(OneMoment, aCheckIsJudgedOnOneStateOfTheKit) {
    const std::string check = small.open();
    small.scanAll(check);
    // Between the manifest and the kit: the knife is written off, and no longer asked.
    Interruption comesBetween{
        "FROM manifest_line", [this] {
            const auto folder = small.folder / "both";
            std::filesystem::create_directories(folder);
            support::writeFile(folder / "manifest_lines.csv",
                               "boat_class,kit_type,quantity\ninflatable,knife,0\n");
            support::writeFile(folder / "items.csv", "code,state,why\nKGFB6J8WF9,written off,lost\n");
            ASSERT_TRUE(small.club.register_().importCsv(folder, small.now.today, false)->rejected.empty());
            ++writes;
        }};
    waiting = &comesBetween;
    const auto during = reader->checks().answer(check, small.now.today);
    ASSERT_TRUE(during);
    ASSERT_EQ(writes, 1) << "nothing came between";
    const auto knives = [](const core::CheckAnswer& answer) {
        return std::count_if(answer.findings.begin(), answer.findings.end(),
                             [](const auto& finding) { return finding.kitType == "knife"; });
    };
    EXPECT_EQ(knives(*during), 0) << "as it was: asked, and in use";
    const auto after = reader->checks().answer(check, small.now.today);
    EXPECT_GT(knives(*after), 0) << "as it is: written off";
}

} // namespace
