#include "core/answers/service_round.h"

#include "tests/core/answers/answers_support.h"
#include "tests/core/upkeep/rule_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using Refusal = ServiceRound::Refusal;

// docs/rules.md, "What the code settles": a service round; a failed record.

LifeRule inspection(const std::string& name, const std::string& part = {}) {
    LifeRule rule = ruleOf(RuleKind::InspectEvery, 12);
    rule.name = name;
    rule.part = part;
    return rule;
}

/// A round on 14 March 2026 over tow lines and jackets, both looked at yearly; a jacket's cylinder is
/// weighed.
struct RoundBuilder {
    ServiceRoundInput input{.order = {.rule = "yearly look", .day = day("2026-03-14"), .by = "Bram Oke"},
                            .moment = {instant("2026-03-14T12:00:00Z"), day("2026-03-14")}};

    RoundBuilder() {
        type("tow line").rules = {inspection("yearly look")};
        type("jacket").rules = {inspection("weigh", "cylinder"), inspection("yearly look")};
    }
    KitType& type(const std::string& name) {
        input.kitTypes[name].name = name;
        return input.kitTypes[name];
    }
    /// Registered, not scanned.
    ItemBeforeRound& item(const std::string& code, const std::string& kitType = "tow line") {
        ItemBeforeRound& item = input.items[code];
        item.record.item = itemOf(code, kitType);
        return item;
    }
    void scan(const std::string& text, const std::optional<std::string>& code) {
        input.order.scans.push_back(text);
        input.codes.push_back(code);
    }
    void scan(const std::string& code) { scan(code, code); }
    ItemBeforeRound& scanned(const std::string& code, const std::string& kitType = "tow line") {
        scan(code);
        return item(code, kitType);
    }
    ServiceRoundAnswer answer() const {
        ServiceRoundInput asRead = input;
        for (auto& [code, before] : asRead.items)
            if (before.record.item.state != ItemState::Missing) before.apart.state = before.record.item.state;
        return serviceRoundOf(asRead);
    }
};

ServiceRecord recordOf(const std::string& rule, const std::string& on, bool passed = true,
                       const std::string& part = {}) {
    return {part, rule, day(on), std::nullopt, passed};
}

std::vector<std::string> refusals(const ServiceRoundAnswer& answer) {
    std::vector<std::string> texts;
    for (const ServiceRound::Refused& each : answer.round.refused)
        texts.push_back(std::string(nameOf(each.why)) + ' ' + each.item.id + ' ' + each.kitType);
    return texts;
}

std::vector<std::string> recorded(const ServiceRoundAnswer& answer) {
    std::vector<std::string> texts;
    for (const ServiceRound::Recorded& each : answer.round.recorded)
        texts.push_back(each.item.id + ' ' + each.kitType + (each.part.empty() ? "" : ' ' + each.part));
    return texts;
}

TEST(RoundRules, aRecordIsWrittenForEachItemThatTheRuleFits) {
    RoundBuilder round;
    round.scanned("K2");
    round.scanned("K1", "jacket");
    const auto answer = round.answer();
    EXPECT_THAT(recorded(answer), ElementsAre("K2 tow line", "K1 jacket")) << "in the order of the scans";
    EXPECT_THAT(refusals(answer), IsEmpty());
    ASSERT_EQ(answer.entries.size(), 2u);
    EXPECT_EQ(answer.entries[0].item, "K2");
    ASSERT_EQ(answer.entries[0].rules.size(), 1u);
    EXPECT_EQ(answer.entries[0].rules[0].name, "yearly look");
    EXPECT_FALSE(answer.entries[0].state);
    EXPECT_EQ(answer.round.recorded[0].nextDue, day("2027-03-14"));
    EXPECT_FALSE(answer.round.recorded[0].released);
}

TEST(RoundRules, anItemIsTakenOnceHoweverOftenItIsScanned) {
    RoundBuilder round;
    round.scanned("K1");
    round.scan("k 1", "K1");
    round.scan("K9");
    round.scan("k9", "K9");
    EXPECT_THAT(recorded(round.answer()), ElementsAre("K1 tow line"));
    EXPECT_THAT(refusals(round.answer()), ElementsAre("unknown-tag K9 "));
}

TEST(RoundRules, whatIsNoTagIsToldOnceAsItCame) {
    RoundBuilder round;
    round.scan("soup", {});
    round.scanned("K1");
    round.scan("salad", {});
    round.scan("soup", {});
    EXPECT_THAT(round.answer().round.unread, ElementsAre("soup", "salad"));
    EXPECT_THAT(recorded(round.answer()), ElementsAre("K1 tow line"));
}

