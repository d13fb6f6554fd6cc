#include "core/answers/board.h"

#include "tests/core/answers/answers_support.h"
#include "tests/core/check/check_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;
using Kind = BoatCondition::Kind;

// docs/rules.md section 4 (outcome, urgent) and "What the code settles": kit ready.

SignedCheck signedCheck(Phase phase) {
    return {.check = "c1",
            .by = "Odalys Finch",
            .at = instant("2026-03-14T10:00:00Z"),
            .answer = {.phase = phase, .today = day("2026-03-14")}};
}

Finding stop(FindingKind kind, const std::string& code) {
    Finding finding;
    finding.kind = kind;
    finding.severity = Severity::Stop;
    finding.kitType = "paddle";
    finding.item = itemNamed(code);
    return finding;
}

/// The boat Heron, back with one paddle and nothing to say against it. `kit` holds the return's input.
struct BackInShed {
    CheckBuilder kit;
    BoatOnRecord boat{.boat = "Heron", .boatClass = "inflatable", .last = signedCheck(Phase::Return)};
    std::vector<Person> launchPeople;

    BackInShed() {
        kit.line("paddle");
        kit.see("K1", "paddle");
    }
    Item& paddle() { return kit.input.seen[0].record.item; }
    BoatCondition condition() {
        boat.kit = KitThatCameBack{kit.input, launchPeople};
        return conditionOf(boat);
    }
};

/// "became-missing paddle K1 at Tern", the kind as a number where it is about a finding: its brief.
std::vector<std::string> told(const BoatCondition& condition) {
    static const std::map<NotReadyReason::Kind, std::string> kinds{
        {NotReadyReason::Kind::NeverChecked, "never-checked"},
        {NotReadyReason::Kind::Finding, "finding"},
        {NotReadyReason::Kind::BecameDue, "became-due"},
        {NotReadyReason::Kind::BecameMissing, "became-missing"},
        {NotReadyReason::Kind::BecameUnserviceable, "became-unserviceable"},
        {NotReadyReason::Kind::SeenElsewhere, "seen-elsewhere"},
        {NotReadyReason::Kind::LogOpen, "log-open"},
        {NotReadyReason::Kind::LogClosed, "log-closed"},
        {NotReadyReason::Kind::CheckTooOld, "check-too-old"},
    };
    std::vector<std::string> texts;
    for (const NotReadyReason& reason : condition.reasons) {
        std::string text = kinds.at(reason.kind);
        if (!reason.kitType.empty()) text += ' ' + reason.kitType;
        if (!reason.item.id.empty()) text += ' ' + reason.item.id;
        if (reason.elsewhere) text += " at " + reason.elsewhere->name;
        if (reason.finding) text += " (" + briefOf(*reason.finding) + ')';
        texts.push_back(text);
    }
    return texts;
}

TEST(Board, aBoatThatWasNeverCheckedIsNotReady) {
    const auto condition = conditionOf({.boat = "Heron", .boatClass = "inflatable"});
    EXPECT_EQ(condition.boat, "Heron");
    EXPECT_EQ(condition.boatClass, "inflatable");
    EXPECT_EQ(condition.kind, Kind::NotReady);
    EXPECT_FALSE(condition.since);
    EXPECT_THAT(told(condition), ElementsAre("never-checked"));
}

TEST(Board, aBoatIsOutFromItsLaunchToItsReturn) {
    BoatOnRecord boat{.boat = "Heron", .last = signedCheck(Phase::Launch), .urgent = "drill"};
    boat.last->answer.findings = {stop(FindingKind::Missing, "")};
    const auto condition = conditionOf(boat);
    EXPECT_EQ(condition.kind, Kind::Out);
    EXPECT_EQ(condition.since, instant("2026-03-14T10:00:00Z"));
    EXPECT_EQ(condition.by, "Odalys Finch");
    EXPECT_EQ(condition.urgent, "drill");
    EXPECT_THAT(condition.reasons, IsEmpty());
}

