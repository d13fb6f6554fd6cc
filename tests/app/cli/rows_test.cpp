#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using RowCommands = SmallClub;

TEST_F(RowCommands, aPersonIsAddedAndChanged) {
    const Ran added = run({"add", "people", "person=Nia Marsh", "role=crew", "mass_kg=61.5", "--json"});
    ASSERT_EQ(added.exit, 0) << added.err;
    EXPECT_THAT(Json::parse(added.out)["rows"], ElementsAre("Nia Marsh"));
    const Ran changed =
        run({"change", "people", "nia marsh", "role=driver", "mass_kg=-", "--by", "Bo Lind", "--json"});
    ASSERT_EQ(changed.exit, 0) << changed.err;
    const Json set = Json::parse(changed.out)["changes"][0]["set"];
    EXPECT_EQ(set["role"], "driver");
    EXPECT_TRUE(set["mass_kg"].is_null());
    EXPECT_THAT(run({"history", "Nia Marsh"}).out, HasSubstr("driver"));
    EXPECT_EQ(run({"verify"}).exit, 0);
}

TEST_F(RowCommands, aLifeRuleIsTakenAway) {
    ASSERT_EQ(
        run({"add", "life_rules", "kit_type=life jacket", "rule=monthly look", "kind=inspect_every", "n=1"})
            .exit,
        0);
    const Ran removed = run({"remove-rule", "life jacket/monthly look", "--by", "Bo Lind", "--json"});
    ASSERT_EQ(removed.exit, 0) << removed.err;
    EXPECT_EQ(Json::parse(removed.out)["removed"], "life jacket/monthly look");
    ASSERT_EQ(run({"export", m_folder / "out"}).exit, 0);
    EXPECT_THAT(textOf(m_folder / "out" / "life_rules.csv"), testing::Not(HasSubstr("monthly look")));
    const Ran again = run({"remove-rule", "life jacket/monthly look"});
    EXPECT_EQ(again.exit, 2);
    expectOneErrorLine(again);
    EXPECT_EQ(run({"verify", "--rebuild"}).exit, 0);
}

TEST_F(RowCommands, aKitTypeMadeInErrorIsTakenAway) {
    ASSERT_EQ(run({"add", "kit_types", "kit_type=life jaket"}).exit, 0);
    ASSERT_EQ(run({"add", "sizes", "kit_type=life jaket", "size=M"}).exit, 0);
    const Ran refused = run({"remove", "kit_types", "life jaket"});
    EXPECT_EQ(refused.exit, 2);
    expectOneErrorLine(refused);
    EXPECT_THAT(refused.err, HasSubstr("life jaket/M"));
    const Ran size = run({"remove", "sizes", "life jaket/M", "--by", "Bo Lind", "--json"});
    ASSERT_EQ(size.exit, 0) << size.err;
    EXPECT_EQ(Json::parse(size.out), Json({{"sheet", "sizes"}, {"removed", "life jaket/M"}}));
    EXPECT_EQ(run({"remove", "kit_types", "Life Jaket"}).exit, 0);
    ASSERT_EQ(run({"export", m_folder / "out"}).exit, 0);
    EXPECT_THAT(textOf(m_folder / "out" / "kit_types.csv"), testing::Not(HasSubstr("jaket")));
    const Ran boat = run({"remove", "boats", "Teal"});
    EXPECT_EQ(boat.exit, 2);
    expectOneErrorLine(boat);
    EXPECT_THAT(boat.err, HasSubstr("end"));
    EXPECT_EQ(run({"verify", "--rebuild"}).exit, 0);
}

TEST_F(RowCommands, theClubsNameIsReadAndMended) {
    const std::string before = Json::parse(run({"club", "--json"}).out)["club"];
    const Ran named = run({"club", "--name", "Quillmere Lake Rescue", "--by", "Bo Lind", "--json"});
    ASSERT_EQ(named.exit, 0) << named.err;
    EXPECT_EQ(Json::parse(named.out)["club"], "Quillmere Lake Rescue");
    EXPECT_NE(before, "Quillmere Lake Rescue");
    EXPECT_EQ(run({"club"}).out, "Quillmere Lake Rescue\n");
    const Ran none = run({"club", "--name", " "});
    EXPECT_EQ(none.exit, 2);
    expectOneErrorLine(none);
    EXPECT_EQ(run({"club"}).out, "Quillmere Lake Rescue\n");
    EXPECT_EQ(run({"verify", "--rebuild"}).exit, 0);
}

TEST_F(RowCommands, whatWasRegisteredByMistakeIsNoLoss) {
    const auto lost = [&] {
        int count = 0;
        const Json kit = Json::parse(run({"lasting", "--json"}).out)["kit"];
        for (const Json& each : kit)
            count += each["lives"].get<int>() + each["left_out"].get<int>();
        return count;
    };
    const int before = lost();
    ASSERT_EQ(run({"write-off", knife, "--why", "mistake", "--by", "Bo Lind"}).exit, 0);
    EXPECT_EQ(lost(), before - 1);
    EXPECT_THAT(run({"history", knife}).out, HasSubstr("Written off: registered by mistake"));
    ASSERT_EQ(run({"reinstate", knife, "--why", "it is the club's", "--by", "Bo Lind"}).exit, 0);
    EXPECT_EQ(lost(), before);
}