TEST(RoundRules, namesAreComparedWithoutCase) {
    RoundBuilder round;
    round.input.order.rule = "YEARLY look";
    round.scanned("K1");
    EXPECT_THAT(recorded(round.answer()), ElementsAre("K1 tow line"));
    round.input.order.rule = "yearly looks";
    EXPECT_THAT(refusals(round.answer()), ElementsAre("no-such-rule K1 tow line"));
}

TEST(RoundRules, aPartsRuleFitsWhatHasThePart) {
    RoundBuilder round;
    round.input.order.rule = "weigh";
    round.scanned("K1", "jacket").record.parts = {Part{.name = "Cylinder"}};
    round.scanned("K2", "jacket").record.parts = {Part{.name = "light"}};
    round.scanned("K3", "jacket");
    EXPECT_THAT(recorded(round.answer()), ElementsAre("K1 jacket cylinder"));
    EXPECT_THAT(refusals(round.answer()), ElementsAre("no-such-rule K2 jacket", "no-such-rule K3 jacket"));
}

TEST(RoundRules, aRuleOfItemAndPartIsRecordedForBoth) {
    RoundBuilder round;
    round.type("jacket").rules = {inspection("yearly look", "cylinder"), inspection("yearly look")};
    round.type("jacket").rules[0].n = 6;
    round.scanned("K1", "jacket").record.parts = {Part{.name = "cylinder"}};
    const auto answer = round.answer();
    EXPECT_THAT(recorded(answer), ElementsAre("K1 jacket cylinder", "K1 jacket"));
    EXPECT_EQ(answer.round.recorded[0].nextDue, day("2026-09-14"));
    EXPECT_EQ(answer.round.recorded[1].nextDue, day("2027-03-14"));
    EXPECT_EQ(answer.entries.at(0).rules.size(), 2u);
}

TEST(RoundRules, kitOfATypeThatTheRegisterLostHasNoRule) {
    RoundBuilder round;
    round.scanned("K1", "bell");
    EXPECT_THAT(refusals(round.answer()), ElementsAre("no-such-rule K1 bell"));
}

TEST(RoundRules, whatIsWrittenOffIsRefusedWhateverTheRule) {
    RoundBuilder round;
    round.scanned("K1").record.item.state = ItemState::WrittenOff;
    round.scanned("K2", "bell").record.item.state = ItemState::WrittenOff;
    round.scanned("K3").record.item.state = ItemState::Missing;
    EXPECT_THAT(refusals(round.answer()), ElementsAre("written-off K1 tow line", "written-off K2 bell"));
    EXPECT_THAT(recorded(round.answer()), ElementsAre("K3 tow line"));
}

TEST(RoundRules, theSameRecordOfThatDayIsNotWrittenAgain) {
    RoundBuilder round;
    auto& services = round.scanned("K1").record.services;
    services = {recordOf("Yearly Look", "2026-03-14")};
    EXPECT_THAT(refusals(round.answer()), ElementsAre("done-already K1 tow line"));
    EXPECT_THAT(round.answer().entries, IsEmpty());
    for (const auto& other :
         {recordOf("yearly look", "2026-03-13"), recordOf("yearly look", "2026-03-14", false),
          recordOf("hone", "2026-03-14"), recordOf("yearly look", "2026-03-14", true, "cylinder")}) {
        services = {other};
        EXPECT_THAT(recorded(round.answer()), ElementsAre("K1 tow line"));
    }
}

TEST(RoundRules, ofTwoRulesOnlyTheOneNotDoneIsWritten) {
    RoundBuilder round;
    round.type("jacket").rules = {inspection("yearly look", "cylinder"), inspection("yearly look")};
    auto& record = round.scanned("K1", "jacket").record;
    record.parts = {Part{.name = "cylinder"}};
    record.services = {recordOf("yearly look", "2026-03-14", true, "cylinder")};
    EXPECT_THAT(recorded(round.answer()), ElementsAre("K1 jacket"));
}

TEST(RoundRules, theTimeIsKnownOfTodayOnly) {
    RoundBuilder round;
    round.scanned("K1");
    EXPECT_EQ(round.answer().entries[0].at, instant("2026-03-14T12:00:00Z"));
    round.input.order.day = day("2026-03-13");
    EXPECT_EQ(round.answer().entries[0].at, std::nullopt);
    EXPECT_EQ(round.answer().round.recorded[0].nextDue, day("2027-03-13"));
}

TEST(RoundRules, theNextDueDayIsTheRulesOwn) {
    RoundBuilder round;
    LifeRule hours = ruleOf(RuleKind::EveryHours, 50);
    hours.name = "yearly look";
    round.type("tow line").rules = {inspection("hone"), hours};
    round.scanned("K1");
    EXPECT_EQ(round.answer().round.recorded.at(0).nextDue, std::nullopt) << "hours have no day";
    round.type("tow line").rules = {inspection("yearly look"), inspection("hone")};
    EXPECT_EQ(round.answer().round.recorded.at(0).nextDue, day("2027-03-14"));
}

