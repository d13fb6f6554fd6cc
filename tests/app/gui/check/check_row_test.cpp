#include "app/gui/check/check_row.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace {

using app::CheckRow;
using app::Mark;
using Section = CheckRow::Section;

core::CheckAnswer answerWith(std::vector<core::LineAnswer> lines, std::vector<core::Finding> findings) {
    core::CheckAnswer answer{core::Location::boat("Teal"), core::Phase::Launch,
                             *core::CalendarDay::from(2026, 3, 14)};
    answer.lines = std::move(lines);
    answer.findings = std::move(findings);
    return answer;
}

core::LineAnswer line(const char* kitType, int wanted, std::vector<core::LineItem> items = {}) {
    core::LineAnswer made;
    made.line.kitType = kitType;
    made.wanted = wanted;
    made.counted = static_cast<int>(
        std::count_if(items.begin(), items.end(), [](const core::LineItem& item) { return item.counts; }));
    made.items = std::move(items);
    return made;
}

core::Finding finding(core::FindingKind kind, core::Severity severity, const char* kitType,
                      const char* code) {
    core::Finding made;
    made.kind = kind;
    made.severity = severity;
    made.kitType = kitType;
    made.item = {code, code};
    return made;
}

const CheckRow* find(const std::vector<CheckRow>& rows, const QString& title) {
    const auto found = std::find_if(
        rows.begin(), rows.end(), [&](const CheckRow& row) { return row.title == title && !row.isHeading; });
    return found == rows.end() ? nullptr : &*found;
}

} // namespace

TEST(CheckRow, halfFilledLineIsStillToFindAndItsItemFound) {
    const auto rows =
        app::rowsOf(answerWith({line("paddle", 2, {{{"KAAA", "KAAA"}, "paddle", true, {}, {}}})},
                               {finding(core::FindingKind::Missing, core::Severity::Stop, "paddle", "")}));
    ASSERT_EQ(rows.size(), 4u); // two headings, two rows
    EXPECT_EQ(rows[1].section, Section::StillToFind);
    EXPECT_EQ(rows[1].aside, "1 of 2");
    EXPECT_EQ(rows[3].section, Section::Found);
    EXPECT_EQ(rows[3].code, "KAAA");
}

TEST(CheckRow, itemThatDoesNotCountIsToLookAt) {
    const auto rows = app::rowsOf(
        answerWith({line("knife", 1, {{{"KBBB", "KBBB"}, "knife", false, {}, {}}})},
                   {finding(core::FindingKind::Missing, core::Severity::Stop, "knife", ""),
                    finding(core::FindingKind::Unserviceable, core::Severity::Stop, "knife", "KBBB")}));
    const auto look =
        std::find_if(rows.begin(), rows.end(), [](const CheckRow& row) { return row.code == "KBBB"; });
    ASSERT_NE(look, rows.end());
    EXPECT_EQ(look->mark, Mark::Look);
    EXPECT_FALSE(look->remark.isEmpty());
    EXPECT_EQ(rows[0].aside, "1");
}

TEST(CheckRow, itemDueSoonStaysFoundWithItsRemark) {
    core::Finding soon = finding(core::FindingKind::DueSoon, core::Severity::Remark, "radio", "KCCC");
    soon.due = core::RuleDue{};
    soon.due->due = core::CalendarDay::from(2026, 4, 1);
    const auto rows =
        app::rowsOf(answerWith({line("radio", 1, {{{"KCCC", "KCCC"}, "radio", true, {}, {}}})}, {soon}));
    const CheckRow* radio = find(rows, "radio");
    ASSERT_NE(radio, nullptr);
    EXPECT_EQ(radio->mark, Mark::Found);
    EXPECT_TRUE(radio->remarkIsLook);
}

