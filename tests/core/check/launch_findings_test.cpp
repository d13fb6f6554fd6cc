#include "core/check/boat_check.h"

#include "tests/core/check/check_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// Design: rules 3, the table of findings, row by row.

/// One required line of two flares that expire, are serviced yearly, and one good flare: one place is left.
CheckBuilder shortOfOneFlare() {
    CheckBuilder check;
    check.type("flare").rules = {yearlyService(), expiry()};
    check.line("flare", 2);
    SeenItem& good = check.see("K0", "flare");
    good.record.item.stamped = known("2027");
    good.record.item.registered = known("2025-06-01");
    return check;
}

SeenItem& seeFlare(CheckBuilder& check, const char* code) {
    SeenItem& seen = check.see(code, "flare");
    seen.record.item.stamped = known("2027");
    seen.record.item.registered = known("2025-06-01");
    return seen;
}

TEST(LaunchFindings, itemOfATypeThatNoLineTakesIsExtraWhateverItsState) {
    CheckBuilder check;
    check.line("paddle");
    check.see("K1", "paddle");
    for (ItemState state : {ItemState::Serviceable, ItemState::Unserviceable, ItemState::WrittenOff}) {
        check.see("K2", "kettle").record.item.state = state;
        EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark extra kettle K2"));
        check.input.seen.pop_back();
    }
    check.see("K2", "kettle").record.item.boat = "Teal";
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark extra kettle K2"));
    check.input.seen.back().wasMissing = true;
    EXPECT_THAT(briefOf(check.answer()),
                ElementsAre("remark extra kettle K2", "remark was-missing kettle K2"));
}

TEST(LaunchFindings, whatDoesNotCountStopsWhileItsLineIsShortAndIsRemarkedOtherwise) {
    auto check = shortOfOneFlare();
    seeFlare(check, "K1").record.item.state = ItemState::Unserviceable;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop missing flare", "stop unserviceable flare K1"));
    seeFlare(check, "K2");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark unserviceable flare K1"));
    check.input.lines[0].required = false;
    check.input.seen.pop_back();
    check.somethingIsAsked();
    EXPECT_THAT(briefOf(check.answer()),
                ElementsAre("remark missing flare", "remark unserviceable flare K1"));
}

TEST(LaunchFindings, aShortRequiredLineThatTakesItAsSubstituteMakesItAStop) {
    CheckBuilder check;
    check.line("oar", 1, false);
    check.line("paddle", 1, true, {"oar"});
    check.see("K1", "oar").record.item.state = ItemState::Unserviceable;
    EXPECT_THAT(briefOf(check.answer()),
                ElementsAre("stop unserviceable oar K1", "stop missing paddle", "remark missing oar"));
}

TEST(LaunchFindings, saysTheFirstReasonThatApplies) {
    auto check = shortOfOneFlare();
    Item& item = seeFlare(check, "K1").record.item;
    const auto reason = [&] { return briefOf(check.answer())[1]; };
    item.stamped = known("2026-02");
    item.registered = known("2025-03-13");
    item.state = ItemState::WrittenOff;
    EXPECT_EQ(reason(), "stop written-off flare K1");
    item.state = ItemState::Unserviceable;
    EXPECT_EQ(reason(), "stop unserviceable flare K1");
    item.state = ItemState::Serviceable;
    EXPECT_EQ(reason(), "stop out-of-date flare K1");
    item.registered = known("2020-03-13");
    EXPECT_EQ(reason(), "stop out-of-date flare K1") << "though the service has been due for longer";
    item.stamped = known("2027");
    EXPECT_EQ(reason(), "stop service-overdue flare K1");
    check.type("flare").rules[0].undated = Undated::Stop;
    item.registered.reset();
    EXPECT_EQ(reason(), "stop undated flare K1");
    check.type("flare").rules[1].undated = Undated::Stop;
    item.stamped.reset();
    item.registered = known("2025-03-13");
    EXPECT_EQ(reason(), "stop service-overdue flare K1") << "a day that is known before one that is not";
}

TEST(LaunchFindings, namesTheRuleTheDayAndTheSource) {
    auto check = shortOfOneFlare();
    check.type("flare").rules[1].source = "printed on the flare";
    seeFlare(check, "K1").record.item.stamped = known("2026-02");
    const auto answer = check.answer();
    const Finding* finding = findingOf(answer, FindingKind::OutOfDate);
    ASSERT_TRUE(finding && finding->due);
    EXPECT_EQ(finding->due->rule.name, "expiry");
    EXPECT_EQ(finding->due->rule.source, "printed on the flare");
    EXPECT_EQ(finding->due->anchorDay, day("2026-02-28"));
    EXPECT_EQ(finding->since, day("2026-02-28"));
}

