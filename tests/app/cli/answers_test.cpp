#include "tests/app/cli/small_club.h"

#include <sqlite3.h>

namespace small_club {
namespace {

using testing::Contains;
using testing::HasSubstr;

const Json* rowOf(const Json& rows, const char* field, const std::string& value) {
    for (const Json& row : rows)
        if (row[field] == value) return &row;
    return nullptr;
}

using Boats = SmallClub;

TEST_F(Boats, thatWereNeverCheckedAreNotReadyAndSayWhy) {
    const Ran ran = run({"boats", "--json", "--today", today});
    EXPECT_EQ(ran.exit, 1);
    const Json boats = Json::parse(ran.out)["boats"];
    ASSERT_EQ(boats.size(), 2U);
    for (const Json& boat : boats) {
        EXPECT_EQ(boat["condition"], "not-ready");
        EXPECT_EQ(boat["boat_class"], "inflatable");
        EXPECT_TRUE(boat["since"].is_null());
        EXPECT_FALSE(boat["reasons"].empty());
    }
}

TEST_F(Boats, areOutAfterASignedLaunchAndReadyAfterAWholeReturn) {
    ASSERT_EQ(check(wholeKit(), {"--sign", "Ada Thorne"}).exit, 0);
    const Json out = Json::parse(run({"boats", "--json", "--today", today}).out)["boats"];
    ASSERT_NE(rowOf(out, "boat", "Teal"), nullptr);
    EXPECT_EQ((*rowOf(out, "boat", "Teal"))["condition"], "out");
    EXPECT_EQ((*rowOf(out, "boat", "Teal"))["by"], "Ada Thorne");
    ASSERT_EQ(run({"check", "--boat", "Teal", "--phase", "return", "--driver", "Ada Thorne", "--crew",
                   "Bo Lind", "--codes", "-", "--sign", "Ada Thorne", "--today", today},
                  lines(wholeKit()))
                  .exit,
              0);
    const Json back = Json::parse(run({"boats", "--json", "--today", today}).out)["boats"];
    EXPECT_EQ((*rowOf(back, "boat", "Teal"))["condition"], "kit-ready");
}

TEST_F(Boats, forAPersonSayTheSentenceFirst) {
    const Ran ran = run({"boats", "--today", today});
    EXPECT_THAT(ran.out, testing::StartsWith("2 boats, 2 not ready."));
    EXPECT_THAT(ran.out, HasSubstr("Teal: not ready"));
}

using Missing = SmallClub;

TEST_F(Missing, listsWhatIsMissingWithItsChain) {
    const Ran ran = run({"missing", "--json", "--today", today});
    EXPECT_EQ(ran.exit, 1);
    const Json items = Json::parse(ran.out)["missing"];
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0]["code"], cootKnife);
    EXPECT_EQ(items[0]["kit_type"], "knife");
    EXPECT_EQ(items[0]["boat"], "Coot");
    EXPECT_EQ(items[0]["since"], "2026-03-08");
    for (const Json& link : items[0]["chain"])
        for (const char* field : {"at", "what", "where", "by", "check"})
            EXPECT_TRUE(link.contains(field)) << field;
}

TEST_F(Missing, isFineWhenTheItemWasSeenAnywhere) {
    check({cootKnife});
    const Ran ran = run({"missing", "--json", "--today", today});
    EXPECT_EQ(ran.exit, 0) << ran.out;
    EXPECT_TRUE(Json::parse(ran.out)["missing"].empty());
    EXPECT_THAT(run({"missing", "--today", today}).out, testing::StartsWith("Nothing is missing."));
}

using Due = SmallClub;

TEST_F(Due, isFineWhenNothingIsNear) {
    const Ran ran = run({"due", "--within", "30d", "--json", "--today", today});
    EXPECT_EQ(ran.exit, 0);
    EXPECT_EQ(Json::parse(ran.out)["today"], today);
    EXPECT_TRUE(Json::parse(ran.out)["due"].empty());
}