TEST(Board, aBoatThatCameBackWholeIsKitReady) {
    BackInShed back;
    back.boat.urgent = "drill";
    const auto condition = back.condition();
    EXPECT_EQ(condition.kind, Kind::KitReady);
    EXPECT_EQ(condition.since, instant("2026-03-14T10:00:00Z"));
    EXPECT_EQ(condition.by, "Odalys Finch");
    EXPECT_THAT(condition.reasons, IsEmpty());
    EXPECT_EQ(condition.urgent, "") << "until the boat is whole again";
}

TEST(Board, theStopsOfTheLastCheckAreTheReasons) {
    BackInShed back;
    back.boat.urgent = "drill";
    Finding remark = stop(FindingKind::Extra, "K9");
    remark.severity = Severity::Remark;
    back.boat.last->answer.findings = {stop(FindingKind::NotReturned, "K5"), remark};
    const auto condition = back.condition();
    EXPECT_EQ(condition.kind, Kind::NotReady);
    EXPECT_THAT(told(condition), ElementsAre("finding paddle K5 (stop not-returned paddle K5)"));
    EXPECT_EQ(condition.urgent, "drill");
}

TEST(Board, remarksOfTheLastCheckAreNoReasons) {
    BackInShed back;
    back.boat.last->answer.findings = {stop(FindingKind::Extra, "K9")};
    EXPECT_EQ(back.condition().kind, Kind::NotReady);
    back.boat.last->answer.findings[0].severity = Severity::Remark;
    EXPECT_EQ(back.condition().kind, Kind::KitReady);
}

TEST(Board, theKitIsAskedOnlyWhereNothingStoppedTheReturn) {
    BackInShed back;
    EXPECT_TRUE(dependsOnKit(back.boat));
    back.boat.last->answer.findings = {stop(FindingKind::NotReturned, "K5")};
    EXPECT_FALSE(dependsOnKit(back.boat));
    back.boat.last = signedCheck(Phase::Launch);
    EXPECT_FALSE(dependsOnKit(back.boat));
    back.boat.last.reset();
    EXPECT_FALSE(dependsOnKit(back.boat));
}

TEST(Board, whatDidNotComeBackAndTurnedUpElsewhereIsToBeBroughtBack) {
    BackInShed back;
    back.boat.last->answer.findings = {stop(FindingKind::NotReturned, "K5"),
                                       stop(FindingKind::LogOpen, "K6")};
    back.boat.seenSince = {{"K5", Location::boat("Tern")}, {"K6", Location::boat("Tern")}};
    EXPECT_THAT(told(back.condition()),
                ElementsAre("seen-elsewhere paddle K5 at Tern (stop not-returned paddle K5)",
                            "finding paddle K6 (stop log-open paddle K6)"));
    back.boat.seenSince = {{"K5", Location::place("loft")}};
    EXPECT_EQ(back.condition().reasons[0].elsewhere, Location::place("loft"));
    back.boat.seenSince = {{"K5", Location::boat("Heron")}};
    EXPECT_EQ(back.condition().reasons[0].kind, NotReadyReason::Kind::Finding) << "seen again at this boat";
}

TEST(Board, whatWasMarkedMissingOrWithdrawnSinceStopsTheBoat) {
    BackInShed back;
    back.paddle().state = ItemState::Missing;
    EXPECT_EQ(told(back.condition())[0], "became-missing paddle K1");
    back.paddle().state = ItemState::Unserviceable;
    EXPECT_EQ(told(back.condition())[0], "became-unserviceable paddle K1");
    back.paddle().state = ItemState::WrittenOff;
    EXPECT_EQ(told(back.condition())[0], "became-unserviceable paddle K1");
    back.paddle().state = ItemState::Serviceable;
    EXPECT_EQ(back.condition().kind, Kind::KitReady);
}

