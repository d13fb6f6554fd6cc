#include "core/answers/service_round.h"
#include "core/club/club_checks.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_pins.h"
#include "tests/app/gui/keys_alone.h"

#include <algorithm>

namespace {

// Of demo/club: life jackets at their places, one on the drying rack with a yearly service, and the only
// gear officer.
const QString jacketL = "KT017638PE", jacketM = "K30268QHAF", jacketOfReeds = "K5M9AR38J5",
              jacketOnRack = "KG7RCVBA55";
const QString officer = "Joss Iveny";

/// What a gear officer does at a bench, at a store and in the register, without a mouse.
class KeysAtTheBench : public support::KeysAlone {
protected:
    core::Item storedItem(const QString& tag) { return *stored().kit().item(tag.toStdString()); }
    std::vector<core::ServiceRecord> servicesToday(const QString& tag) {
        std::vector<core::ServiceRecord> found = stored().kit().itemRecord(tag.toStdString())->services;
        found.erase(std::remove_if(found.begin(), found.end(),
                                   [](const auto& each) { return each.day != DemoClub::today(); }),
                    found.end());
        return found;
    }
    std::vector<core::Happening> happenings(const QString& tag) {
        return stored().kit().itemRecord(tag.toStdString())->happenings;
    }
    core::KitType kitType(const std::string& name) {
        for (const core::KitType& each : stored().register_().kitTypes())
            if (each.name == name) return each;
        return {};
    }
    void openKit(const QString& tag) {
        hand().showPage("Kit", "Alt+3");
        hand().fill("kitSearchEdit", tag);
        hand().key(Qt::Key_Return);
        hand().find("kitItemPanel");
    }
    void openPerson(const QString& name) {
        hand().showPage("Register", "Ctrl+Alt+3");
        hand().choose("registerSheetBox", "people");
        hand().chooseRow("registerTable", name);
        hand().key(Qt::Key_Return);
    }
    void typePin(const char* field, const char* pin) { hand().fill(field, pin); }
    std::string noteOf(const char* person) {
        return stored().register_().rowNamed(core::SheetId::People, person)->back();
    }
};

} // namespace

TEST_F(KeysAtTheBench, kitIsShownToTheBenchOneFailsAndTheServiceIsRecorded) {
    begin();
    hand().showPage("Bench", "Alt+4");
    hand().choose("benchRuleBox", "float test");
    hand().choose("benchByBox", "Petra Lund");
    hand().scan(jacketL);
    hand().fill("codeEdit", "k302 68qh af");
    hand().key(Qt::Key_Return);
    hand().pressLine("benchList", "scan k302 68qh af");
    hand().fill("benchNoteEdit", "in the lake");
    hand().press("benchRecordButton");
    ASSERT_TRUE(comesTrue([&] { return servicesToday(jacketL).size() == 1; }));
    EXPECT_TRUE(servicesToday(jacketL)[0].passed);
    ASSERT_EQ(servicesToday(jacketM).size(), 1u);
    EXPECT_FALSE(servicesToday(jacketM)[0].passed);
    EXPECT_EQ(storedItem(jacketM).state, core::ItemState::Unserviceable);
}

TEST_F(KeysAtTheBench, kitThatFailedIsReleasedAndOtherKitWrittenOff) {
    {
        auto club = stored(core::Club::Access::ReadWrite);
        ASSERT_TRUE(club.kit().recordService(
            {"float test", today(), officer.toStdString(), false, {}, {jacketM.toStdString()}}, moment()));
    }
    begin();
    openKit(jacketM);
    hand().choose("officerBox", officer);
    hand().press("kitReleaseButton");
    EXPECT_TRUE(comesTrue([&] { return storedItem(jacketM).state == core::ItemState::Serviceable; }));
    openKit(jacketL);
    hand().choose("kitWriteOffReasonBox", "worn");
    hand().press("kitWriteOffButton");
    waitOutADoubleClick();
    hand().press("kitWriteOffButton"); // asked once more
    EXPECT_TRUE(comesTrue([&] { return storedItem(jacketL).state == core::ItemState::WrittenOff; }));
}

TEST_F(KeysAtTheBench, aJacketThatInflatedIsRecordedAndItsRecordWithdrawn) {
    begin();
    openKit(jacketOfReeds);
    hand().choose("officerBox", officer);
    const std::size_t before = happenings(jacketOfReeds).size();
    hand().press("happenedButton");
    ASSERT_TRUE(comesTrue([&] { return happenings(jacketOfReeds).size() == before + 1; }));
    EXPECT_EQ(happenings(jacketOfReeds).back().event, "inflated");
    EXPECT_EQ(happenings(jacketOfReeds).back().day, today());
    const std::size_t records = stored().kit().serviceRecords(jacketOfReeds.toStdString()).size();
    hand().press("recordErrorButton");
    hand().fill("recordErrorReasonEdit", "it was another jacket");
    hand().key(Qt::Key_Return); // to its button
    hand().key(Qt::Key_Space);
    EXPECT_TRUE(comesTrue(
        [&] { return stored().kit().serviceRecords(jacketOfReeds.toStdString()).size() < records; }));
}

