#include "core/check/boat_check.h"

#include "tests/core/check/check_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// The loose kit of a small inshore inflatable, as a national surf life saving authority's boat manual lists
// it (9th edition, topic "equipment"): knife, a pair of paddles, rescue tube, whistle, tow rope, radio.
const std::vector<std::pair<std::string, int>> publishedKit{
    {"knife", 1}, {"paddle", 2}, {"rescue tube", 1}, {"whistle", 1}, {"tow rope", 1}, {"radio", 1}};

/// All of it is wanted and seen but one item of `without`.
CheckBuilder publishedCheck(const std::string& without = {}) {
    CheckBuilder check;
    int code = 0;
    for (const auto& [kitType, quantity] : publishedKit) {
        check.line(kitType, quantity);
        for (int i = kitType == without ? 1 : 0; i < quantity; ++i)
            check.see("K" + std::to_string(++code), kitType);
    }
    return check;
}

TEST(LaunchCheck, isCompleteWithThePublishedKitAndNothingElse) {
    const auto answer = publishedCheck().answer();
    EXPECT_EQ(answer.outcome, CheckOutcome::Complete);
    EXPECT_THAT(answer.findings, IsEmpty());
    EXPECT_EQ(answer.location, Location::boat("Heron"));
    EXPECT_EQ(answer.lines.size(), publishedKit.size());
    EXPECT_EQ(answer.score, (AssignmentScore{7, 0, 7, 7, 7LL * 3652059}));
}

TEST(LaunchCheck, missesExactlyWhatIsNotThere) {
    for (const auto& [kitType, quantity] : publishedKit) {
        const auto answer = publishedCheck(kitType).answer();
        EXPECT_EQ(answer.outcome, CheckOutcome::Incomplete);
        EXPECT_THAT(briefOf(answer), ElementsAre("stop missing " + kitType)); // of two paddles one
    }
}

TEST(LaunchCheck, isShortByAsManyAsAreNotSeen) {
    CheckBuilder check;
    check.line("paddle", 3);
    check.see("K1", "paddle");
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop missing paddle x2"));
    EXPECT_EQ(answer.lines[0].wanted, 3);
    EXPECT_EQ(answer.lines[0].counted, 1);
}

TEST(LaunchCheck, countsOneItemOnceHoweverOftenItIsGiven) {
    CheckBuilder check;
    check.line("paddle", 2);
    check.see("K1", "paddle");
    check.see("K1", "paddle");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop missing paddle"));
}

TEST(LaunchCheck, remarksAnOptionalLineThatIsShort) {
    CheckBuilder check;
    check.somethingIsAsked();
    check.line("anchor", 1, false);
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("remark missing anchor"));
    EXPECT_EQ(answer.outcome, CheckOutcome::CompleteWithRemarks);
}

TEST(LaunchCheck, wantsNothingOfALineTakenAway) {
    CheckBuilder check;
    check.somethingIsAsked();
    check.line("anchor", 0);
    check.see("K1", "anchor");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark extra anchor K1"));
}

TEST(LaunchCheck, takesAListedSubstituteAndNoOther) {
    CheckBuilder check;
    check.line("tow line", 1, true, {"long tow line"});
    check.see("K1", "long tow line");
    EXPECT_THAT(check.answer().findings, IsEmpty());
    EXPECT_EQ(check.answer().score.ownType, 0);
    check.input.lines[0].substitutes.clear();
    EXPECT_THAT(briefOf(check.answer()),
                ElementsAre("stop missing tow line", "remark extra long tow line K1"));
}

TEST(LaunchCheck, usesTheLinesOwnTypeBeforeASubstitute) {
    CheckBuilder check;
    check.line("tow line", 1, true, {"long tow line"});
    check.see("K1", "long tow line");
    check.see("K2", "tow line");
    const auto answer = check.answer();
    EXPECT_EQ(briefOf(answer.lines[0]), "K2+ ");
    EXPECT_EQ(answer.score.ownType, 1);
    EXPECT_THAT(briefOf(answer), ElementsAre("remark extra long tow line K1"));
}

TEST(LaunchCheck, keepsTheSubstituteForTheLineThatNeedsIt) {
    CheckBuilder check;
    check.line("tow line", 1, true, {"long tow line"});
    check.line("long tow line");
    check.see("K1", "long tow line");
    check.see("K2", "tow line");
    const auto answer = check.answer();
    EXPECT_THAT(answer.findings, IsEmpty());
    EXPECT_EQ(answer.lines[0].items[0].item.id, "K2");
    EXPECT_EQ(answer.lines[1].items[0].item.id, "K1");
    EXPECT_EQ(answer.score, (AssignmentScore{2, 0, 2, 2, 2LL * 3652059}));
}

TEST(LaunchCheck, fillsTheRequiredLineFirst) {
    CheckBuilder check;
    check.line("spare knife", 1, false, {"knife"});
    check.line("knife");
    check.see("K1", "knife");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark missing spare knife"));
    EXPECT_EQ(check.answer().score, (AssignmentScore{1, 0, 1, 1, 3652059}));
}

