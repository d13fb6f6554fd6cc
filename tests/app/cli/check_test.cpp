#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::HasSubstr;
using testing::UnorderedElementsAre;

std::vector<std::string> kindsOf(const Json& report) {
    std::vector<std::string> kinds;
    for (const Json& finding : report["findings"])
        kinds.push_back(finding["kind"]);
    return kinds;
}

const Json& lineOf(const Json& report, const std::string& kitType) {
    for (const Json& line : report["lines"])
        if (line["kit_type"] == kitType) return line;
    throw std::runtime_error("no line " + kitType);
}

using Check = SmallClub;

TEST_F(Check, ofTheWholeKitIsCompleteAndFine) {
    const Ran ran = check(wholeKit());
    EXPECT_EQ(ran.exit, 0) << ran.err;
    const Json report = Json::parse(ran.out);
    EXPECT_EQ(report["outcome"], "complete");
    EXPECT_EQ(report["boat"], "Teal");
    EXPECT_EQ(report["phase"], "launch");
    EXPECT_EQ(report["today"], today);
    EXPECT_TRUE(report["signed_by"].is_null());
    EXPECT_TRUE(report["urgent"].is_null());
    EXPECT_TRUE(report["findings"].empty());
    EXPECT_TRUE(report["unread"].empty());
    EXPECT_FALSE(report["check"].get<std::string>().empty());
    EXPECT_EQ(report["best"]["required"], 6);
    EXPECT_EQ(report["best"]["other"], 1);
    EXPECT_EQ(report["best"]["own_type"], 7);
    EXPECT_EQ(report["best"]["own_boat"], 7);
    EXPECT_TRUE(report["best"]["due_sum"].is_number_integer());
}

TEST_F(Check, saysWhoWearsWhatAndWhenThingsFallDue) {
    const Json report = Json::parse(check(wholeKit()).out);
    const Json& jackets = lineOf(report, "life jacket");
    EXPECT_EQ(jackets["wanted"], 2);
    EXPECT_EQ(jackets["counted"], 2);
    ASSERT_EQ(jackets["items"].size(), 2U);
    for (const Json& item : jackets["items"]) {
        EXPECT_EQ(item["worn_by"], item["code"] == jacketM ? "Ada Thorne" : "Bo Lind");
        EXPECT_TRUE(item["due"].is_null());
        EXPECT_EQ(item["counts"], true);
    }
    // Last record none, first use 1 June 2025, inspected every 12 months: 1 June 2026.
    EXPECT_EQ(lineOf(report, "tow line")["items"][0]["due"], "2026-06-01");
}

TEST_F(Check, withoutTheKnifeIsIncompleteAndNeedsSomebody) {
    const Ran ran = check(without(wholeKit(), knife));
    EXPECT_EQ(ran.exit, 1);
    const Json report = Json::parse(ran.out);
    EXPECT_EQ(report["outcome"], "incomplete");
    ASSERT_EQ(kindsOf(report), std::vector<std::string>{"missing"});
    const Json& finding = report["findings"][0];
    EXPECT_EQ(finding["severity"], "stop");
    EXPECT_EQ(finding["kit_type"], "knife");
    EXPECT_EQ(finding["quantity"], 1);
    for (const char* absent : {"code", "rule", "since", "source"})
        EXPECT_TRUE(finding[absent].is_null()) << absent;
    EXPECT_THAT(finding["reason"].get<std::string>(), HasSubstr("nife"));
}

TEST_F(Check, explainsAnOverdueThingByRuleStartAndSource) {
    const Ran ran = check(wholeKit(), {}, "2026-07-01");
    const Json report = Json::parse(ran.out);
    EXPECT_EQ(report["today"], "2026-07-01");
    EXPECT_THAT(kindsOf(report), UnorderedElementsAre("missing", "service-overdue"));
    for (const Json& finding : report["findings"])
        if (finding["kind"] == "service-overdue") {
            EXPECT_EQ(finding["code"], towLine);
            EXPECT_EQ(finding["rule"], "yearly look");
            EXPECT_EQ(finding["since"], "2025-06-01");
            EXPECT_EQ(finding["source"], "club order 3");
            EXPECT_THAT(finding["reason"].get<std::string>(), HasSubstr("1 June 2025"));
        }
}

TEST_F(Check, takesItsDayFromTheInstant) {
    const Ran ran = run({"check", "--boat", "Teal", "--phase", "launch", "--codes", "-", "--json", "--at",
                         "2026-07-01T23:30:00+02:00"});
    EXPECT_EQ(Json::parse(ran.out)["today"], "2026-07-01");
}

TEST_F(Check, staysOpenAndGoesOn) {
    const Json first = Json::parse(check({knife, paddle1}).out);
    const Json second = Json::parse(check(without(without(wholeKit(), knife), paddle1)).out);
    EXPECT_EQ(first["check"], second["check"]);
    EXPECT_EQ(second["outcome"], "complete");
}

TEST_F(Check, theNewestNamesHold) {
    check(wholeKit());
    const Ran swapped = run({"check", "--boat", "Teal", "--phase", "launch", "--driver", "Bo Lind", "--crew",
                             "Ada Thorne", "--codes", "-", "--json", "--today", today});
    EXPECT_EQ(Json::parse(swapped.out)["outcome"], "complete");
    const Ran alone = run({"check", "--boat", "Teal", "--phase", "launch", "--driver", "Bo Lind", "--codes",
                           "-", "--json", "--today", today});
    EXPECT_EQ(lineOf(Json::parse(alone.out), "life jacket")["wanted"], 1);
}