TEST(LaunchFindings, saysSinceWhenAndWhyAnItemIsOutOfUse) {
    auto check = shortOfOneFlare();
    Item& item = seeFlare(check, "K1").record.item;
    item.since = day("2026-02-01");
    item.why = "damaged";
    item.size = "red";
    for (ItemState state : {ItemState::WrittenOff, ItemState::Unserviceable}) {
        item.state = state;
        const Finding finding = check.answer().findings[1];
        EXPECT_EQ(finding.since, day("2026-02-01"));
        EXPECT_EQ(finding.text, "damaged");
        EXPECT_EQ(finding.size, "red");
    }
    item.state = ItemState::Serviceable;
    item.stamped = known("2026-02");
    EXPECT_EQ(check.answer().findings[1].since, day("2026-02-28"))
        << "the day it was due, not that of its state";
    EXPECT_EQ(check.answer().findings[1].text, "");
}

TEST(LaunchFindings, callsAllRulesThatEndALifeOutOfDateAndTheOthersOverdue) {
    const auto kindFor = [](RuleKind kind) {
        CheckBuilder check;
        LifeRule rule;
        rule.kind = kind;
        rule.n = 1;
        rule.event = "impact";
        check.type("flare").rules = {rule};
        check.line("flare");
        SeenItem& seen = check.see("K1", "flare");
        seen.record.item.made = seen.record.item.firstUse = seen.record.item.stamped = known("2020");
        seen.record.use = {{day("2026-01-01"), 2, 2}};
        seen.record.happenings = {{"impact", day("2026-01-01"), {}}};
        const auto answer = check.answer();
        return answer.findings.size() == 2 ? answer.findings[1].kind : FindingKind::Missing;
    };
    for (RuleKind kind :
         {RuleKind::Stamped, RuleKind::FromMade, RuleKind::FromFirstUse, RuleKind::YearEndFromMade})
        EXPECT_EQ(kindFor(kind), FindingKind::OutOfDate) << static_cast<int>(kind);
    for (RuleKind kind : {RuleKind::InspectEvery, RuleKind::ServiceEvery, RuleKind::EveryHours,
                          RuleKind::EveryUses, RuleKind::AfterEvent})
        EXPECT_EQ(kindFor(kind), FindingKind::ServiceOverdue) << static_cast<int>(kind);
}

TEST(LaunchFindings, ofTwoPassedRulesSpeaksOfTheOneDueLongest) {
    CheckBuilder check;
    check.type("flare").rules = {expiry(), expiry()};
    check.type("flare").rules[1].kind = RuleKind::FromMade;
    check.type("flare").rules[1].name = "age";
    check.line("flare");
    SeenItem& seen = check.see("K1", "flare");
    seen.record.item.stamped = known("2026-02");
    seen.record.item.made = known("2026-01");
    EXPECT_EQ(findingOf(check.answer(), FindingKind::OutOfDate)->due->rule.name, "age");
    check.input.seen[0].record.item.stamped = known("2025");
    EXPECT_EQ(findingOf(check.answer(), FindingKind::OutOfDate)->due->rule.name, "expiry");
}

TEST(LaunchFindings, anUndatedItemStopsOnlyWhereTheRuleSaysSo) {
    auto check = shortOfOneFlare();
    seeFlare(check, "K1").record.item.stamped.reset();
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark undated flare K1"));
    check.type("flare").rules[1].undated = Undated::Stop;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop missing flare", "stop undated flare K1"));
    check.type("flare").rules[1].undated = Undated::Ignore;
    EXPECT_THAT(check.answer().findings, IsEmpty());
}

TEST(LaunchFindings, countsWithARemarkWhatIsPassedAsARemarkOrWithinTolerance) {
    auto check = shortOfOneFlare();
    seeFlare(check, "K1").record.item.stamped = known("2026-03-10");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop missing flare", "stop out-of-date flare K1"));
    check.type("flare").rules[1].tolerance.kind = Tolerance::Kind::EndOfMonth;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark out-of-date flare K1"));
    check.type("flare").rules[1].tolerance.kind = Tolerance::Kind::None;
    check.type("flare").rules[1].severity = Severity::Remark;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark out-of-date flare K1"));
}