TEST(RoundRules, aFailedRecordLeavesTheNextDayToTheLastThatPassed) {
    RoundBuilder round;
    round.input.order.passed = false;
    round.scanned("K1").record.services = {recordOf("yearly look", "2025-06-01")};
    EXPECT_EQ(round.answer().round.recorded[0].nextDue, day("2026-06-01"));
    round.input.order.passed = true;
    EXPECT_EQ(round.answer().round.recorded[0].nextDue, day("2027-03-14"));
}

TEST(RoundRules, aFailedRecordWithdrawsWhatIsServiceable) {
    RoundBuilder round;
    round.input.order.passed = false;
    Item& item = round.scanned("K1").record.item;
    EXPECT_EQ(round.answer().entries[0].state->state, ItemState::Unserviceable);
    EXPECT_FALSE(round.answer().round.recorded[0].released);
    item.state = ItemState::Unserviceable;
    EXPECT_FALSE(round.answer().entries[0].state) << "it is withdrawn already";
    item.state = ItemState::Serviceable;
    round.input.order.passed = true;
    EXPECT_FALSE(round.answer().entries[0].state);
}

/// An unserviceable tow line whose yearly look failed on the 1st.
ItemBeforeRound& failedLine(RoundBuilder& round) {
    ItemBeforeRound& line = round.scanned("K1");
    line.record.item.state = ItemState::Unserviceable;
    line.record.services = {recordOf("yearly look", "2026-03-01", false)};
    line.apart.byFailedRecord = true;
    return line;
}

TEST(RoundRules, aPassedRecordReleasesWhatAFailedOneHeld) {
    RoundBuilder round;
    ItemBeforeRound& line = failedLine(round);
    const auto answer = round.answer();
    EXPECT_EQ(answer.entries[0].state->state, ItemState::Serviceable);
    EXPECT_TRUE(answer.round.recorded[0].released);
    line.record.item.state = ItemState::Serviceable; // somebody released it
    EXPECT_FALSE(round.answer().entries[0].state);
    EXPECT_FALSE(round.answer().round.recorded[0].released);
}

TEST(RoundRules, aPassedRecordDoesNotReleaseWhatNoRecordHeld) {
    RoundBuilder round;
    ItemBeforeRound& line = failedLine(round);
    line.record.services.clear();
    line.apart.byFailedRecord = false; // the crew withdrew it
    EXPECT_FALSE(round.answer().entries[0].state);
}

TEST(RoundRules, aPassedRecordDoesNotReleaseWhatAnotherFailedRecordHolds) {
    RoundBuilder round;
    round.type("tow line").rules.push_back(inspection("pull test"));
    ItemBeforeRound& line = failedLine(round);
    line.record.services.push_back(recordOf("pull test", "2026-03-02", false));
    EXPECT_FALSE(round.answer().entries[0].state);
    line.record.services.back().passed = true;
    EXPECT_EQ(round.answer().entries[0].state->state, ItemState::Serviceable);
}

// docs/rules.md, "a service round": it may lift what a failed record did, nothing else.
TEST(RoundRules, aPassedRecordDoesNotReleaseWhatWasWithdrawnBeforeItFailed) {
    RoundBuilder round;
    ItemBeforeRound& line = failedLine(round);
    line.apart.byFailedRecord = false;
    EXPECT_FALSE(round.answer().entries[0].state);
    EXPECT_FALSE(round.answer().round.recorded[0].released);
}

// docs/rules.md section 6: seen anywhere later, by any check, it is found.
TEST(RoundRules, whatIsMissingAndLiesOnTheBenchIsFound) {
    RoundBuilder round;
    ItemBeforeRound& line = round.scanned("K1");
    line.record.item.state = ItemState::Missing;
    EXPECT_THAT(recorded(round.answer()), ElementsAre("K1 tow line"));
    EXPECT_FALSE(round.answer().entries[0].state) << "the record itself ends that it is missing";
    EXPECT_FALSE(round.answer().round.recorded[0].released) << "nothing held it";
    line.record.services = {recordOf("yearly look", "2026-03-14")};
    EXPECT_THAT(recorded(round.answer()), ElementsAre("K1 tow line")) << "the record again, for it is here";
    line.apart = {ItemState::WrittenOff, day("2026-02-01"), "lost", false};
    EXPECT_EQ(round.answer().round.refused[0].why, Refusal::WrittenOff);
}