TEST(Board, whatWasSeenElsewhereSinceStopsTheBoat) {
    BackInShed back;
    back.boat.seenSince = {{"K1", Location::boat("Tern")}};
    EXPECT_THAT(told(back.condition()), ElementsAre("seen-elsewhere paddle K1 at Tern"));
    back.boat.seenSince = {{"K2", Location::boat("Tern")}};
    EXPECT_EQ(back.condition().kind, Kind::KitReady) << "another paddle";
    back.boat.seenSince = {{"K1", Location::boat("Heron")}};
    EXPECT_EQ(back.condition().kind, Kind::KitReady) << "its own boat";
    back.boat.seenSince = {{"K1", Location::place("Heron")}};
    EXPECT_THAT(told(back.condition()), ElementsAre("seen-elsewhere paddle K1 at Heron")) << "a place";
}

TEST(Board, whatFellDueSinceStopsTheBoat) {
    BackInShed back;
    back.kit.type("paddle").rules = {expiry(), yearlyService()};
    back.paddle().stamped = known("2026-03-13");
    back.kit.input.seen[0].record.services = {{"", "service", day("2020-01-01"), {}, true}};
    const auto condition = back.condition();
    // The paddle's first rule that stops, and what the launch then lacks.
    EXPECT_THAT(told(condition), ElementsAre("became-due paddle K1 (stop out-of-date paddle K1)",
                                             "finding paddle (stop missing paddle)"));
    EXPECT_EQ(condition.reasons[0].finding->due->due, day("2026-03-13"));
    back.paddle().stamped = known("2026-03-14");
    EXPECT_EQ(told(back.condition())[0], "became-due paddle K1 (stop service-overdue paddle K1)");
    back.kit.input.seen[0].record.services[0].day = day("2026-01-01");
    EXPECT_EQ(back.condition().kind, Kind::KitReady);
}

TEST(Board, kitOfATypeThatTheRegisterLostIsNotDue) {
    BackInShed back;
    back.kit.see("K7", "bell").record.item.stamped = known("2020-01-01");
    back.kit.type("bell").rules = {expiry()};
    EXPECT_EQ(back.condition().kind, Kind::NotReady);
    back.kit.input.kitTypes.erase("bell");
    EXPECT_EQ(back.condition().kind, Kind::KitReady);
}

TEST(Board, aBoatThatWentOutShortAndCameBackWholeIsStillShort) {
    BackInShed back;
    back.kit.line("radio");
    back.kit.line("bell", 1, false);
    EXPECT_THAT(told(back.condition()), ElementsAre("finding radio (stop missing radio)"));
    back.kit.see("K2", "radio");
    EXPECT_EQ(back.condition().kind, Kind::KitReady) << "a line that is not required may be short";
}

TEST(Board, peopleOfTheReturnAreWornForElseThoseOfTheLaunch) {
    BackInShed back;
    back.kit.wornType("jacket");
    back.kit.line("jacket", 1);
    back.kit.see("K2", "jacket");
    const auto person = [](const char* name) { return Person{.name = name}; };
    EXPECT_EQ(back.condition().kind, Kind::KitReady) << "nobody named: the line's own quantity";
    back.launchPeople = {person("Ada Marsh"), person("Bo Lake")};
    EXPECT_THAT(told(back.condition()), ElementsAre("finding jacket (stop missing jacket)"));
    back.kit.input.people = {person("Ada Marsh")};
    EXPECT_EQ(back.condition().kind, Kind::KitReady);
}

TEST(Board, onlyAnOpenLogEntryThatStopsIsAReason) {
    BackInShed back;
    back.kit.input.logOpen = {{"e1", "Heron", {}, day("2026-03-02"), "torn", Severity::Remark, "", {}, ""},
                              {"e2", "Heron", {}, day("2026-03-01"), "leaks", Severity::Stop, "", {}, ""}};
    const auto condition = back.condition();
    ASSERT_THAT(told(condition), ElementsAre("log-open (stop log-open)"));
    EXPECT_EQ(condition.reasons[0].finding->text, "leaks");
    EXPECT_EQ(condition.reasons[0].finding->entry, "e2");
    EXPECT_EQ(condition.reasons[0].finding->since, day("2026-03-01"));
}

