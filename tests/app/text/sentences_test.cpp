#include "app/text/sentences.h"

#include "app/text/merge_sentences.h"
#include "core/club/club_exchange.h"
#include "scanner/files/file_fault.h"
#include "tests/core/base/days.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace app {
namespace {

using core::Finding;
using core::FindingKind;
using core::Severity;
using testing::HasSubstr;

using core::day;

std::string said(const Finding& finding) {
    return reasonOf(finding).toStdString();
}

core::RuleDue yearlyLook() {
    core::RuleDue due;
    due.rule.name = "yearly look";
    due.rule.kind = core::RuleKind::InspectEvery;
    due.rule.n = 12;
    due.rule.source = "club order 3";
    due.due = due.lastGoodDay = day("2026-03-01");
    due.state = core::DueState::Passed;
    due.severity = Severity::Stop;
    due.anchor = core::Anchor::Service;
    due.anchorDay = day("2025-03-01");
    return due;
}

/// A finding with everything that its kind may speak of.
Finding full(FindingKind kind) {
    Finding finding;
    finding.kind = kind;
    finding.severity = Severity::Stop;
    finding.kitType = "tow line";
    finding.item = {"KFGQ9XHHKJ", "KDVK4H6SRX"};
    finding.due = yearlyLook();
    finding.people = {"Ada"};
    finding.boat = "Coot";
    finding.size = "S";
    finding.text = "port bung seeps";
    finding.since = day("2026-03-07");
    return finding;
}

std::vector<FindingKind> everyKind() {
    std::vector<FindingKind> kinds;
    for (int kind = 0; kind <= static_cast<int>(FindingKind::Swapped); ++kind)
        kinds.push_back(static_cast<FindingKind>(kind));
    return kinds;
}

class EveryKind : public testing::TestWithParam<FindingKind> {};

TEST_P(EveryKind, isOneWholeSentence) {
    const std::string sentence = said(full(GetParam()));
    EXPECT_GT(sentence.size(), 20U);
    EXPECT_EQ(sentence.back(), '.');
    EXPECT_TRUE(std::isupper(static_cast<unsigned char>(sentence.front()))) << sentence;
    EXPECT_EQ(sentence.find('%'), std::string::npos) << sentence;
    EXPECT_EQ(sentence.find("  "), std::string::npos) << sentence;
}

TEST_P(EveryKind, namesTheThingItIsAbout) {
    const std::string sentence = said(full(GetParam()));
    switch (GetParam()) {
    case FindingKind::PointOpen:
    case FindingKind::PointOutOfRange:
        EXPECT_THAT(sentence, HasSubstr("port bung seeps")); // a point's name stands in `text`
        break;
    case FindingKind::FitNotChecked:
        EXPECT_THAT(sentence, HasSubstr("Ada"));
        break;
    case FindingKind::PersonNotChecked:
    case FindingKind::NoFit:
    case FindingKind::Missing:
        EXPECT_THAT(sentence, testing::ContainsRegex("[Tt]ow line"));
        break;
    default:
        EXPECT_THAT(sentence, HasSubstr("ow line KDVK 4H6S RX"));
    }
}

INSTANTIATE_TEST_SUITE_P(Findings, EveryKind, testing::ValuesIn(everyKind()));

class RuleKindOfFinding : public testing::TestWithParam<FindingKind> {};

TEST_P(RuleKindOfFinding, namesTheRuleTheStartAndTheSource) {
    const std::string sentence = said(full(GetParam()));
    EXPECT_THAT(sentence, HasSubstr("“yearly look”"));
    EXPECT_THAT(sentence, HasSubstr("source: club order 3"));
    EXPECT_THAT(sentence, HasSubstr("last recorded 1 March 2025"));
    EXPECT_THAT(sentence, HasSubstr("1 March 2026"));
}

INSTANTIATE_TEST_SUITE_P(Findings, RuleKindOfFinding,
                         testing::Values(FindingKind::OutOfDate, FindingKind::ServiceOverdue,
                                         FindingKind::DueSoon));

TEST(Sentences, undatedSaysWhichDayIsNotKnown) {
    Finding finding = full(FindingKind::Undated);
    finding.due->state = core::DueState::Undated;
    finding.due->rule.kind = core::RuleKind::FromMade;
    EXPECT_THAT(said(finding),
                testing::AllOf(HasSubstr("“yearly look”"), HasSubstr("the day it was made is not known"),
                               HasSubstr("source: club order 3")));
}

TEST(Sentences, whatIsWithinToleranceStillCounts) {
    Finding finding = full(FindingKind::ServiceOverdue);
    EXPECT_THAT(said(finding), HasSubstr("bring another"));
    finding.due->state = core::DueState::WithinTolerance;
    EXPECT_THAT(said(finding), HasSubstr("within the tolerance"));
}

TEST(Sentences, launchesAndHoursAreCountedAgainstTheirLimit) {
    Finding finding = full(FindingKind::ServiceOverdue);
    finding.due->rule.kind = core::RuleKind::EveryUses;
    finding.due->rule.n = 30;
    finding.due->counted = 32;
    finding.due->due = finding.due->lastGoodDay = std::nullopt;
    EXPECT_THAT(said(finding), HasSubstr("32 launches since the last record, the limit is 30"));
}

TEST(Sentences, aPartIsNamed) {
    Finding finding = full(FindingKind::OutOfDate);
    finding.due->rule.part = "cylinder";
    EXPECT_THAT(said(finding), HasSubstr("for its cylinder"));
}

TEST(Sentences, aPointSaysItsValueAndItsLimits) {
    Finding finding = full(FindingKind::PointOutOfRange);
    finding.text = "bow chamber";
    finding.value = 16.5;
    finding.unit = "kPa";
    finding.low = 18;
    finding.high = 22;
    EXPECT_THAT(said(finding), HasSubstr("16.5 kPa is outside 18 to 22 kPa"));
    finding.high = std::nullopt;
    EXPECT_THAT(said(finding), HasSubstr("below 18 kPa"));
    finding.value = 19;
    finding.afloat = 16.2;
    EXPECT_THAT(said(finding), testing::AllOf(HasSubstr("16.2 kPa afloat"), HasSubstr("first estimate")));
}

core::CheckAnswer answerWith(std::vector<Finding> findings) {
    core::CheckAnswer answer{.location = core::Location::boat("Teal"), .today = day("2026-03-14")};
    answer.outcome = core::CheckOutcome::Incomplete;
    for (const auto& [type, wanted] : {std::pair{"knife", 1}, std::pair{"paddle", 2}})
        answer.lines.push_back(
            {.line = {.kitType = type, .quantity = wanted}, .wanted = wanted, .counted = 0});
    answer.findings = std::move(findings);
    return answer;
}

Finding missing(const char* type, int quantity, Severity severity = Severity::Stop) {
    Finding finding;
    finding.kitType = type;
    finding.quantity = quantity;
    finding.severity = severity;
    return finding;
}

TEST(Outcome, namesWhatIsShortWithNumbersWhereThereAreSeveral) {
    EXPECT_EQ(outcomeOf(answerWith({missing("knife", 1), missing("paddle", 1)})),
              QStringLiteral("Kit incomplete: knife, 1 × paddle"));
    EXPECT_EQ(outcomeOf(answerWith({missing("paddle", 2)})), QStringLiteral("Kit incomplete: 2 × paddle"));
}

TEST(Outcome, thingsOfOneTypeAreSaidOnce) {
    Finding first = missing("paddle", 1);
    first.kind = FindingKind::NotReturned;
    EXPECT_EQ(outcomeOf(answerWith({first, first})), QStringLiteral("Kit incomplete: 2 × paddle"));
}

TEST(Outcome, remarksAreNotNamedAsShort) {
    EXPECT_EQ(outcomeOf(answerWith({missing("knife", 1), missing("paddle", 1, Severity::Remark)})),
              QStringLiteral("Kit incomplete: knife"));
}

TEST(Outcome, pointsAndLogEntriesAreCounted) {
    Finding point = full(FindingKind::PointOpen);
    EXPECT_EQ(outcomeOf(answerWith({point, point, full(FindingKind::LogOpen)})),
              QStringLiteral("Kit incomplete: 2 points open, 1 log entry open"));
}

TEST(Outcome, returnSaysWhatIsNotBackAndWhatIsLeftToDo) {
    Finding notBack = missing("paddle", 1);
    notBack.kind = FindingKind::NotReturned;
    core::CheckAnswer answer = answerWith({notBack, missing("knife", 1)});
    answer.phase = core::Phase::Return;
    answer.lines.emplace_back(); // something went out
    EXPECT_EQ(outcomeOf(answer), QStringLiteral("Not back: 1 × paddle, knife"));
    answer.findings = {notBack, full(FindingKind::PointOpen)};
    EXPECT_EQ(outcomeOf(answer), QStringLiteral("Not back: 1 × paddle; 1 point open"));
    answer.findings = {full(FindingKind::PointOpen)};
    EXPECT_EQ(outcomeOf(answer), QStringLiteral("Everything is back; still to do: 1 point open"));
    answer.findings = {full(FindingKind::WasMissing)};
    answer.outcome = core::CheckOutcome::CompleteWithRemarks;
    EXPECT_EQ(outcomeOf(answer), QStringLiteral("Everything is back, with 1 remark"));
    answer.outcome = core::CheckOutcome::Complete;
    EXPECT_EQ(outcomeOf(answer), QStringLiteral("Everything is back"));
    answer.lines.clear();
    EXPECT_EQ(outcomeOf(answer), QStringLiteral("No launch of it is recorded, so nothing is missed"));
}

TEST(Outcome, neverSaysSafeOrReady) {
    core::CheckAnswer answer = answerWith({});
    for (const auto outcome : {core::CheckOutcome::Complete, core::CheckOutcome::CompleteWithRemarks,
                               core::CheckOutcome::Incomplete}) {
        answer.outcome = outcome;
        EXPECT_THAT(outcomeOf(answer).toStdString(), testing::StartsWith("Kit "));
        EXPECT_FALSE(outcomeOf(answer).contains(QStringLiteral("safe"), Qt::CaseInsensitive));
        EXPECT_FALSE(outcomeOf(answer).contains(QStringLiteral("ready"), Qt::CaseInsensitive));
    }
}

TEST(Condition, saysHowLongAgoTheCheckWas) {
    core::BoatCondition boat{.kind = core::BoatCondition::Kind::KitReady, .by = "Ada Marsh"};
    const auto today = *core::CalendarDay::from(2026, 3, 14);
    EXPECT_EQ(conditionOf(boat, today), QStringLiteral("kit ready, checked by Ada Marsh"));
    boat.checkedDaysAgo = 9;
    EXPECT_EQ(conditionOf(boat, today), QStringLiteral("kit ready, checked by Ada Marsh, 9 days ago"));
}

TEST(Sentences, aValueIsToldFromTheLimitThatItLeaves) {
    Finding finding;
    finding.kind = FindingKind::PointOutOfRange;
    finding.text = "volts";
    finding.unit = "V";
    finding.high = 12;
    finding.value = 12.00001;
    EXPECT_NE(said(finding).find("12.00001 V is above 12 V"), std::string::npos) << said(finding);
    finding.value = 12.5;
    EXPECT_NE(said(finding).find("12.5 V is above 12 V"), std::string::npos) << said(finding);
}

TEST(Reasons, aCheckThatGrewOldSaysTheClubsLimit) {
    core::NotReadyReason reason;
    reason.kind = core::NotReadyReason::Kind::CheckTooOld;
    reason.daysAgo = 9;
    reason.everyDays = 7;
    EXPECT_EQ(reasonOf(reason),
              QStringLiteral("Last checked 9 days ago; this club checks it every 7 days: do a check."));
}

TEST(Reasons, everyReasonOfABoatIsASentence) {
    using Kind = core::NotReadyReason::Kind;
    for (int kind = 0; kind <= static_cast<int>(Kind::LogClosed); ++kind) {
        const core::NotReadyReason reason{.kind = static_cast<Kind>(kind),
                                          .finding = {},
                                          .item = {"KFGQ9XHHKJ", "KD0XPAMAJG"},
                                          .kitType = "knife",
                                          .elsewhere = core::Location::boat("Coot")};
        const std::string sentence = reasonOf(reason).toStdString();
        EXPECT_GT(sentence.size(), 20U) << kind;
        EXPECT_EQ(sentence.back(), '.') << sentence;
        EXPECT_EQ(sentence.find('%'), std::string::npos) << sentence;
    }
}

TEST(Chain, everyLinkSaysWhatWhereAndWhen) {
    for (int what = 0; what <= static_cast<int>(core::ChainLink::What::MarkedMissing); ++what) {
        const core::ChainLink link{.what = static_cast<core::ChainLink::What>(what),
                                   .at = {},
                                   .day = day("2026-03-08"),
                                   .where = core::Location::boat("Coot"),
                                   .by = {"Ada", "Bo"},
                                   .check = {}};
        const std::string words = linkInWords(link, day("2026-03-14")).toStdString();
        EXPECT_THAT(words,
                    testing::AllOf(HasSubstr("Coot"), HasSubstr("8 March 2026"), HasSubstr("Ada and Bo")));
    }
}

TEST(ErrorLine, everyFaultOfAFileHasWords) {
    for (int fault = 0; fault <= static_cast<int>(scanner::FileFault::TooBig); ++fault) {
        const core::Error error = fileErrorOf("a.jpg", {static_cast<scanner::FileFault>(fault), {}});
        EXPECT_FALSE(errorInWords(error).isEmpty());
        EXPECT_FALSE(mendInWords(error).isEmpty());
        EXPECT_EQ(error.where, "a.jpg");
    }
}

TEST(MergeSentences, ofAPinSayWhetherEverythingIsOpen) {
    core::LookAt found{.kind = core::LookAt::Kind::PinsChanged, .name = "Ada Thorne"};
    EXPECT_EQ(core::nameOf(found.kind), std::string("pins-changed"));
    const auto words = [&] { return lookAtInWords(found).toStdString(); };
    const auto open = HasSubstr("everything is open on this machine until a PIN is set here");
    EXPECT_THAT(words(),
                testing::AllOf(HasSubstr("The PIN of Ada Thorne counts here no more"), testing::Not(open)));
    found.isOpen = true;
    EXPECT_THAT(words(), testing::AllOf(HasSubstr("The PIN of Ada Thorne counts here no more"), open));
    found.isOpen = false;
    found.isPinSet = true;
    EXPECT_THAT(words(), testing::AllOf(HasSubstr("A PIN of Ada Thorne came in"), testing::Not(open)));
}

} // namespace
} // namespace app