TEST_F(Due, explainsEachRow) {
    const Ran ran = run({"due", "--json", "--today", "2026-05-20"});
    EXPECT_EQ(ran.exit, 1);
    const Json rows = Json::parse(ran.out)["due"];
    ASSERT_EQ(rows.size(), 1U);
    const Json expected{{"code", towLine},         {"kit_type", "tow line"}, {"size", nullptr},
                        {"boat", "Teal"},          {"part", nullptr},        {"rule", "yearly look"},
                        {"kind", "inspect_every"}, {"due", "2026-06-01"},    {"state", "due-soon"},
                        {"severity", "stop"},      {"anchor", "first_use"},  {"anchor_day", "2025-06-01"},
                        {"source", "club order 3"}};
    EXPECT_EQ(rows[0], expected);
}

TEST_F(Due, laterRowsAloneAreFine) {
    const Ran ran = run({"due", "--within", "120", "--json", "--today", today});
    EXPECT_EQ(ran.exit, 0);
    ASSERT_EQ(Json::parse(ran.out)["due"].size(), 1U);
    EXPECT_EQ(Json::parse(ran.out)["due"][0]["state"], "later");
}

TEST_F(Due, aPassedRowNeedsSomebody) {
    const Ran ran = run({"due", "--json", "--today", "2026-06-02"});
    EXPECT_EQ(ran.exit, 1);
    EXPECT_EQ(Json::parse(ran.out)["due"][0]["state"], "passed");
}

using History = SmallClub;

TEST_F(History, tellsWhatWasRecordedOfAnItemABoatAndAPerson) {
    ASSERT_EQ(check(wholeKit(), {"--sign", "Ada Thorne"}).exit, 0);
    for (const std::string& subject :
         {knife, std::string("kd0x pama jg"), std::string("teal"), std::string("Ada Thorne")}) {
        const Ran ran = run({"history", subject, "--json"});
        EXPECT_EQ(ran.exit, 0) << ran.err;
        const Json told = Json::parse(ran.out)["history"];
        EXPECT_GE(told.size(), 2U) << subject;
        EXPECT_TRUE(told[0]["body"].is_object());
    }
}

TEST_F(History, ofAnUnknownCodeIsBadInput) {
    for (const std::string& subject : {unknownTag, std::string("Swan")}) {
        const Ran ran = run({"history", subject});
        EXPECT_EQ(ran.exit, 2);
        EXPECT_TRUE(ran.out.empty());
        expectOneErrorLine(ran);
    }
}

using Verify = SmallClub;

TEST_F(Verify, ofAnUntouchedFileIsFine) {
    for (const std::string& rebuild : {std::string(), std::string("--rebuild")}) {
        std::vector<std::string> words{"verify", "--json"};
        if (!rebuild.empty()) words.push_back(rebuild);
        const Ran ran = run(words);
        EXPECT_EQ(ran.exit, 0) << ran.out;
        const Json found = Json::parse(ran.out);
        EXPECT_GT(found["facts"], 10);
        EXPECT_EQ(found["devices"], 1);
        EXPECT_EQ(found["head"].get<std::string>().size(), 64U); // SHA-256 in hex
        EXPECT_TRUE(found["problems"].empty());
    }
}

TEST_F(Verify, findsAChangeBehindTheProgramsBack) {
    sqlite3* database = nullptr;
    ASSERT_EQ(sqlite3_open(m_file.c_str(), &database), SQLITE_OK);
    char* why = nullptr;
    const char* sql = "UPDATE item SET note = 'quietly changed' WHERE code = 'KD0XPAMAJG'";
    EXPECT_EQ(sqlite3_exec(database, sql, nullptr, nullptr, &why), SQLITE_OK) << why;
    ASSERT_EQ(sqlite3_close(database), SQLITE_OK);
    const Ran ran = run({"verify", "--json"});
    EXPECT_EQ(ran.exit, 1);
    const Json problems = Json::parse(ran.out)["problems"];
    ASSERT_FALSE(problems.empty());
    EXPECT_TRUE(problems[0].contains("where"));
    EXPECT_TRUE(problems[0].contains("what"));
    EXPECT_EQ(run({"verify", "--rebuild"}).exit, 0);
    EXPECT_EQ(run({"verify"}).exit, 0);
}

} // namespace
} // namespace small_club