// Of several rules that are passed as a remark the one is told that would be told of stop rules: out of date,
// then overdue, then undated, whatever their names (docs/rules.md section 3).
TEST(LaunchFindings, remarksOnlyTheMostUrgentRuleThatIsPassedAsARemark) {
    auto check = shortOfOneFlare();
    for (LifeRule& rule : check.type("flare").rules)
        rule.severity = Severity::Remark;
    Item& item = seeFlare(check, "K1").record.item;
    item.stamped = known("2026-02");
    item.registered = known("2025-01-01");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark out-of-date flare K1"));
    item.stamped.reset();
    check.type("flare").rules[1].undated = Undated::Remark;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark service-overdue flare K1"));
}

TEST(LaunchFindings, remarksOncePerItemWhatIsDueSoonTheEarliest) {
    auto check = shortOfOneFlare();
    Item& item = seeFlare(check, "K1").record.item;
    item.stamped = known("2026-04-13");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark due-soon flare K1"));
    item.registered = known("2025-04-01");
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("remark due-soon flare K1"));
    EXPECT_EQ(answer.findings[0].due->rule.name, "service");
    EXPECT_EQ(answer.findings[0].since, std::nullopt) << "it is not due yet";
    item.registered = known("2025-06-01");
    item.stamped = known("2026-04-14");
    EXPECT_THAT(check.answer().findings, IsEmpty());
}

TEST(LaunchFindings, anItemOfAnotherBoatCountsWithARemark) {
    CheckBuilder check;
    check.line("paddle");
    check.see("K1", "paddle").record.item.boat = "Teal";
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("remark other-boat paddle K1"));
    EXPECT_EQ(answer.findings[0].boat, "Teal");
    EXPECT_EQ(answer.score.ownBoat, 0);
}

TEST(LaunchFindings, anItemOfAnotherBoatThatDoesNotCountIsNotSaidToBe) {
    CheckBuilder check;
    check.line("paddle");
    check.see("K1", "paddle").record.item.boat = "Teal";
    check.input.seen[0].record.item.state = ItemState::Unserviceable;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop missing paddle", "stop unserviceable paddle K1"));
}

TEST(LaunchFindings, aMissingItemThatIsSeenIsFoundAndCounts) {
    CheckBuilder check;
    check.line("paddle");
    check.see("K1", "paddle").record.item.state = ItemState::Missing;
    check.input.seen[0].record.item.since = day("2026-01-05");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark was-missing paddle K1"));
    EXPECT_EQ(check.answer().findings[0].since, day("2026-01-05"));
    check.input.seen[0].record.item.state = ItemState::Unserviceable; // what it was before it went missing
    check.input.seen[0].wasMissing = true;
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop missing paddle", "stop unserviceable paddle K1",
                                                     "remark was-missing paddle K1"));
}

TEST(LaunchFindings, aLogEntryOnAUsedItemIsAFindingOfItsSeverity) {
    CheckBuilder check;
    check.line("paddle");
    check.see("K1", "paddle").logOpen = {
        {"e1", "", itemNamed("K1"), day("2026-03-02"), "blade chipped", Severity::Stop, "", {}, ""},
        {"e2", "", itemNamed("K1"), day("2026-03-03"), "sticker gone", Severity::Remark, "", {}, ""}};
    const auto answer = check.answer();
    EXPECT_THAT(briefOf(answer), ElementsAre("stop log-open paddle K1", "remark log-open paddle K1"));
    EXPECT_EQ(answer.outcome, CheckOutcome::Incomplete);
}

TEST(LaunchFindings, anUnknownTagIsRemarkedOnceForEachCode) {
    CheckBuilder check;
    check.somethingIsAsked();
    check.input.unknownTags = {"K9", "K3", "K9"};
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("remark unknown-tag K3", "remark unknown-tag K9"));
}

TEST(LaunchFindings, readStopsFirstThenTheManifestsOrderThenCodes) {
    CheckBuilder check;
    check.line("radio", 1, false);
    check.line("paddle", 2);
    check.line("knife", 1);
    check.see("K5", "kettle");
    check.see("K4", "paddle").record.item.state = ItemState::WrittenOff;
    check.see("K3", "paddle").record.item.state = ItemState::Unserviceable;
    check.input.unknownTags = {"K1"};
    check.point("bungs", PointKind::Look, std::nullopt);
    check.point("wash", PointKind::Look, std::nullopt, {}, {}, false);
    check.input.logOpen = {{"e", "Heron", {}, day("2026-03-01"), "scratch", Severity::Remark, "", {}, ""}};
    EXPECT_THAT(briefOf(check.answer()),
                ElementsAre("stop missing paddle x2", "stop unserviceable paddle K3",
                            "stop written-off paddle K4", "stop missing knife", "stop point-open",
                            "remark missing radio", "remark unknown-tag K1", "remark extra kettle K5",
                            "remark log-open", "remark point-open"));
}

