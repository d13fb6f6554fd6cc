#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::HasSubstr;
using Words = std::vector<std::string>;

class ControlTag : public SmallClub {
protected:
    static Words with(Words codes, const std::string& code) {
        codes.push_back(code);
        return codes;
    }
};

TEST_F(ControlTag, finishSignsByTheDriverOnBoard) {
    const Json report = Json::parse(check(with(wholeKit(), finishTag)).out);
    EXPECT_EQ(report["signed_by"], "Ada Thorne");
    EXPECT_EQ(report["outcome"], "complete");
}

TEST_F(ControlTag, finishSignsByThePersonWhoWasToSign) {
    EXPECT_EQ(Json::parse(check(with(wholeKit(), finishTag), {"--sign", "Bo Lind"}).out)["signed_by"],
              "Bo Lind");
}

TEST_F(ControlTag, finishOfAnIncompleteLaunchSignsNothingAndTheStreamGoesOn) {
    Words codes{finishTag};
    for (const std::string& code : wholeKit())
        codes.push_back(code);
    const Ran ran = check(codes);
    EXPECT_EQ(ran.exit, 0) << ran.err;
    EXPECT_TRUE(Json::parse(ran.out)["signed_by"].is_null());
    expectOneErrorLine(ran);
}

TEST_F(ControlTag, finishWithNobodyNamedSignsNothing) {
    const Ran ran =
        run({"check", "--boat", "Teal", "--phase", "launch", "--codes", "-", "--json", "--today", today},
            lines({knife, finishTag}));
    EXPECT_TRUE(Json::parse(ran.out)["signed_by"].is_null());
    expectOneErrorLine(ran);
}

TEST_F(ControlTag, undoTakesTheNewestSightingBackAndSaysWhatComesNext) {
    const Ran ran = check({knife, paddle1, undoTag});
    EXPECT_EQ(Json::parse(ran.out)["best"]["required"], 1);
    EXPECT_THAT(ran.err, HasSubstr("Taken back: paddle KVP5 CYVR E7. Next: knife KD0X PAMA JG."));
}

TEST_F(ControlTag, undoBeforeAnyScanTakesBackWhatWasToldBefore) {
    const Ran ran = check({undoTag, undoTag, undoTag, undoTag});
    EXPECT_THAT(ran.err, HasSubstr("Taken back: 60 at point “engine run”. Next: 20 at point “bow chamber”."));
    EXPECT_THAT(ran.err,
                HasSubstr("Taken back: aboard: Ada Thorne and Bo Lind. Nothing is left to take back."));
    EXPECT_EQ(Json::parse(ran.out)["points"][0]["state"], "open");
}

TEST_F(ControlTag, undoWithNothingToTakeBackSaysSo) {
    const Ran ran =
        run({"check", "--boat", "Teal", "--phase", "launch", "--codes", "-", "--json", "--today", today},
            lines({undoTag, knife}));
    expectOneErrorLine(ran);
    EXPECT_THAT(ran.err, HasSubstr("there is nothing to take back"));
    EXPECT_EQ(Json::parse(ran.out)["best"]["required"], 1);
}

TEST_F(ControlTag, damagedWithdrawsTheItemJustSeen) {
    const Ran ran = check(with(with(without(wholeKit(), knife), knife), damagedTag));
    EXPECT_EQ(ran.exit, 1);
    std::vector<std::string> kinds;
    const Json report = Json::parse(ran.out);
    for (const Json& finding : report["findings"])
        kinds.push_back(finding["kind"]);
    EXPECT_THAT(kinds, testing::IsSupersetOf({"missing", "unserviceable"}));
    const Json log = Json::parse(run({"log", "--json"}).out)["log"];
    ASSERT_EQ(log.size(), 1U);
    EXPECT_EQ(log[0]["code"], knife);
    EXPECT_EQ(log[0]["severity"], "stop");
}

TEST_F(ControlTag, damagedWithNoItemBeforeItChangesNothing) {
    const Ran ran = check({damagedTag});
    expectOneErrorLine(ran);
    EXPECT_TRUE(Json::parse(run({"log", "--json"}).out)["log"].empty());
}

TEST_F(ControlTag, nextBoatAndPutAsideEndTheStreamAndKeepTheCheckOpen) {
    for (const std::string& tag : {nextBoatTag, putAsideTag}) {
        Words codes{knife, tag, paddle1};
        const Json report = Json::parse(check(codes).out);
        EXPECT_EQ(report["best"]["required"], 1) << tag;
        EXPECT_TRUE(report["signed_by"].is_null());
    }
}

TEST_F(ControlTag, putAsideIsNotSigned) {
    const Ran ran = check(with(wholeKit(), putAsideTag), {"--sign", "Ada Thorne"});
    EXPECT_TRUE(Json::parse(ran.out)["signed_by"].is_null());
    EXPECT_THAT(ran.err, HasSubstr("put aside"));
}

TEST_F(ControlTag, clockTimesTheFirstOpenTimedPoint) {
    const Ran ran =
        run({"check", "--boat", "Teal", "--phase", "launch", "--codes", "-", "--json", "--today", today},
            lines({clockTag, clockTag}));
    const Json points = Json::parse(ran.out)["points"];
    ASSERT_EQ(points[2]["point"], "engine run");
    EXPECT_EQ(points[2]["state"], "out-of-range"); // a moment is less than its five seconds
    EXPECT_LT(points[2]["value"].get<double>(), 5.0);
    EXPECT_GE(points[2]["value"].get<double>(), 0.0);
}

TEST_F(ControlTag, aClockThatIsNotStoppedRecordsNothing) {
    const Ran ran =
        run({"check", "--boat", "Teal", "--phase", "launch", "--codes", "-", "--json", "--today", today},
            lines({clockTag}));
    expectOneErrorLine(ran);
    EXPECT_EQ(Json::parse(ran.out)["points"][2]["state"], "open");
}

TEST_F(ControlTag, aPersonsTagNamesTheNextOnBoard) {
    Words codes{adaTag, boTag};
    for (const std::string& code : wholeKit())
        codes.push_back(code);
    const Ran ran =
        run({"check", "--boat", "Teal", "--phase", "launch", "--codes", "-", "--json", "--today", today,
             "--points", write("points.csv", "point,value\nhull,done\nbow chamber,20\nengine run,9\n")},
            lines(with(codes, finishTag)));
    const Json report = Json::parse(ran.out);
    EXPECT_EQ(report["outcome"], "complete");
    EXPECT_EQ(report["signed_by"], "Ada Thorne");
}

} // namespace
} // namespace small_club
