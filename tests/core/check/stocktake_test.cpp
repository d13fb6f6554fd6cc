#include "core/check/boat_check.h"

#include "tests/core/check/check_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// The design's stocktake of a shelf or room against the register (product G4).

CheckBuilder shelf() {
    CheckBuilder check;
    check.input.location = Location::place("loft");
    check.input.phase = Phase::Stocktake;
    return check;
}

TEST(StocktakeRules, areMetWhenAllIsThere) {
    auto check = shelf();
    check.out("K2", "paddle");
    check.out("K1", "knife");
    check.see("K2", "paddle");
    check.see("K1", "knife");
    const auto answer = check.answer();
    EXPECT_EQ(answer.outcome, CheckOutcome::Complete);
    EXPECT_THAT(answer.findings, IsEmpty());
    EXPECT_EQ(answer.phase, Phase::Stocktake);
    ASSERT_EQ(answer.lines.size(), 2u);
    EXPECT_EQ(answer.lines[0].line.kitType, "knife"); // by name: a shelf has no manifest
    EXPECT_EQ(answer.lines[0].wanted, 1);
    EXPECT_EQ(answer.lines[1].wanted, 1);
    EXPECT_EQ(answer.score.required, 2);
}

TEST(StocktakeRules, stopForEachThingThatIsNotThere) {
    auto check = shelf();
    check.out("K2", "paddle");
    check.out("K1", "paddle").size = "long";
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop missing paddle K1", "stop missing paddle K2"));
    EXPECT_EQ(answer.findings[0].size, "long");
    EXPECT_EQ(answer.outcome, CheckOutcome::Incomplete);
}

TEST(StocktakeRules, bringNothingThatIsWrittenOffToThePlaceWhereItLies) {
    auto check = shelf();
    Item& paddle = check.see("K1", "paddle").record.item;
    paddle.boat = "";
    paddle.place = "loft";
    paddle.state = ItemState::WrittenOff;
    check.input.expectedBack.push_back(check.input.seen[0].record);
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark written-off paddle K1"));
    check.input.seen[0].record.item.place = "shed";
    check.input.expectedBack.clear();
    EXPECT_THAT(briefOf(check.answer()),
                ElementsAre("remark extra paddle K1", "remark written-off paddle K1"));
}

TEST(StocktakeRules, nameTheHomeOfWhatBelongsElsewhere) {
    auto check = shelf();
    check.see("K1", "paddle"); // of the boat Heron
    check.see("K2", "paddle").record.item.boat = "";
    check.input.seen.back().record.item.place = "shed";
    check.see("K3", "paddle").record.item.boat = "";
    check.input.unknownTags = {"K9"};
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("remark extra paddle K1", "remark extra paddle K2",
                                             "remark extra paddle K3", "remark unknown-tag K9"));
    EXPECT_EQ(answer.findings[0].boat, "Heron");
    EXPECT_EQ(answer.findings[1].boat, "shed");
    EXPECT_EQ(answer.findings[2].boat, "");
    EXPECT_EQ(answer.outcome, CheckOutcome::CompleteWithRemarks);
}

TEST(StocktakeRules, tellWhatIsThereAndCannotBeUsed) {
    auto check = shelf();
    check.out("K1", "radio");
    check.see("K1", "radio").record.item.state = ItemState::Unserviceable;
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("remark unserviceable radio K1"));
    EXPECT_EQ(answer.lines[0].counted, 1); // it is there
}

} // namespace
} // namespace core
