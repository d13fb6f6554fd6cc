#include "core/answers/evidence.h"

#include "tests/core/answers/answers_support.h"

#include <gmock/gmock.h>

namespace core {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// docs/rules.md, "What the code settles": evidence is read from what was signed. docs/command-line.md,
// `aboard`.

const Instant atNine = instant("2026-03-14T09:00:00Z");

SignedCheck signedAt(Phase phase, const std::string& at) {
    return {.check = "c1",
            .by = "Odalys Finch",
            .at = instant(at),
            .answer = {.phase = phase, .today = day("2026-03-14")}};
}

LaunchOnRecord launched() {
    return {.launch = signedAt(Phase::Launch, "2026-03-14T08:00:00Z"), .people = {"Ada Marsh"}};
}

Sighting seen(const std::string& code, const std::string& at, const std::string& by) {
    return {.code = code, .at = instant(at), .seenBy = by};
}

LineAnswer lineOf(const std::string& kitType, std::vector<LineItem> items) {
    LineAnswer line;
    line.line.kitType = kitType;
    line.items = std::move(items);
    return line;
}

Finding about(const std::string& code, FindingKind kind, DueState state, Severity severity) {
    Finding finding;
    finding.kind = kind;
    finding.kitType = "knife";
    finding.item = itemNamed(code);
    finding.due = RuleDue{.state = state, .severity = severity};
    finding.due->rule.name = severity == Severity::Stop ? "stops" : "remarks";
    return finding;
}

std::vector<std::string> codes(const Evidence& evidence) {
    std::vector<std::string> all;
    for (const AboardItem& item : evidence.aboard)
        all.push_back(item.kitType + ' ' + item.item.id);
    return all;
}

const SignOff* launchUntil(const std::string& on, const std::vector<SignOff>& signOffs) {
    return lastLaunchUntil(instant(on), signOffs);
}

TEST(EvidenceOfRecord, theLastLaunchUntilThenCounts) {
    const std::vector<SignOff> signOffs{signOff("c3", "3", Phase::Launch, "2026-03-14T12:00:00Z"),
                                        signOff("c2", "2", Phase::Launch, "2026-03-14T10:00:00Z"),
                                        signOff("c1", "1", Phase::Launch, "2026-03-14T08:00:00Z"),
                                        signOff("c4", "4", Phase::Return, "2026-03-14T11:00:00Z")};
    EXPECT_EQ(launchUntil("2026-03-14T11:30:00Z", signOffs)->check, "c2");
    EXPECT_EQ(launchUntil("2026-03-14T10:00:00Z", signOffs)->check, "c2") << "the instant itself counts";
    EXPECT_EQ(launchUntil("2026-03-14T09:59:59.999Z", signOffs)->check, "c1");
    EXPECT_EQ(launchUntil("2026-03-14T07:59:59Z", signOffs), nullptr);
    EXPECT_EQ(launchUntil("2026-03-14T11:30:00Z", {signOffs[3]}), nullptr) << "a return is no launch";
}

TEST(EvidenceOfRecord, ofOneInstantWhatWasRecordedLaterCounts) {
    const std::vector<SignOff> signOffs{signOff("c1", "1", Phase::Launch, "2026-03-14T08:00:00Z"),
                                        signOff("c2", "2", Phase::Launch, "2026-03-14T08:00:00Z")};
    EXPECT_EQ(launchUntil("2026-03-14T09:00:00Z", signOffs)->check, "c2");
    EXPECT_EQ(launchUntil("2026-03-14T09:00:00Z", {signOffs[1], signOffs[0]})->check, "c2");
}

TEST(EvidenceOfRecord, theFirstReturnAfterALaunchBringsTheBoatIn) {
    const auto launch = signOff("c1", "5", Phase::Launch, "2026-03-14T08:00:00Z");
    const auto late = signOff("c4", "9", Phase::Return, "2026-03-14T12:00:00Z");
    const auto first = signOff("c3", "8", Phase::Return, "2026-03-14T10:00:00Z");
    const auto before = signOff("c0", "1", Phase::Return, "2026-03-14T07:00:00Z");
    const auto again = signOff("c5", "7", Phase::Launch, "2026-03-14T09:00:00Z");
    EXPECT_EQ(firstReturnAfter(launch, {late, first, before, again})->check, "c3");
    EXPECT_EQ(firstReturnAfter(launch, {first, late})->check, "c3");
    EXPECT_EQ(firstReturnAfter(launch, {before, again, launch}), nullptr);
    const auto sameInstant = signOff("c6", "6", Phase::Return, "2026-03-14T08:00:00Z");
    EXPECT_EQ(firstReturnAfter(launch, {sameInstant})->check, "c6") << "recorded after the launch";
    EXPECT_EQ(firstReturnAfter(signOff("c1", "6", Phase::Launch, "2026-03-14T08:00:00Z"), {sameInstant}),
              nullptr);
}

TEST(EvidenceOfRecord, withoutALaunchTheBoatWasIn) {
    const auto evidence = evidenceOf("Heron", atNine, {});
    EXPECT_EQ(evidence.boat, "Heron");
    EXPECT_EQ(evidence.on, atNine);
    EXPECT_FALSE(evidence.out);
    EXPECT_FALSE(evidence.launch);
    EXPECT_THAT(evidence.aboard, IsEmpty());
}

TEST(EvidenceOfRecord, aBoatIsOutUntilItsReturnWasSigned) {
    LaunchOnRecord record = launched();
    record.sightings = {seen("K1", "2026-03-14T07:50:00Z", "camera")};
    record.factHash = "abc";
    record.machine = "machine";
    record.seq = 7;
    const auto out = evidenceOf("Heron", atNine, record);
    EXPECT_TRUE(out.out);
    EXPECT_EQ(out.launch->check, "c1");
    EXPECT_THAT(out.people, ElementsAre("Ada Marsh"));
    EXPECT_EQ(out.aboard.size(), 1u);
    EXPECT_FALSE(out.back);
    EXPECT_EQ(out.factHash, "abc");
    EXPECT_EQ(out.machine, "machine");
    EXPECT_EQ(out.seq, 7);
    record.back = signedAt(Phase::Return, "2026-03-14T09:00:00.001Z");
    EXPECT_TRUE(evidenceOf("Heron", atNine, record).out) << "it came back a moment later";
    record.back->at = atNine;
    const auto in = evidenceOf("Heron", atNine, record);
    EXPECT_FALSE(in.out);
    EXPECT_THAT(in.aboard, IsEmpty());
    EXPECT_EQ(in.back->at, atNine);
    EXPECT_EQ(in.launch->check, "c1");
}

TEST(EvidenceOfRecord, aThingIsToldOnceWithItsFirstSighting) {
    LaunchOnRecord record = launched();
    record.sightings = {seen("K1", "2026-03-14T07:50:00Z", ""), seen("K2", "2026-03-14T07:51:00Z", "typed"),
                        seen("K1", "2026-03-14T07:55:00Z", "scanner"),
                        seen("K1", "2026-03-14T07:56:00Z", "typed")};
    const auto evidence = evidenceOf("Heron", atNine, record);
    ASSERT_THAT(codes(evidence), ElementsAre(" K1", " K2"));
    EXPECT_EQ(evidence.aboard[0].seenAt, instant("2026-03-14T07:50:00Z"));
    EXPECT_EQ(evidence.aboard[0].seenBy, "scanner") << "the first that says how";
    EXPECT_EQ(evidence.aboard[1].seenBy, "typed");
    EXPECT_EQ(evidence.aboard[0].inDate, std::nullopt) << "nothing was said of it";
    EXPECT_FALSE(evidence.aboard[0].counted);
}

TEST(EvidenceOfRecord, theSignedLinesSayWhatCountedForWhom) {
    LaunchOnRecord record = launched();
    record.sightings = {seen("K2", "2026-03-14T07:50:00Z", "typed"),
                        seen("K1", "2026-03-14T07:51:00Z", "typed")};
    record.launch.answer.lines = {
        lineOf("jacket", {{itemNamed("K2"), "jacket", true, "Ada Marsh", day("2027-01-31")}}),
        lineOf("vest", {{itemNamed("K2"), "jacket", false, "", day("2027-01-31")},
                        {itemNamed("K3"), "vest", false, "", {}}}),
        lineOf("knife", {{itemNamed("K1"), "knife", true, "", {}}})};
    const auto evidence = evidenceOf("Heron", atNine, record);
    ASSERT_THAT(codes(evidence), ElementsAre("jacket K2", "knife K1", "vest K3")) << "by kit type";
    EXPECT_TRUE(evidence.aboard[0].counted) << "for one line, if not for the other";
    EXPECT_EQ(evidence.aboard[0].wornBy, "Ada Marsh");
    EXPECT_EQ(evidence.aboard[0].due, day("2027-01-31"));
    EXPECT_TRUE(evidence.aboard[1].counted);
    EXPECT_EQ(evidence.aboard[1].wornBy, "");
    EXPECT_EQ(evidence.aboard[0].inDate, std::optional(true)) << "what was passed would be told of it";
    EXPECT_FALSE(evidence.aboard[2].counted);
    EXPECT_EQ(evidence.aboard[2].inDate, std::nullopt);
    EXPECT_FALSE(evidence.aboard[2].seenAt);
}

TEST(EvidenceOfRecord, ofOneKitTypeThingsStandByCode) {
    LaunchOnRecord record = launched();
    record.launch.answer.lines = {
        lineOf("paddle", {{itemNamed("K3"), "paddle"}, {itemNamed("K1"), "paddle"}}),
        lineOf("knife", {{itemNamed("K2"), "knife"}})};
    EXPECT_THAT(codes(evidenceOf("Heron", atNine, record)),
                ElementsAre("knife K2", "paddle K1", "paddle K3"));
}

/// One knife, that filled a place of a line, with these findings.
AboardItem knifeWith(std::vector<Finding> findings, LineItem asListed = {.counts = true}) {
    LaunchOnRecord record = launched();
    asListed.item = itemNamed("K1");
    record.launch.answer.lines = {lineOf("knife", {asListed})};
    record.launch.answer.lines[0].line.quantity = 1;
    record.sightings = {seen("K1", "2026-03-14T07:50:00Z", "typed")};
    record.launch.answer.findings = std::move(findings);
    return evidenceOf("Heron", atNine, record).aboard.at(0);
}

TEST(EvidenceOfRecord, aPassedRuleMakesAThingOutOfDate) {
    const auto expired = knifeWith({about("K1", FindingKind::OutOfDate, DueState::Passed, Severity::Stop)});
    EXPECT_EQ(expired.inDate, std::optional(false));
    EXPECT_EQ(expired.passed->rule.name, "stops");
    EXPECT_EQ(expired.kitType, "knife") << "the finding names its type";
    const auto overdue =
        knifeWith({about("K1", FindingKind::ServiceOverdue, DueState::Passed, Severity::Remark)});
    EXPECT_EQ(overdue.inDate, std::optional(false));
    EXPECT_EQ(overdue.passed->rule.name, "remarks");
}

/// docs/rules.md, "Evidence": the first reason alone is told of what does not count.
TEST(EvidenceOfRecord, whatTheSignedCheckDoesNotSayIsNotKnown) {
    const auto unserviceable = about("K1", FindingKind::Unserviceable, DueState::Later, Severity::Remark);
    EXPECT_EQ(knifeWith({unserviceable}, {.due = day("2026-03-14")}).inDate, std::nullopt);
    EXPECT_EQ(knifeWith({unserviceable}, {.due = day("2026-03-13")}).inDate, std::optional(false));
    EXPECT_FALSE(knifeWith({unserviceable}).isUndated);
}

/// docs/rules.md, 3: an extra that a line takes would count, and what is passed is told of it.
TEST(EvidenceOfRecord, anExtraIsInDateOnlyWhereALineTakesItsType) {
    const auto extraOf = [](const std::string& type) {
        LaunchOnRecord record = launched();
        record.sightings = {seen("K1", "2026-03-14T07:50:00Z", "typed")};
        record.launch.answer.lines = {lineOf("knife", {})};
        record.launch.answer.lines[0].line.quantity = 1;
        Finding extra = about("K1", FindingKind::Extra, DueState::Later, Severity::Remark);
        extra.kitType = type;
        record.launch.answer.findings = {extra};
        return evidenceOf("Heron", atNine, record).aboard.at(0).inDate;
    };
    EXPECT_EQ(extraOf("knife"), std::optional(true));
    EXPECT_EQ(extraOf("rope"), std::nullopt);
}

TEST(EvidenceOfRecord, whatCountsWithinItsToleranceIsInDate) {
    const auto within =
        knifeWith({about("K1", FindingKind::OutOfDate, DueState::WithinTolerance, Severity::Remark)});
    EXPECT_EQ(within.inDate, std::optional(true));
    EXPECT_FALSE(within.passed);
}

TEST(EvidenceOfRecord, whatIsNotPassedIsInDate) {
    for (const auto& finding : {about("K1", FindingKind::DueSoon, DueState::DueSoon, Severity::Remark),
                                about("K1", FindingKind::Extra, DueState::Passed, Severity::Stop),
                                about("K2", FindingKind::OutOfDate, DueState::Passed, Severity::Stop)}) {
        const auto knife = knifeWith({finding});
        EXPECT_EQ(knife.inDate, std::optional(true)) << nameOf(finding.kind);
        EXPECT_FALSE(knife.passed);
    }
    Finding unsaid = about("K1", FindingKind::OutOfDate, DueState::Passed, Severity::Stop);
    unsaid.due.reset(); // a finding of another program's making
    EXPECT_EQ(knifeWith({unsaid}).inDate, std::optional(true));
}

TEST(EvidenceOfRecord, theRuleThatStopsIsNamedBeforeOneThatDoesNot) {
    const auto stops = about("K1", FindingKind::OutOfDate, DueState::Passed, Severity::Stop);
    auto first = about("K1", FindingKind::ServiceOverdue, DueState::Passed, Severity::Remark);
    auto second = first;
    second.due->rule.name = "remarks too";
    EXPECT_EQ(knifeWith({first, stops}).passed->rule.name, "stops");
    EXPECT_EQ(knifeWith({stops, first}).passed->rule.name, "stops");
    EXPECT_EQ(knifeWith({first, second}).passed->rule.name, "remarks") << "of two alike the first";
}

TEST(EvidenceOfRecord, anUndatedThingIsNeither) {
    const auto undated = about("K1", FindingKind::Undated, DueState::Undated, Severity::Remark);
    EXPECT_EQ(knifeWith({undated}).inDate, std::nullopt);
    EXPECT_TRUE(knifeWith({undated}).isUndated);
    const auto passed = about("K1", FindingKind::OutOfDate, DueState::Passed, Severity::Stop);
    EXPECT_EQ(knifeWith({passed, undated}).inDate, std::optional(false)) << "what is passed is known";
    EXPECT_EQ(knifeWith({undated, passed}).inDate, std::optional(false));
}

TEST(EvidenceOfRecord, aLinesKitTypeStandsWhateverAFindingSays) {
    LaunchOnRecord record = launched();
    record.launch.answer.lines = {lineOf("blade", {{itemNamed("K1"), "blade"}})};
    record.launch.answer.findings = {about("K1", FindingKind::OutOfDate, DueState::Passed, Severity::Stop)};
    EXPECT_EQ(evidenceOf("Heron", atNine, record).aboard.at(0).kitType, "blade");
}

TEST(EvidenceOfRecord, theTagOfNowIsNamed) {
    LaunchOnRecord record = launched();
    record.sightings = {seen("K1", "2026-03-14T07:50:00Z", "typed"),
                        seen("K2", "2026-03-14T07:51:00Z", "typed")};
    record.replacedTags = {{"K1", "K9"}};
    const auto evidence = evidenceOf("Heron", atNine, record);
    EXPECT_EQ(evidence.aboard[0].item.tag, "K9");
    EXPECT_EQ(evidence.aboard[1].item.tag, "K2");
}

} // namespace
} // namespace core