TEST(RoundRules, whatIsMissingAndFailsOnTheBenchIsWithdrawn) {
    RoundBuilder round;
    round.input.order.passed = false;
    ItemBeforeRound& line = round.scanned("K1");
    line.record.item.state = ItemState::Missing;
    EXPECT_EQ(round.answer().entries[0].state->state, ItemState::Unserviceable);
    EXPECT_TRUE(round.answer().entries[0].state->byFailedRecord);
    line.apart = {ItemState::Unserviceable, day("2026-02-01"), "damaged", false};
    EXPECT_FALSE(round.answer().entries[0].state) << "it was withdrawn before";
}

// docs/rules.md, "a failed record": only a passed record of the same rule, or a release, ends that.
TEST(RoundRules, aFailedRecordThatWasPutRightBeforeItWasToldHoldsUntilItsRulePasses) {
    RoundBuilder round;
    ItemBeforeRound& line = failedLine(round);
    line.apart.rule = "yearly look";
    line.apart.since = day("2026-03-01");
    line.record.services.push_back(recordOf("yearly look", "2026-03-10"));
    EXPECT_EQ(round.answer().entries[0].state->state, ItemState::Serviceable);
    line.apart.rule = "pull test";
    EXPECT_FALSE(round.answer().entries[0].state) << "another rule's";
    line.apart.rule = "yearly look";
    line.apart.since = day("2026-03-15");
    EXPECT_FALSE(round.answer().entries[0].state) << "it passed before it failed";
}

// docs/rules.md, 2: a record settles an event of an earlier instant.
TEST(RoundRules, whatHappenedAgainOnThatDayIsRecordedAgain) {
    RoundBuilder round;
    LifeRule knock = ruleOf(RuleKind::AfterEvent, 0);
    knock.name = "yearly look";
    knock.event = "impact";
    round.type("tow line").rules = {knock};
    auto& record = round.scanned("K1").record;
    record.services = {recordOf("yearly look", "2026-03-14")};
    record.services[0].at = instant("2026-03-14T10:00:00Z");
    record.happenings = {
        {.event = "impact", .day = day("2026-03-14"), .at = instant("2026-03-14T09:00:00Z")}};
    EXPECT_THAT(refusals(round.answer()), ElementsAre("done-already K1 tow line"));
    record.happenings[0].at = instant("2026-03-14T11:00:00Z");
    EXPECT_THAT(recorded(round.answer()), ElementsAre("K1 tow line"));
    round.input.order.passed = false;
    record.services[0].passed = false;
    EXPECT_THAT(refusals(round.answer()), ElementsAre("done-already K1 tow line")) << "it settles nothing";
}

TEST(RoundRules, anOpenLogEntryThatStopsHoldsTheItem) {
    RoundBuilder round;
    ItemBeforeRound& line = failedLine(round);
    line.logOpen = {{"e1", "", itemNamed("K1"), day("2026-03-01"), "frayed", Severity::Stop, "", {}, ""}};
    EXPECT_FALSE(round.answer().entries[0].state);
    line.logOpen[0].severity = Severity::Remark;
    EXPECT_EQ(round.answer().entries[0].state->state, ItemState::Serviceable);
}

// docs/register-csv.md, services: a row is known by item, part, rule and day.
TEST(RoundRules, aRecordTakesThePlaceOfAnotherOfThatDay) {
    RoundBuilder round;
    ItemBeforeRound& line = failedLine(round);
    line.record.services[0].day = day("2026-03-14"); // failed this morning, put right by noon
    EXPECT_EQ(round.answer().entries[0].state->state, ItemState::Serviceable);
    line.record.services.push_back(recordOf("yearly look", "2026-03-13", false, "hook"));
    EXPECT_FALSE(round.answer().entries[0].state) << "the hook's record is another";
}

TEST(RoundRules, namesOfRulesAreTheClubs) {
    RoundBuilder round;
    EXPECT_TRUE(isRuleOfClub("Weigh", round.input.kitTypes));
    EXPECT_TRUE(isRuleOfClub("yearly look", round.input.kitTypes));
    EXPECT_FALSE(isRuleOfClub("polish", round.input.kitTypes));
    EXPECT_FALSE(isRuleOfClub("weigh", {}));
}

TEST(RoundRules, refusalsHaveNames) { // docs/command-line.md, `service`
    EXPECT_STREQ(nameOf(Refusal::UnknownTag), "unknown-tag");
    EXPECT_STREQ(nameOf(Refusal::NoSuchRule), "no-such-rule");
    EXPECT_STREQ(nameOf(Refusal::WrittenOff), "written-off");
    EXPECT_STREQ(nameOf(Refusal::DoneAlready), "done-already");
}

} // namespace
} // namespace core
