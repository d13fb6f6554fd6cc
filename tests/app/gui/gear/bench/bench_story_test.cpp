#include "core/club/club_kit.h"
#include "tests/app/gui/gear/gear_story.h"

using support::GearStory;

namespace {

// Of demo/club/items.csv: life jackets at their places, and an oarAtPlace, which has no float test.
constexpr const char* jacketL = "KT017638PE";
constexpr const char* jacketM = "K30268QHAF";
constexpr const char* oarAtPlace = "KFGQ9XHHKJ";

class BenchStory : public GearStory {
protected:
    std::vector<core::ServiceRecord> recordsOf(const char* code) {
        std::vector<core::ServiceRecord> today;
        const auto item = stored().kit().itemRecord(code);
        for (const core::ServiceRecord& record : item->services)
            if (record.day == GearStory::today()) today.push_back(record);
        return today;
    }
};

} // namespace

TEST_F(BenchStory, oneRecordForAllAndFailuresApart) {
    openOffice("bench");
    choose("benchRuleBox", "float test");
    EXPECT_EQ(child<QComboBox>("benchByBox")->currentText(), "Joss Iveny");
    EXPECT_FALSE(child("benchRecordButton")->isEnabled());
    focus("benchList");
    typeCode(jacketL);
    typeCode("k302 68qh af");
    EXPECT_EQ(headingOf("benchList", jacketM), "passed");
    press(Qt::Key_Home);
    press(Qt::Key_Return); // the newest stands on top: the M
    EXPECT_EQ(headingOf("benchList", jacketM), "failed");
    EXPECT_EQ(child<QPushButton>("benchRecordButton")->text(), "Record 1 passed, 1 failed");
    pressButton("benchRecordButton");

    ASSERT_EQ(recordsOf(jacketL).size(), 1u);
    EXPECT_TRUE(recordsOf(jacketL)[0].passed);
    EXPECT_EQ(recordsOf(jacketL)[0].rule, "float test");
    EXPECT_EQ(stored().kit().item(jacketL)->state, core::ItemState::Serviceable);
    ASSERT_EQ(recordsOf(jacketM).size(), 1u);
    EXPECT_FALSE(recordsOf(jacketM)[0].passed);
    EXPECT_EQ(stored().kit().item(jacketM)->state, core::ItemState::Unserviceable);
    EXPECT_EQ(headingOf("benchList", jacketL), "recorded as passed");
    EXPECT_EQ(headingOf("benchList", jacketM), "recorded as failed, and withdrawn");
    // Twelve months after the day of the record, by demo/club/life_rules.csv.
    EXPECT_EQ(rowOf("benchList", jacketL)->remark, "next due 14 March 2027");
}

TEST_F(BenchStory, whatTheRuleDoesNotFitIsSaidBeforeAndNotRecorded) {
    openOffice("bench");
    choose("benchRuleBox", "float test");
    focus("benchList");
    typeCode(oarAtPlace);
    typeCode("KZZZZZZZZZ");
    EXPECT_EQ(headingOf("benchList", oarAtPlace), "not for this rule");
    EXPECT_FALSE(child("benchRecordButton")->isEnabled());
    typeCode(jacketL);
    pressButton("benchRecordButton");
    EXPECT_EQ(headingOf("benchList", oarAtPlace), "not recorded");
    EXPECT_TRUE(recordsOf(oarAtPlace).empty());
    EXPECT_EQ(recordsOf(jacketL).size(), 1u);
}

TEST_F(BenchStory, anEarlierDayIsRecordedAndALaterOneRefused) {
    openOffice("bench");
    choose("benchRuleBox", "float test");
    focus("benchList");
    typeCode(jacketL);
    typeInto("benchDayEdit", "2026-03-20");
    pressButton("benchRecordButton");
    EXPECT_EQ(stored().kit().itemRecord(jacketL)->services.size(), 1u);
    typeInto("benchDayEdit", "2026-03-12");
    pressButton("benchRecordButton");
    const auto item = stored().kit().itemRecord(jacketL);
    ASSERT_EQ(item->services.size(), 2u);
    bool isRecorded = false;
    for (const core::ServiceRecord& record : item->services)
        isRecorded |= record.day.iso() == "2026-03-12";
    EXPECT_TRUE(isRecorded);
}

TEST_F(BenchStory, theNextTagBeginsANewRound) {
    openOffice("bench");
    choose("benchRuleBox", "float test");
    focus("benchList");
    typeCode(jacketL);
    pressButton("benchRecordButton");
    focus("benchList");
    typeCode(jacketM);
    EXPECT_EQ(headingOf("benchList", jacketL), "");
    EXPECT_EQ(headingOf("benchList", jacketM), "passed");
    pressButton("benchTakeBackButton");
    EXPECT_TRUE(rowsIn("benchList").empty());
}
