#include "core/check/boat_check.h"

#include "tests/core/check/check_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// Design: rules 6.

CheckBuilder comingBack() {
    CheckBuilder check;
    check.input.phase = Phase::Return;
    check.line("knife");
    check.line("paddle", 2);
    check.line("radio");
    return check;
}

TEST(ReturnCheck, isCompleteWhenAllThatWentOutIsBack) {
    auto check = comingBack();
    for (const char* code : {"K1", "K2"}) {
        check.out(code, "paddle");
        check.see(code, "paddle");
    }
    const auto answer = check.answer();
    EXPECT_EQ(answer.outcome, CheckOutcome::Complete);
    EXPECT_THAT(answer.findings, IsEmpty()) << "what never went out is not missing";
    EXPECT_EQ(answer.phase, Phase::Return);
    ASSERT_EQ(answer.lines.size(), 1u);
    EXPECT_EQ(answer.lines[0].line.kitType, "paddle");
    EXPECT_EQ(answer.lines[0].wanted, 2);
    EXPECT_EQ(answer.lines[0].counted, 2);
    EXPECT_EQ(briefOf(answer.lines[0]), "K1+ K2+ ");
    EXPECT_EQ(answer.score.required, 2);
}

TEST(ReturnCheck, stopsForEachItemThatIsNotBack) {
    auto check = comingBack();
    check.out("K2", "paddle");
    check.out("K1", "paddle");
    check.out("K3", "knife").size = "short";
    check.see("K1", "paddle");
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop not-returned knife K3", "stop not-returned paddle K2"));
    EXPECT_EQ(answer.outcome, CheckOutcome::Incomplete);
    EXPECT_EQ(answer.findings[0].boat, "Heron");
    EXPECT_EQ(answer.lines[1].wanted, 2);
    EXPECT_EQ(answer.lines[1].counted, 1);
}

TEST(ReturnCheck, listsTheManifestsTypesInItsOrderThenOthersByName) {
    auto check = comingBack();
    for (const char* kitType : {"torch", "radio", "bell", "paddle"})
        check.out(std::string("K") + kitType[0], kitType);
    std::vector<std::string> types;
    for (const LineAnswer& line : check.answer().lines)
        types.push_back(line.line.kitType);
    EXPECT_THAT(types, ElementsAre("paddle", "radio", "bell", "torch"));
    for (const LineAnswer& line : check.answer().lines)
        EXPECT_TRUE(line.line.required);
}

TEST(ReturnCheck, callsSwappedWhatAnotherBoatStillHasOut) {
    auto check = comingBack();
    SeenItem& seen = check.see("K7", "paddle");
    seen.record.item.boat = "Teal";
    seen.lastLaunchedOn = "Teal";
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("remark swapped paddle K7"));
    EXPECT_EQ(answer.findings[0].boat, "Teal");
    EXPECT_EQ(answer.outcome, CheckOutcome::CompleteWithRemarks);
}

TEST(ReturnCheck, callsExtraWhatNoBoatHasOut) {
    auto check = comingBack();
    SeenItem& seen = check.see("K7", "paddle");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark extra paddle K7"));
    seen.lastLaunchedOn = "Teal";
    seen.cameBackSince = true;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark extra paddle K7"));
    seen.lastLaunchedOn = "Heron";
    seen.cameBackSince = false;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark extra paddle K7"));
}

TEST(ReturnCheck, listsStrangersUnderTheLineOfTheirType) {
    auto check = comingBack();
    check.out("K5", "paddle");
    check.see("K5", "paddle");
    check.see("K1", "paddle");
    EXPECT_EQ(briefOf(check.answer().lines[0]), "K5+ K1- ");
    EXPECT_EQ(check.answer().lines[0].counted, 1);
}

TEST(ReturnCheck, remarksWhatWillNotCountNextTimeThoughItIsBack) {
    auto check = comingBack();
    check.type("paddle").rules = {expiry()};
    check.out("K1", "paddle");
    check.see("K1", "paddle").record.item.state = ItemState::Unserviceable;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark unserviceable paddle K1"));
    check.input.seen[0].record.item.state = ItemState::WrittenOff;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark written-off paddle K1"));
    check.input.seen[0].record.item.state = ItemState::Serviceable;
    check.input.seen[0].record.item.stamped = known("2026-03-13");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark out-of-date paddle K1"));
    EXPECT_EQ(check.answer().lines[0].counted, 1);
    EXPECT_EQ(check.answer().outcome, CheckOutcome::CompleteWithRemarks);
}

TEST(ReturnCheck, remarksWhatWasMissingAndUnknownTags) {
    auto check = comingBack();
    check.see("K7", "paddle").wasMissing = true;
    check.input.unknownTags = {"K9"};
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark extra paddle K7", "remark was-missing paddle K7",
                                                     "remark unknown-tag K9"));
}

TEST(ReturnCheck, judgesThePointsAndTheLogOfTheReturn) {
    auto check = comingBack();
    check.out("K1", "paddle");
    check.see("K1", "paddle").logOpen = {
        {"e2", "", itemNamed("K1"), day("2026-03-02"), "chipped", Severity::Stop, "", {}, ""}};
    check.input.logOpen = {{"e1", "Heron", {}, day("2026-03-01"), "scratch", Severity::Remark, "", {}, ""}};
    check.point("flush", PointKind::Timed, 100, {300.0, {}});
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer),
                ElementsAre("stop log-open paddle K1", "stop point-out-of-range", "remark log-open"));
    EXPECT_EQ(answer.logOpen.size(), 2u);
    EXPECT_EQ(answer.points.size(), 1u);
}

TEST(ReturnCheck, countsOneItemOnceHoweverOftenItIsGiven) {
    auto check = comingBack();
    check.out("K1", "paddle");
    check.out("K1", "paddle");
    check.see("K1", "paddle");
    check.see("K1", "paddle");
    EXPECT_THAT(check.answer().findings, IsEmpty());
    EXPECT_EQ(check.answer().lines[0].wanted, 1);
}

} // namespace
} // namespace core
