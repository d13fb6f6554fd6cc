#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::HasSubstr;
using testing::Not;
using ItemRecords = SmallClub;

TEST_F(ItemRecords, anInflationMakesItsRulesDue) {
    const std::string rules = write("life_rules.csv", "kit_type,rule,kind,event,source\n"
                                                      "life jacket,re-arm,after_event,inflation,its maker\n");
    ASSERT_EQ(run({"import", m_folder.path().string(), "--today", today}).exit, 0);
    const Ran ran =
        run({"happened", jacketM, "--event", "Inflation", "--by", "bo lind", "--today", today, "--json"});
    ASSERT_EQ(ran.exit, 0) << ran.err;
    const Json told = Json::parse(ran.out);
    EXPECT_EQ(told["code"], jacketM);
    EXPECT_EQ(told["event"], "inflation");
    EXPECT_EQ(told["on"], today);
    EXPECT_EQ(told["recorded"], true);
    ASSERT_EQ(told["due"].size(), 1U);
    EXPECT_EQ(told["due"][0]["rule"], "re-arm");
    EXPECT_EQ(told["due"][0]["state"], "passed");
    const std::string before = content();
    const Ran again = run({"happened", jacketM, "--event", "inflation", "--today", today});
    EXPECT_EQ(again.exit, 0);
    EXPECT_THAT(again.out, HasSubstr("stood recorded already"));
    EXPECT_EQ(content(), before);
    const Ran unknown = run({"happened", jacketM, "--event", "rain", "--today", today});
    EXPECT_EQ(unknown.exit, 2);
    expectOneErrorLine(unknown);
    EXPECT_THAT(unknown.err, HasSubstr("inflation"));
    EXPECT_EQ(run({"happened", jacketM, "--event", "inflation", "--on", "soon"}).exit, 2);
    EXPECT_EQ(content(), before);
    EXPECT_EQ(run({"verify"}).exit, 0);
}

TEST_F(ItemRecords, aRecordMadeInErrorCountsNoMore) {
    write("life_rules.csv",
          "kit_type,rule,kind,n,source\nlife jacket,yearly look,inspect_every,12,its maker\n");
    ASSERT_EQ(run({"import", m_folder.path().string(), "--today", today}).exit, 0);
    const std::string codes = write("codes.txt", std::string(jacketM) + "\n");
    ASSERT_EQ(run({"service", "--rule", "yearly look", "--by", "Bo Lind", "--codes", codes, "--failed",
                   "--today", today})
                  .exit,
              0);
    const std::vector<std::string> withdraw{
        "withdraw-record", jacketM,          "--rule", "yearly look", "--on", today,
        "--why",           "another jacket", "--by",   "Bo Lind"};
    std::vector<std::string> dumb = withdraw;
    dumb[7] = "x";
    EXPECT_EQ(run(dumb).exit, 2);
    const Ran ran = run(withdraw);
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("serviceable"));
    EXPECT_THAT(ran.out, Not(HasSubstr("unserviceable")));
    const Json history = Json::parse(run({"history", jacketM, "--json"}).out)["history"];
    EXPECT_EQ(history.back()["kind"], "record-withdrawn");
    EXPECT_EQ(history.back()["body"]["reason"], "another jacket");
    const Ran twice = run(withdraw);
    EXPECT_EQ(twice.exit, 2);
    expectOneErrorLine(twice);
    ASSERT_EQ(run({"export", m_folder / "out"}).exit, 0);
    EXPECT_THAT(textOf(m_folder / "out" / "services.csv"), Not(HasSubstr("yearly look")));
    EXPECT_EQ(run({"verify", "--rebuild"}).exit, 0);
}

TEST_F(ItemRecords, todaysEventIsOfEachCheckThatIsOpened) {
    const auto held = [&](std::vector<std::string> words) {
        words.insert(words.begin(), "event");
        words.push_back("--json");
        const Ran ran = run(words);
        EXPECT_EQ(ran.exit, 0) << ran.err;
        return Json::parse(ran.out);
    };
    const std::string morning = std::string(today) + "T06:00:00Z", noon = std::string(today) + "T12:00:00Z";
    EXPECT_TRUE(held({"--at", morning})["event"].is_null());
    const Json begun = held({"Carnival", "--at", morning, "--until", noon, "--by", "Bo Lind"});
    EXPECT_EQ(begun["event"], "Carnival");
    EXPECT_EQ(begun["by"], "Bo Lind");
    EXPECT_EQ(begun["until"], std::string(today) + "T12:00:00.000Z");
    EXPECT_EQ(held({"--at", std::string(today) + "T08:00:00Z"})["event"], "Carnival");
    EXPECT_TRUE(held({"--at", noon})["event"].is_null());
    ASSERT_EQ(check({jacketM}, {"--at", std::string(today) + "T08:00:00Z", "--sign", "Ada Thorne", "--urgent",
                                "a person in the water"})
                  .exit,
              1);
    EXPECT_EQ(run({"missing", "--event", "carnival", "--today", today}).exit, 0);
    EXPECT_TRUE(held({"-", "--at", std::string(today) + "T09:00:00Z"})["event"].is_null());
    EXPECT_EQ(run({"event", "-", "--at", std::string(today) + "T09:30:00Z"}).exit, 2);
    EXPECT_EQ(run({"event", "Training", "--until", "noon"}).exit, 2);
    EXPECT_EQ(run({"event", "--until", noon}).exit, 2);
    EXPECT_EQ(run({"verify", "--rebuild"}).exit, 0);
}

} // namespace
} // namespace small_club