TEST_F(KeysAtTheBench, aPinIsSetUnlocksAndLocksAgain) {
    begin();
    openPerson(officer);
    hand().press("registerPinButton");
    typePin("pinNewEdit", "4711");
    typePin("pinAgainEdit", "4711");
    hand().press("pinSetButton");
    ASSERT_TRUE(comesTrue([&] { return stored().pins().isSet(officer.toStdString()); }));
    hand().press("registerBackButton");
    openPerson("Petra Lund");
    hand().fill("cell_note", "swims");
    hand().press("registerSaveButton");
    typePin("unlockPinEdit", "4711");
    hand().press("unlockButton");
    ASSERT_TRUE(comesTrue([&] { return noteOf("Petra Lund") == "swims"; }));
    auto* mark = window().findChild<QWidget*>("lockMark");
    ASSERT_TRUE(comesTrue([&] { return mark->isVisible(); }));
    hand().key(Qt::Key_K, Qt::ControlModifier | Qt::ShiftModifier); // as the menu Club says
    ASSERT_TRUE(comesTrue([&] { return !mark->isVisible(); }));
    openPerson("Sami Reeve");
    hand().fill("cell_note", "drives the van");
    hand().press("registerSaveButton");
    hand().press("unlockLeaveButton");
    EXPECT_TRUE(says("registerRowSaidLabel", "a gear officer's to do"));
    EXPECT_EQ(noteOf("Sami Reeve"), "");
}

TEST_F(KeysAtTheBench, aSizeAndALifeRuleOfAKitTypeAreWritten) {
    begin();
    hand().showPage("Register", "Ctrl+Alt+3");
    hand().choose("officerBox", officer);
    hand().choose("registerSheetBox", "kit types");
    hand().chooseRow("registerTable", "life jacket");
    hand().press("registerNewSizeButton");
    hand().fill("cell_size", "XXL");
    hand().fill("cell_mass_low_kg", "110");
    hand().press("registerSaveButton");
    ASSERT_TRUE(comesTrue([&] { return kitType("life jacket").findSize("XXL") != nullptr; }));
    EXPECT_EQ(kitType("life jacket").findSize("XXL")->massKg.low, 110);
    ASSERT_TRUE(says("registerSaidLabel", "saved"));
    hand().chooseRow("registerTable", "whistle");
    hand().press("registerNewRuleButton");
    hand().fill("cell_rule", "yearly look");
    hand().choose("cell_kind", "inspect");
    hand().fill("cell_n", "12");
    hand().fill("cell_source", "decision of the club");
    hand().press("registerSaveButton");
    ASSERT_TRUE(comesTrue([&] { return !kitType("whistle").rules.empty(); }));
    EXPECT_EQ(kitType("whistle").rules.front().name, "yearly look");
}

TEST_F(KeysAtTheBench, anEventIsBegunAndEnded) {
    begin();
    hand().fill("todaysEventBox", "Youth day");
    hand().key(Qt::Key_Return); // to the button
    hand().press("beginEventButton");
    ASSERT_TRUE(comesTrue([&] { return stored().events().held(moment().at).has_value(); }));
    EXPECT_EQ(stored().events().held(moment().at)->event, "Youth day");
    hand().press("endEventButton");
    EXPECT_TRUE(comesTrue([&] { return !stored().events().held(moment().at); }));
}

TEST_F(KeysAtTheBench, aStoreIsCountedAndSigned) {
    begin();
    hand().showPage("Stocktake", "Alt+5");
    hand().choose("stocktakePlaceBox", "Drying rack");
    hand().press("stocktakeBeginButton");
    ASSERT_TRUE(says("stocktakeSummaryLabel", "Drying rack"));
    hand().fill("codeEdit", jacketOnRack);
    hand().key(Qt::Key_Return);
    ASSERT_TRUE(says("saidLabel", "life jacket"));
    hand().choose("stocktakeByBox", "Petra Lund");
    hand().press("stocktakeSignButton");
    EXPECT_TRUE(comesTrue([&] { return stored().checks().unfinished().empty(); }));
    EXPECT_TRUE(comesTrue([&] { return storedItem(jacketOfReeds).state == core::ItemState::Missing; }));
    EXPECT_EQ(storedItem(jacketOnRack).state, core::ItemState::Serviceable);
}