// docs/rules.md, "kit ready": every stop that a launch check with those people would find today.
TEST(Board, aJacketThatFitsNobodyOfTheCrewStopsTheBoat) {
    BackInShed back;
    back.kit.sizedType("jacket");
    back.kit.line("jacket");
    back.kit.seeSized("K2", "jacket", "L");
    back.launchPeople = {Person{.name = "Ada Marsh", .massKg = 55}};
    EXPECT_THAT(told(back.condition()), ElementsAre("finding jacket (stop no-fit jacket)",
                                                    "finding jacket K2 (stop wrong-size jacket K2)"));
    back.launchPeople[0].massKg = 95;
    EXPECT_EQ(back.condition().kind, Kind::KitReady);
}

TEST(Board, anOpenLogEntryThatStopsAnItemStopsTheBoat) {
    BackInShed back;
    back.kit.input.seen[0].logOpen = {
        {"e1", "", itemNamed("K1"), day("2026-03-02"), "blade cracked", Severity::Stop, "", {}, ""}};
    EXPECT_THAT(told(back.condition()), ElementsAre("log-open paddle K1 (stop log-open paddle K1)"));
    back.kit.input.seen[0].logOpen[0].severity = Severity::Remark;
    EXPECT_EQ(back.condition().kind, Kind::KitReady);
}

TEST(Board, anEntryThatWasClosedSinceAsksForACheck) {
    BackInShed back;
    Finding entry = stop(FindingKind::LogOpen, "");
    entry.entry = "e1";
    back.boat.last->answer.findings = {entry};
    EXPECT_THAT(told(back.condition()), ElementsAre("finding paddle (stop log-open paddle)"));
    back.boat.logClosed = {"e1"};
    EXPECT_THAT(told(back.condition()), ElementsAre("log-closed paddle (stop log-open paddle)"));
}

TEST(Board, aBoatOfWhichNothingIsAskedIsNeverReady) {
    BackInShed back;
    back.kit.input.lines.clear();
    EXPECT_THAT(told(back.condition()), ElementsAre("finding (stop no-manifest)"));
}

TEST(Board, thePointsOfTheNextLaunchAreNoReason) {
    BackInShed back;
    back.kit.point("bungs", PointKind::Look, std::nullopt);
    EXPECT_EQ(back.condition().kind, Kind::KitReady);
}

TEST(Board, aCheckGrowsOld) {
    BackInShed back;
    back.boat.checkedDaysAgo = 9;
    EXPECT_EQ(back.condition().kind, Kind::KitReady) << "no limit";
    back.boat.checkEveryDays = 9;
    EXPECT_EQ(back.condition().kind, Kind::KitReady) << "the ninth day is the last";
    back.boat.checkEveryDays = 7;
    const auto condition = back.condition();
    EXPECT_THAT(told(condition), ElementsAre("check-too-old"));
    EXPECT_EQ(condition.reasons[0].daysAgo, 9);
    EXPECT_EQ(condition.reasons[0].everyDays, 7);
    EXPECT_EQ(condition.checkedDaysAgo, 9);
    back.boat.last = signedCheck(Phase::Launch);
    EXPECT_EQ(back.condition().kind, Kind::Out) << "it is out, and checked when it is back";
}

// docs/rules.md says no order of the board; common practice, no source: what needs a hand stands first.
TEST(Board, whatIsNotReadyStandsFirstThenWhatIsOut) {
    const BoatOnRecord never{.boat = "Auk"};
    const BoatOnRecord out{.boat = "Coot", .last = signedCheck(Phase::Launch)};
    BackInShed ready;
    ready.condition();
    BoatOnRecord first = ready.boat;
    first.boat = "Avocet";
    std::vector<std::string> names;
    for (const BoatCondition& condition : boardOf({first, out, ready.boat, never}))
        names.push_back(condition.boat);
    EXPECT_THAT(names, ElementsAre("Auk", "Coot", "Avocet", "Heron"));
    EXPECT_THAT(boardOf({}), IsEmpty());
}

TEST(Board, conditionsHaveNames) { // docs/command-line.md, `boats`
    EXPECT_STREQ(nameOf(Kind::NotReady), "not-ready");
    EXPECT_STREQ(nameOf(Kind::Out), "out");
    EXPECT_STREQ(nameOf(Kind::KitReady), "kit-ready");
}

} // namespace
} // namespace core