TEST(CheckRow, itemWhoseTagWearsOutStaysFoundAndSaysSo) {
    const auto remarkWith = [](std::optional<double> print) {
        const auto rows = app::rowsOf(
            answerWith({line("radio", 1, {{{"KCCC", "KCCC"}, "radio", true, {}, {}, print}})}, {}));
        const CheckRow* radio = find(rows, "radio");
        return radio && radio->mark == Mark::Found && !radio->remarkIsLook ? radio->remark
                                                                           : QString("another");
    };
    EXPECT_EQ(remarkWith(1.9), "Its tag is wearing out: print a new one.");
    EXPECT_EQ(remarkWith(2.0), "");
    EXPECT_EQ(remarkWith({}), "");
}

TEST(CheckRow, otherBoatsItemCountsAndIsToLookAtOnce) {
    core::Finding other = finding(core::FindingKind::OtherBoat, core::Severity::Remark, "knife", "KDDD");
    other.boat = "Coot";
    const auto rows = app::rowsOf(
        answerWith({line("knife", 1, {{{"KDDD", "KDDD"}, "knife", true, {}, {}}})},
                   {other, finding(core::FindingKind::WasMissing, core::Severity::Remark, "knife", "KDDD")}));
    EXPECT_EQ(std::count_if(rows.begin(), rows.end(), [](const CheckRow& row) { return row.code == "KDDD"; }),
              1);
    EXPECT_EQ(find(rows, "knife")->mark, Mark::Look);
    EXPECT_TRUE(find(rows, "knife")->counts);
}

TEST(CheckRow, pointsSayWhatIsMeasuredAndTheRange) {
    core::CheckAnswer answer = answerWith({}, {});
    core::PointAnswer bow;
    bow.point = {"bow chamber", core::PointKind::Measure, "kPa", {18, 22}, true, ""};
    bow.value = 25;
    bow.state = core::PointState::OutOfRange;
    core::PointAnswer run;
    run.point = {"engine run", core::PointKind::Timed, "s", {60, {}}, true, ""};
    answer.points = {bow, run};
    const auto rows = app::rowsOf(answer);
    EXPECT_EQ(find(rows, "bow chamber")->aside, "25 kPa");
    EXPECT_EQ(find(rows, "bow chamber")->mark, Mark::Look);
    EXPECT_TRUE(find(rows, "bow chamber")->remark.contains("18 to 22"));
    EXPECT_TRUE(find(rows, "engine run")->remark.contains("at least 1:00"));
    EXPECT_EQ(find(rows, "engine run")->mark, Mark::StillToFind);
}

TEST(CheckRow, isReadAloudAsWords) {
    const auto rows = app::rowsOf(answerWith({line("knife", 1)}, {}));
    EXPECT_EQ(find(rows, "knife")->aloud(), "still to find: knife, one");
}

TEST(CheckRow, whoWearsItAndWhyStandsOnTheLine) {
    core::LineItem jacket{{"KAAA", "KAAA"}, "life jacket", true, "Ada Marsh", {}};
    core::LineItem whistle{{"KBBB", "KBBB"}, "whistle", true, "Ada Marsh", {}};
    const auto answer = answerWith({line("life jacket", 1, {jacket}), line("whistle", 1, {whistle})}, {});
    app::CheckContext context;
    context.worn["KAAA"].size = "M";
    context.worn["KBBB"].person = "Ada Marsh";
    const auto rows = app::rowsOf(answer, context);
    EXPECT_EQ(find(rows, "life jacket")->remark, "for Ada Marsh: size M fits by the club's table");
    EXPECT_EQ(find(rows, "whistle")->remark, "Ada Marsh's own");
}

TEST(CheckRow, fitThatWasNotCheckedIsNotSaidToFit) {
    core::LineItem jacket{{"KAAA", "KAAA"}, "life jacket", true, "Ada Marsh", {}};
    auto unchecked = finding(core::FindingKind::FitNotChecked, core::Severity::Remark, "life jacket", "");
    unchecked.people = {"Ada Marsh"};
    app::CheckContext context;
    context.worn["KAAA"].size = "M";
    const auto rows = app::rowsOf(answerWith({line("life jacket", 1, {jacket})}, {unchecked}), context);
    EXPECT_EQ(find(rows, "life jacket")->remark, "for Ada Marsh: size M, fit not checked");
}
