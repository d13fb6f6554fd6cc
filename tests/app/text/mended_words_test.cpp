#include "app/text/plan_sentences.h"
#include "app/text/sentences.h"

#include "app/gui/check/check_row.h"
#include "app/gui/gear/bench/bench_round.h"
#include "app/gui/gear/due/due_calendar.h"
#include "app/gui/gear/kit/kit_words.h"
#include "app/gui/gear/manifests/manifest_words.h"
#include "app/gui/gear/missing/event_words.h"
#include "app/gui/theme/language.h"
#include "app/text/errors.h"
#include "core/base/error_code.h"

#include <gtest/gtest.h>

#include <functional>
#include <ostream>

// Sentences that misled somebody who did not write them, as the programs say them now.
namespace {

core::CalendarDay day(const char* iso) {
    return *core::CalendarDay::parse(iso);
}

core::RuleDue floatTest(core::DueState state, const char* due) {
    core::RuleDue made;
    made.rule.name = "float test";
    made.rule.kind = core::RuleKind::InspectEvery;
    made.rule.source = "maker's manual";
    made.due = made.lastGoodDay = day(due);
    made.state = state;
    return made;
}

core::RuleDue batteryReplaced() {
    core::RuleDue made = floatTest(core::DueState::Passed, "2026-03-01");
    made.rule.name = "replace";
    made.rule.part = "battery";
    return made;
}

core::Finding findingOf(core::FindingKind kind) {
    core::Finding made;
    made.kind = kind;
    made.severity = core::Severity::Stop;
    made.kitType = "radio";
    made.item = {"K1", "K1"};
    return made;
}

const core::CalendarDay today = *core::CalendarDay::from(2026, 3, 15);

QString dueLine() {
    return app::lineOf(floatTest(core::DueState::Passed, "2025-06-15"), today).title;
}

QString dueLineOfStrictRule() {
    core::RuleDue strict = floatTest(core::DueState::Passed, "2026-03-15");
    strict.lastGoodDay = day("2026-03-14");
    return app::lineOf(strict, today).title;
}

QString dueLineInTolerance() {
    return app::lineOf(floatTest(core::DueState::WithinTolerance, "2026-03-12"), today).title;
}

QString dueSoonAloud() {
    return app::lineOf(floatTest(core::DueState::DueSoon, "2026-03-20"), today).aloud();
}

QString afterNoEvent() {
    core::RuleDue rearm;
    rearm.rule.name = "rearm";
    rearm.rule.kind = core::RuleKind::AfterEvent;
    return app::lineOf(rearm, today).title;
}

QString stateOfWhatDoesNotCount() {
    core::RuleDue rearm;
    rearm.rule.name = "rearm";
    rearm.rule.kind = core::RuleKind::AfterEvent;
    rearm.state = core::DueState::Passed;
    return app::stateOf(core::Item{}, {floatTest(core::DueState::Later, "2027-01-01"), rearm});
}

QString stateOfWhatCounts() {
    return app::stateOf(core::Item{}, {floatTest(core::DueState::Later, "2027-01-01")});
}

QString firstColumnOfTheChart() {
    return app::dueCalendarOf({}, {}, today).months.front().shortName;
}

QString shortReasonOfAPart() {
    core::Finding finding = findingOf(core::FindingKind::ServiceOverdue);
    finding.due = batteryReplaced();
    return app::shortReasonOf(finding);
}

QString whatWasPassedOfAPart() {
    return app::passedInWords(batteryReplaced());
}

QString kitOfNobodyAboard() {
    return app::shortReasonOf(findingOf(core::FindingKind::OtherPerson));
}

QString ownerUnknown() {
    core::CheckAnswer answer{core::Location::boat("Teal"), core::Phase::Launch, today};
    answer.findings = {findingOf(core::FindingKind::PersonNotChecked)};
    answer.findings[0].item = {};
    for (const app::CheckRow& row : app::rowsOf(answer))
        if (row.section == app::CheckRow::Section::Look && !row.isHeading) return row.title;
    return {};
}

QString pressureAfloat() {
    core::Finding finding = findingOf(core::FindingKind::PointOutOfRange);
    finding.text = "bow chamber";
    finding.value = 19;
    finding.afloat = 17;
    finding.low = 18;
    finding.high = 22;
    finding.unit = "kPa";
    return app::reasonOf(finding);
}

QString shortOfOneOfTwo() {
    core::CheckAnswer answer{core::Location::boat("Teal"), core::Phase::Launch, today};
    answer.outcome = core::CheckOutcome::Incomplete;
    answer.lines.resize(1);
    answer.lines[0].line.kitType = "tow line";
    answer.lines[0].wanted = 2;
    answer.findings = {findingOf(core::FindingKind::Missing)};
    answer.findings[0].kitType = "tow line";
    return app::outcomeOf(answer);
}

QString signedIncomplete() {
    return app::reasonOf(core::NotReadyReason{.kind = core::NotReadyReason::Kind::Finding});
}

QString cameBack() {
    core::EventTally tally;
    core::BoatTally teal{.boat = "Teal"};
    teal.launchedBy = teal.returnedBy = {"Ines", "Joss"};
    teal.returnedAt = core::Instant::parse("2026-03-01T12:00:00Z");
    teal.returnSignedBy = "Tobin";
    tally.boats = {teal};
    for (const app::ListRow& row : app::linesOf(tally, {}, today))
        if (row.key == "back Teal") return row.title.section(QStringLiteral(" 2026"), 1);
    return {};
}

QString recordedBefore() {
    return app::reasonOf(core::ServiceRound::Refusal::DoneAlready);
}

QString notOfThisClub() {
    app::BenchRound round;
    round.add({.text = "K000000000"});
    return round.lines({}, {}).back().remark;
}

QString ownLineTakenOut() {
    return app::wordOf(core::Difference::TakenAway);
}

core::ReplacementRow scarceRow() {
    core::ReplacementRow row;
    row.firstShort = day("2027-04-06");
    row.chances = {{today, 9, 0}, {day("2027-04-06"), 7, 1 - 1e-9}};
    return row;
}

QString chances() {
    return app::chancesInWords(
        scarceRow(), {.today = today, .end = day("2029-03-14"), .question = {}, .rows = {}, .budget = {}});
}

QString noNumberDoes() {
    core::ReplacementRow row = scarceRow();
    row.quantity = std::nullopt;
    return app::quantityInWords(row);
}

QString agesAlike() {
    core::KitLife life;
    life.weibull = core::Weibull{1.0, 10.0};
    return app::weibullInWords(life).section(QStringLiteral(";"), 0, 0);
}

QString errorOf(core::ErrorCode code, const char* argument) {
    return app::errorInWords(core::Error{code, {argument}});
}

struct Row {
    const char* name;
    std::function<QString()> say;
    const char* english;
    const char* german;
};

std::ostream& operator<<(std::ostream& out, const Row& row) {
    return out << row.name;
}

const Row rows[] = {
    {"overdue", dueLine, "Float test: was due by 15 June 2025: overdue 273 days",
     "Float test: war bis 15. Juni 2025 fällig: 273 Tage überfällig"},
    {"strict", dueLineOfStrictRule, "Float test: was due by 14 March 2026: overdue 1 day",
     "Float test: war bis 14. März 2026 fällig: 1 Tag überfällig"},
    {"tolerance", dueLineInTolerance,
     "Float test: was due by 12 March 2026: overdue 3 days, within the tolerance",
     "Float test: war bis 12. März 2026 fällig: 3 Tage überfällig, innerhalb der Toleranz"},
    {"dueSoon", dueSoonAloud,
     "due soon, or with a remark, Float test: due soon, on 20 March 2026, Source: maker's manual",
     "bald fällig, oder mit Hinweis, Float test: bald fällig, am 20. März 2026, Quelle: maker's manual"},
    {"noEvent", afterNoEvent, "Rearm: not due: no such event recorded",
     "Rearm: nicht fällig: kein solches Ereignis eingetragen"},
    {"doesNotCount", stateOfWhatDoesNotCount, "serviceable, but does not count: rearm is due",
     "einsatzbereit, zählt aber nicht: rearm ist fällig"},
    {"counts", stateOfWhatCounts, "serviceable", "einsatzbereit"},
    {"chart", firstColumnOfTheChart, "overdue", "überschritten"},
    {"part", shortReasonOfAPart, "Battery: replace was due on 1 March 2026. Take it out, bring another.",
     "Battery: replace war am 1. März 2026 fällig. Herausnehmen, anderes holen."},
    {"partPassed", whatWasPassedOfAPart, "battery: replace, 1 March 2026", "battery: replace, 1. März 2026"},
    {"nobodysOwn", kitOfNobodyAboard, "Not for anyone aboard.", "Für niemanden an Bord."},
    {"owner", ownerUnknown, "owner not checked", "nicht geprüft, wem es gehört"},
    {"range", pressureAfloat,
     "The point “bow chamber”: 19 kPa is inside the range your club entered, but about 17 kPa afloat is "
     "outside 18 to 22 kPa (a first estimate); measure again on the water.",
     "Prüfpunkt „bow chamber“: 19 kPa liegt im Bereich, den der Verein eingetragen hat, aber etwa 17 kPa im "
     "Wasser liegt außerhalb von 18 bis 22 kPa (erste Schätzung); auf dem Wasser nachmessen."},
    {"times", shortOfOneOfTwo, "Kit incomplete: 1 × tow line", "Ausrüstung unvollständig: 1 × tow line"},
    {"signedIncomplete", signedIncomplete, "The last check was signed with kit incomplete: do another.",
     "Bei der letzten Prüfung war die Ausrüstung unvollständig: noch einmal prüfen."},
    {"cameBack", cameBack, ", signed by Tobin", ", unterschrieben von Tobin"},
    {"recordedBefore", recordedBefore, "Already recorded for that day.", "Für diesen Tag schon eingetragen."},
    {"notOurs", notOfThisClub, "It is not this club's kit.", "Das ist keine Ausrüstung dieses Vereins."},
    {"removed", ownLineTakenOut, "removed", "entfernt"},
    {"chances", chances, "short now? no; short on 6 April 2027? almost certain (> 99.9 %)",
     "jetzt knapp? nein; knapp am 6. April 2027? fast sicher (> 99,9 %)"},
    {"orderAgain", noNumberDoes, "new kit would itself expire within this period: order again",
     "neue Ausrüstung liefe selbst in diesem Zeitraum ab: nachbestellen"},
    {"ages", agesAlike, "age makes no difference", "das Alter macht keinen Unterschied"},
    {"forecast", app::planCaution,
     "A forecast is an estimate from the club's own record. It does not replace looking at the kit, and "
     "where "
     "a day printed on a thing is earlier, that day holds.",
     "Eine Vorhersage ist eine Schätzung aus dem eigenen Protokoll des Vereins. Sie ersetzt nicht, die "
     "Ausrüstung anzusehen, und wo ein aufgedruckter Tag früher ist, gilt er."},
    {"horizon", [] { return errorOf(core::ErrorCode::HorizonOutOfRange, "0"); },
     "a horizon of 0 months is not possible", "0 Monate voraus ist nicht möglich"},
    {"confidence", [] { return errorOf(core::ErrorCode::ConfidenceOutOfRange, "2"); },
     "a confidence of 2 is not possible", "eine Sicherheit von 2 ist nicht möglich"},
    {"launch", [] { return app::nameInWords(core::Phase::Launch); }, "launch check", "Auslaufprüfung"},
    {"return", [] { return app::nameInWords(core::Phase::Return); }, "return check", "Rückkehrprüfung"},
    {"writtenOff", [] { return app::nameInWords(core::ItemState::WrittenOff); }, "written off",
     "ausgesondert"},
    {"unserviceable", [] { return app::nameInWords(core::ItemState::Unserviceable); }, "unserviceable",
     "gesperrt"},
};

class MendedWords : public testing::TestWithParam<Row> {
protected:
    void TearDown() override { app::speak("en"); }
};

TEST_P(MendedWords, areSaidInBothLanguages) {
    app::speak("en");
    EXPECT_EQ(GetParam().say().toStdString(), GetParam().english);
    app::speak("de");
    EXPECT_EQ(GetParam().say().toStdString(), GetParam().german);
}

INSTANTIATE_TEST_SUITE_P(Each, MendedWords, testing::ValuesIn(rows),
                         [](const auto& info) { return std::string(info.param.name); });

} // namespace