TEST_F(RowCommands, whatAnImportRefusesIsRefusedInItsWords) {
    const std::string before = content();
    const Ran ran = run({"change", "people", "Bo Lind", "role=helm"});
    EXPECT_EQ(ran.exit, 2);
    EXPECT_EQ(ran.out, "");
    expectOneErrorLine(ran);
    EXPECT_THAT(ran.err, HasSubstr("people Bo Lind: role"));
    for (const std::vector<std::string>& words :
         {std::vector<std::string>{"change", "people", "Bo Lind", "role"},
          {"change", "people", "Bo Lind", "role=crew", "role=driver"},
          {"change", "sailors", "Bo Lind", "role=crew"},
          {"change", "people", "Nobody", "role=crew"},
          {"change", "people", "Bo Lind", "person=Bo"},
          {"change", "people", "Bo Lind", "colour=red"},
          {"change", "people", "Bo Lind", "role=crew", "--by", "Nobody"},
          {"add", "people", "person=BO LIND", "role=crew"},
          {"add", "people", "role=crew"},
          {"add", "people", "person= "},
          {"rename", "people", "Bo Lind", "Bo Linde", "--by", "Nobody"},
          {"happened", knife, "--event", "inflated", "--on", ""},
          {"check-list", "--boat", "Teal", "--out", ""},
          {"move", jacketM},
          {"move", jacketM, "--boat", "Swan"},
          {"move", jacketM, "--boat", "Teal", "--place", "Shed"}}) {
        const Ran refused = run(words);
        EXPECT_EQ(refused.exit, 2) << words[1];
        expectOneErrorLine(refused);
    }
    EXPECT_EQ(content(), before);
}

// docs/command-line.md: what an import of the row would warn of; nothing is refused by it.
TEST_F(RowCommands, whatMayNotBeMeantIsWarnedOf) {
    const std::string boatClass = Json::parse(run({"boats", "--json"}).out)["boats"][0]["boat_class"];
    const std::string slip = "boat_class=" + boatClass + "s";
    const Ran dry = run({"add", "boats", "boat=Heron", slip, "--dry-run", "--json"});
    ASSERT_EQ(dry.exit, 0) << dry.err;
    EXPECT_EQ(dry.err, "");
    const Json warnings = Json::parse(dry.out)["warnings"];
    ASSERT_EQ(warnings.size(), 2U);
    EXPECT_EQ(warnings[1]["name"], "Heron");
    EXPECT_THAT(warnings[1]["what"].get<std::string>(), HasSubstr("is almost '" + boatClass + "'"));
    const Ran added = run({"add", "boats", "boat=Heron", slip});
    EXPECT_EQ(added.exit, 0);
    EXPECT_THAT(added.err, HasSubstr("warning: boats Heron: the class '" + boatClass + "s' is almost"));
    const Ran good = run({"change", "boats", "Heron", "boat_class=" + boatClass, "--json"});
    EXPECT_TRUE(Json::parse(good.out)["warnings"].empty());
    const Ran renamed = run({"rename", "kit_types", "knife", "paddel"});
    EXPECT_EQ(renamed.exit, 0);
    EXPECT_THAT(renamed.err,
                HasSubstr("warning: kit_types paddel: the kit type 'paddel' is almost 'paddle'"));
    const Ran back = run({"rename", "kit_types", "paddel", "knife", "--json"});
    EXPECT_EQ(back.err, "");
    EXPECT_TRUE(Json::parse(back.out)["warnings"].empty());
}

// docs/rules.md, "A failed record": an item with a given state, too.
TEST_F(RowCommands, aFailedServiceRecordWithdrawsTheItem) {
    ASSERT_EQ(run({"change", "items", knife, "state=serviceable"}).exit, 0);
    ASSERT_EQ(
        run({"add", "life_rules", "kit_type=knife", "rule=edge", "kind=inspect_every", "n=12", "source=club"})
            .exit,
        0);
    const auto record = [&](const char* day, const char* passed) {
        const Ran ran =
            run({"add", "services", "code=" + std::string(knife), "rule=edge", std::string("day=") + day,
                 std::string("passed=") + passed, "--by", "Bo Lind", "--today", today, "--json"});
        EXPECT_EQ(ran.exit, 0) << ran.err;
        return Json::parse(ran.out);
    };
    EXPECT_EQ(record("2026-01-01", "no")["effects"]["kit"][0]["after"]["there"], 0);
    EXPECT_EQ(run({"release", knife, "--today", today, "--by", "Bo Lind"}).exit, 0) << "it was withdrawn";
    EXPECT_EQ(run({"verify", "--rebuild"}).exit, 0);
}

TEST_F(RowCommands, aDryRunSaysWhatWouldComeOfIt) {
    const std::string before = content();
    const Ran ran = run({"move", knife, "--place", "Shed", "--dry-run", "--json", "--today", today});
    ASSERT_EQ(ran.exit, 0) << ran.err;
    const Json document = Json::parse(ran.out);
    EXPECT_EQ(document["dry_run"], true);
    EXPECT_EQ(document["effects"]["kit"][0]["boat"], "Teal");
    EXPECT_EQ(document["effects"]["kit"][0]["after"]["there"], 0);
    EXPECT_THAT(run({"move", knife, "--place", "Shed", "--dry-run", "--today", today}).out,
                HasSubstr("Teal will have no knife."));
    EXPECT_EQ(content(), before);
    EXPECT_EQ(run({"move", knife, jacketM, "--place", "Shed", "--today", today}).exit, 0);
    const Ran again = run({"move", knife, "--place", "Shed", "--today", today, "--json"});
    EXPECT_EQ(again.exit, 0);
    EXPECT_TRUE(Json::parse(again.out)["changes"].empty());
}

} // namespace
} // namespace small_club