// docs/rules.md section 3: where nothing is asked, nothing is complete.
TEST(LaunchFindings, aBoatOfWhichNothingIsAskedIsNeverComplete) {
    CheckBuilder check;
    check.input.boatClass = "rhib";
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop no-manifest"));
    EXPECT_EQ(check.answer().findings[0].boat, "Heron");
    EXPECT_EQ(check.answer().findings[0].text, "rhib");
    check.line("anchor", 1, false);
    check.line("knife", 0);
    check.see("K1", "anchor");
    EXPECT_THAT(briefOf(check.answer()), ElementsAre("stop no-manifest")) << "neither is asked for";
    EXPECT_EQ(check.answer().outcome, CheckOutcome::Incomplete);
    check.somethingIsAsked();
    EXPECT_EQ(check.answer().outcome, CheckOutcome::Complete);
    CheckBuilder back;
    back.input.phase = Phase::Return;
    EXPECT_EQ(back.answer().outcome, CheckOutcome::Complete) << "a return asks for what went out";
}

TEST(LaunchFindings, decideTheOutcome) {
    CheckBuilder check;
    check.somethingIsAsked();
    EXPECT_EQ(check.answer().outcome, CheckOutcome::Complete);
    check.input.unknownTags = {"K1"};
    EXPECT_EQ(check.answer().outcome, CheckOutcome::CompleteWithRemarks);
    check.line("paddle");
    EXPECT_EQ(check.answer().outcome, CheckOutcome::Incomplete);
}

TEST(LaunchFindings, whatDoesNotCountStandsUnderTheFirstLineThatAsksForItsType) {
    CheckBuilder check;
    check.line("flare", 1);
    check.line("rocket", 1, true, {"flare"});
    seeFlare(check, "K1").record.item.state = ItemState::Unserviceable;
    auto answer = check.answer();
    EXPECT_EQ(briefOf(answer.lines[0]), "K1- ");
    EXPECT_EQ(briefOf(answer.lines[1]), "");
    check.input.lines[0].quantity = 0; // taken away by the boat's own manifest
    answer = check.answer();
    EXPECT_EQ(briefOf(answer.lines[0]), "");
    EXPECT_EQ(briefOf(answer.lines[1]), "K1- ");
}

TEST(LaunchFindings, namesEachPersonWhoIsLeftWithoutAndNobodyElse) {
    CheckBuilder check;
    check.sizedType("jacket");
    check.line("jacket", 2);
    check.name("Ann", 70);
    check.name("Ben", 95);
    const auto both = check.answer();
    const Finding* missing = findingOf(both, FindingKind::Missing);
    ASSERT_NE(missing, nullptr);
    EXPECT_THAT(missing->people, ElementsAre("Ann", "Ben"));
    check.seeSized("K1", "jacket", "M");
    const auto one = check.answer();
    missing = findingOf(one, FindingKind::Missing);
    ASSERT_NE(missing, nullptr);
    EXPECT_THAT(missing->people, ElementsAre("Ben"));
}

TEST(LaunchFindings, aJacketThatIsOverMakesNoShortageOfOtherKitAMatterOfFit) {
    CheckBuilder check;
    check.sizedType("jacket");
    check.line("jacket", 1);
    check.line("knife", 1);
    check.name("Ann", 70);
    check.seeSized("K1", "jacket", "M");
    check.seeSized("K2", "jacket", "L");
    const auto answer = check.answer();
    EXPECT_NE(findingOf(answer, FindingKind::Missing), nullptr);
    EXPECT_EQ(findingOf(answer, FindingKind::NoFit), nullptr);
    check.name("Ben", 40); // for whom both are too big
    check.input.lines[0].quantity = 2;
    EXPECT_NE(findingOf(check.answer(), FindingKind::NoFit), nullptr);
}

TEST(LaunchFindings, aLineThatAsksForNoneAsksForNoFitEither) {
    CheckBuilder check;
    check.sizedType("jacket");
    check.line("jacket", 0);
    check.somethingIsAsked();
    EXPECT_THAT(briefOf(check.answer()), IsEmpty());
    check.input.lines[0].quantity = 1;
    EXPECT_NE(findingOf(check.answer(), FindingKind::FitNotChecked), nullptr);
}

} // namespace
} // namespace core