TEST_F(Check, signedIsDoneAndTheNextOneIsNew) {
    const Json first = Json::parse(check(wholeKit(), {"--sign", "ada thorne"}).out);
    EXPECT_EQ(first["signed_by"], "Ada Thorne");
    const Json second = Json::parse(check({}).out);
    EXPECT_NE(first["check"], second["check"]);
    EXPECT_TRUE(second["signed_by"].is_null());
}

TEST_F(Check, incompleteIsNotSignedWithoutAReason) {
    const Ran ran = check({knife}, {"--sign", "Ada Thorne"});
    EXPECT_EQ(ran.exit, 1);
    EXPECT_TRUE(Json::parse(ran.out)["signed_by"].is_null());
    expectOneErrorLine(ran);
    EXPECT_THAT(ran.err, HasSubstr("--urgent"));
}

TEST_F(Check, urgentIsSignedWithItsReason) {
    const Ran ran = check({knife}, {"--sign", "Ada Thorne", "--urgent", "child adrift off the pier"});
    EXPECT_EQ(ran.exit, 1);
    const Json report = Json::parse(ran.out);
    EXPECT_EQ(report["signed_by"], "Ada Thorne");
    EXPECT_EQ(report["urgent"], "child adrift off the pier");
    EXPECT_EQ(report["outcome"], "incomplete");
}

TEST_F(Check, urgentIsDroppedWhenTheKitIsComplete) {
    const Json report = Json::parse(check(wholeKit(), {"--sign", "Ada Thorne", "--urgent", "no need"}).out);
    EXPECT_EQ(report["signed_by"], "Ada Thorne");
    EXPECT_TRUE(report["urgent"].is_null());
}

TEST_F(Check, pointsAreThereWithStateValueAndUnit) {
    const std::string file = write("some.csv", "point,value\nBow Chamber,25.5\nhull,done\n");
    const Json report =
        Json::parse(run({"check", "--boat", "Teal", "--phase", "launch", "--driver", "Ada Thorne", "--crew",
                         "Bo Lind", "--codes", "-", "--json", "--today", today, "--points", file},
                        lines(wholeKit()))
                        .out);
    ASSERT_EQ(report["points"].size(), 3U);
    EXPECT_EQ(report["points"][0]["point"], "hull");
    EXPECT_EQ(report["points"][0]["state"], "done");
    EXPECT_TRUE(report["points"][0]["value"].is_null());
    EXPECT_EQ(report["points"][1]["state"], "out-of-range");
    EXPECT_EQ(report["points"][1]["value"], 25.5);
    EXPECT_EQ(report["points"][1]["unit"], "kPa");
    EXPECT_EQ(report["points"][2]["state"], "open");
    EXPECT_THAT(kindsOf(report), UnorderedElementsAre("point-out-of-range", "point-open"));
}

TEST_F(Check, openLogEntriesAreListed) {
    ASSERT_EQ(run({"log-add", "--boat", "Teal", "--text", "port bung seeps", "--by", "Bo Lind", "--today",
                   "2026-03-12"})
                  .exit,
              0);
    const Json report = Json::parse(check(wholeKit()).out);
    EXPECT_EQ(report["outcome"], "complete-with-remarks");
    ASSERT_EQ(report["log_open"].size(), 1U);
    EXPECT_EQ(report["log_open"][0]["text"], "port bung seeps");
    EXPECT_EQ(report["log_open"][0]["day"], "2026-03-12");
    EXPECT_EQ(report["log_open"][0]["severity"], "remark");
    EXPECT_FALSE(report["log_open"][0]["entry"].get<std::string>().empty());
}

TEST_F(Check, forAPersonSaysTheSentenceFirstAndTheCautions) {
    const Ran ran = run({"check", "--boat", "Teal", "--phase", "launch", "--driver", "Ada Thorne", "--codes",
                         "-", "--today", today},
                        lines({paddle1}));
    EXPECT_EQ(ran.exit, 1);
    EXPECT_THAT(ran.out, testing::StartsWith("Kit incomplete: "));
    EXPECT_THAT(ran.out, HasSubstr("not permission to launch"));
    EXPECT_THAT(ran.out, HasSubstr("◯ knife"));
    EXPECT_THAT(ran.out, HasSubstr("■ paddle  KVP5 CYVR E7"));
}

TEST_F(Check, aReturnCheckMarksWhatDidNotComeBack) {
    ASSERT_EQ(check(wholeKit(), {"--sign", "Ada Thorne"}).exit, 0);
    const Ran back = run({"check", "--boat", "Teal", "--phase", "return", "--driver", "Ada Thorne", "--crew",
                          "Bo Lind", "--codes", "-", "--sign", "Ada Thorne", "--json", "--today", today},
                         lines(without(wholeKit(), knife)));
    EXPECT_EQ(back.exit, 1) << back.err;
    EXPECT_THAT(kindsOf(Json::parse(back.out)), testing::Contains("not-returned"));
    const Json missing = Json::parse(run({"missing", "--json"}).out)["missing"];
    std::vector<std::string> codes;
    for (const Json& item : missing)
        codes.push_back(item["code"]);
    EXPECT_THAT(codes, UnorderedElementsAre(knife, cootKnife));
}

TEST_F(Check, needsLittleMemory) {
    const Ran ran = check(wholeKit());
    EXPECT_LT(ran.peakKilobytes, 150 * 1024);
    EXPECT_GT(ran.peakKilobytes, 1024) << "the figure is in kilobytes";
}

} // namespace
} // namespace small_club