TEST(LaunchCheck, usesTheBoatsOwnItemBeforeOneOfAnotherBoat) {
    CheckBuilder check;
    check.line("paddle");
    check.see("K1", "paddle").record.item.boat = "Teal";
    check.see("K2", "paddle").record.item.boat = "";
    const auto answer = check.answer();
    EXPECT_EQ(answer.lines[0].items[0].item.id, "K2")
        << "an item at home on no boat is as good as the boat's own";
    EXPECT_EQ(answer.score.ownBoat, 1);
    EXPECT_THAT(briefOf(answer), ElementsAre("remark extra paddle K1", "remark other-boat paddle K1"));
}

TEST(LaunchCheck, usesFirstWhatIsDueFirst) {
    CheckBuilder check;
    check.type("flare").rules = {expiry()};
    check.line("flare");
    check.see("K1", "flare").record.item.stamped = known("2027-12");
    check.see("K2", "flare").record.item.stamped = known("2026-12");
    const auto answer = check.answer();
    EXPECT_EQ(briefOf(answer.lines[0]), "K2+ ");
    EXPECT_EQ(answer.lines[0].items[0].due, day("2026-12-31"));
    EXPECT_EQ(answer.score.dueSum, day("2026-12-31").number());
}

TEST(LaunchCheck, countsAPartsDayAmongTheItems) {
    CheckBuilder check;
    check.type("jacket").rules = {expiry()};
    check.type("jacket").rules[0].part = "cylinder";
    check.line("jacket");
    check.see("K1", "jacket").record.parts = {{"cylinder", {}, {}, known("2026-03-13")}};
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop missing jacket", "stop out-of-date jacket K1"));
    check.input.seen[0].record.parts[0].stamped = known("2026-09-30");
    EXPECT_THAT(check.answer().findings, IsEmpty());
    EXPECT_EQ(check.answer().lines[0].items[0].due, day("2026-09-30"));
}

TEST(LaunchCheck, listsFillersByCodeThenWhatDoesNotCount) {
    CheckBuilder check;
    check.line("paddle", 2);
    check.line("oar", 1, false, {"paddle"});
    check.see("K9", "paddle");
    check.see("K1", "paddle").record.item.state = ItemState::Unserviceable;
    check.see("K5", "paddle");
    const auto answer = check.answer();
    EXPECT_EQ(briefOf(answer.lines[0]), "K5+ K9+ K1- ");
    EXPECT_EQ(briefOf(answer.lines[1]), "") << "it stands under the first line that takes its type";
}

TEST(LaunchCheck, doesNotListWhatCountsButIsNotUsed) {
    CheckBuilder check;
    check.line("paddle");
    check.see("K1", "paddle");
    check.see("K2", "paddle");
    const auto answer = check.answer();
    EXPECT_EQ(briefOf(answer.lines[0]), "K1+ ");
    EXPECT_THAT(briefOf(answer), ElementsAre("remark extra paddle K2"));
}

TEST(LaunchCheck, gathersTheOpenLogOfTheBoatAndOfWhatItUses) {
    CheckBuilder check;
    check.line("paddle");
    const LogEntry boat{"e1", "Heron", {}, day("2026-03-01"), "soft floor", Severity::Stop, "", {}, ""};
    const LogEntry used{"e2", "", itemNamed("K1"), day("2026-03-02"), "blade chipped", Severity::Remark, "",
                        {},   ""};
    const LogEntry unused{"e3", "", itemNamed("K2"), day("2026-03-03"), "grip loose", Severity::Stop, "",
                          {},   ""};
    check.input.logOpen = {boat};
    check.see("K1", "paddle").logOpen = {used};
    check.see("K2", "paddle").logOpen = {unused};
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer),
                ElementsAre("stop log-open", "remark log-open paddle K1", "remark extra paddle K2"));
    ASSERT_EQ(answer.logOpen.size(), 2u);
    EXPECT_EQ(answer.logOpen[0].id, "e1");
    EXPECT_EQ(answer.logOpen[1].id, "e2");
    EXPECT_EQ(answer.findings[0].text, "soft floor");
    EXPECT_EQ(answer.findings[0].since, day("2026-03-01"));
    EXPECT_EQ(answer.findings[0].boat, "Heron");
    EXPECT_EQ(answer.findings[1].entry, "e2");
}

TEST(LaunchCheck, doesNotDependOnTheOrderOfScanning) {
    CheckBuilder check;
    check.line("paddle", 2, true, {"oar"});
    check.line("oar", 1, false);
    for (const char* code : {"K1", "K2", "K3"})
        check.see(code, "oar");
    check.see("K4", "paddle").record.item.state = ItemState::Missing;
    check.see("K5", "radio");
    const auto before = briefOf(check.answer());
    std::reverse(check.input.seen.begin(), check.input.seen.end());
    EXPECT_EQ(briefOf(check.answer()), before);
}

} // namespace
} // namespace core
