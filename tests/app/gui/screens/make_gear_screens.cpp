// Pictures of the gear officer's pages for docs/screens: the demo club after a training day, in every theme
// and two sizes.
//     gui_gear_screens FOLDER

#include "core/club/club_checks.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_manifests.h"
#include "tests/app/gui/screens/screens.h"

#include "app/gui/widgets/plain_table.h"
#include "app/gui/widgets/row_list.h"
#include "core/register/manifest_record.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>

#include <algorithm>

namespace {

using support::at;

const char* const wornTag = "KPZ36AE62R"; ///< of Bittern's rescue tube

/// A check of the boat's own kit, but for some that is missing and some that came along.
void check(core::Club& club, const std::string& boat, core::Phase phase,
           const std::vector<std::string>& people, const std::string& instant,
           const std::vector<std::string>& without, const std::vector<std::string>& with) {
    const auto open = club.checks().open(boat, phase, at(instant));
    if (!open || !club.checks().giveNames(open->check, people, at(instant)) ||
        !club.events().fileUnder(open->check, "Spring training", at(instant)))
        return;
    std::vector<std::string> codes = with;
    const auto kit = club.kit().labelsOfBoat(boat);
    for (const core::TagLabel& tag : *kit)
        if (std::find(without.begin(), without.end(), tag.code) == without.end()) codes.push_back(tag.code);
    for (const std::string& code : codes)
        if (!club.checks().scan(open->check, support::tagOfPrint(code, code == wornTag ? 0.7 : 3.4),
                                core::SeenBy::Camera, at(instant)))
            return;
    if (!club.checks().sign(open->check, people.front(), "training", at(instant))) return;
}

/// Three boats train; two rescue tubes change over and a tow line stays behind.
bool makeClub(const support::ScreensProgram& program) {
    auto club = program.makeClub();
    if (!club) return false;
    const std::string bitternsTube = wornTag, dabchicksTube = "KQ8SK0R3E2", bitternsLine = "KDVK4H6SRX",
                      dabchicksKnife = "KMRMQRZM66";
    const auto launch = core::Phase::Launch, back = core::Phase::Return;
    const core::ManifestOwner inflatables{core::ManifestOwner::Kind::BoatClass, "inflatable"};
    if (!club->manifests().changeLine(inflatables,
                                      {.kitType = "radio", .quantity = 2, .note = "one is spare"},
                                      "Joss Iveny", {core::Instant::now(), support::screensDay()}))
        return false;
    check(*club, "Bittern", launch, {"Tobin Ashe", "Ines Varro"}, "2026-03-12T07:05:00Z", {}, {});
    check(*club, "Dabchick", launch, {"Marta Quill", "Hal Okoro"}, "2026-03-12T07:15:00Z", {dabchicksKnife},
          {});
    check(*club, "Bittern", back, {"Tobin Ashe", "Ines Varro"}, "2026-03-12T11:30:00Z",
          {bitternsTube, bitternsLine}, {dabchicksTube});
    check(*club, "Dabchick", back, {"Marta Quill", "Hal Okoro"}, "2026-03-12T11:45:00Z",
          {dabchicksTube, dabchicksKnife}, {bitternsTube});
    return true;
}

/// The office, used as a person does.
class Screens : public support::ScreensOffice {
public:
    using ScreensOffice::ScreensOffice;

    void type(const char* edit, const QString& text) {
        auto* field = find<QLineEdit>(edit);
        field->setText(text);
        emit field->returnPressed();
        settle();
    }
    void choose(const char* box, const QString& text) {
        find<QComboBox>(box)->setCurrentText(text);
        settle();
    }
    void press(const char* button) {
        find<QPushButton>(button)->click();
        settle();
    }
};

void takeKit(Screens& screens) {
    screens.show("kit");
    screens.take("gear-kit");
    auto* table = screens.find<app::PlainTable>("kitTable");
    static_cast<app::PlainTableModel*>(table->model())->setTicked({"KGNNWAZAVX", "KVP5CYVRE7"});
    emit table->ticksChanged();
    screens.settle();
    screens.find<QComboBox>("kitSeveralNameBox")->setEditText("Gear store");
    support::waitFor([&] { return screens.find<QLabel>("kitSeveralEffectsLabel")->isVisible(); });
    screens.take("gear-kit-several");
    screens.press("kitUntickButton");
    screens.type("kitSearchEdit", "K5M9AR38J5");
    screens.take("gear-kit-item");
    screens.press("recordErrorButton");
    screens.take("gear-kit-record-error");
    screens.press("recordErrorButton");
    screens.choose("kitWriteOffReasonBox", "worn");
    screens.press("kitWriteOffButton");
    screens.take("gear-kit-question");
    screens.press("kitChangeButton");
    screens.take("gear-kit-change");
    screens.type("kitSearchEdit", "KFRN1CCPVA");
    screens.take("gear-kit-written-off");
    screens.type("kitSearchEdit", wornTag);
    screens.take("gear-kit-worn-tag");
    screens.press("newKitButton");
    screens.choose("newKitTypeBox", "life jacket");
    screens.take("gear-kit-new");
}

void takeRegister(Screens& screens) {
    screens.show("register");
    auto* table = screens.find<app::PlainTable>("registerTable");
    table->choose("boat\x1E"
                  "grebe");
    emit table->rowPressed(table->chosen());
    screens.settle();
    screens.find<QLineEdit>("cell_check_every_days")->setText("soon");
    screens.find<QComboBox>("cell_boat_class")->setEditText("inflatable");
    support::waitFor([&] { return screens.find<QLabel>("cell_check_every_days_refusal")->isVisible(); });
    screens.take("gear-register-boat");
    screens.press("registerDiscardButton");
    screens.press("registerRenameButton");
    screens.take("gear-register-rename");
    screens.press("renameKeepButton");
    screens.press("registerNewButton");
    screens.find<QComboBox>("cell_boat")->setEditText("Heron");
    screens.find<QComboBox>("cell_boat_class")->setEditText("inflatible");
    screens.find<QComboBox>("cell_boat_class")->setFocus();
    support::waitFor([&] { return screens.find<QLabel>("registerWarningsLabel")->isVisible(); });
    screens.take("gear-register-new-boat");
    screens.press("registerDiscardButton");
    screens.choose("registerSheetBox", "kit types");
    table->choose(
        QString::fromStdString(std::string("life_rule\x1E") + "life jacket\x1F\x1F" + "float test"));
    screens.take("gear-register-kit-types");
    emit table->rowPressed(table->chosen());
    screens.settle();
    screens.find<QLineEdit>("cell_n")->setText("6");
    support::waitFor([&] { return screens.find<QLabel>("registerEffectsLabel")->isVisible(); });
    screens.take("gear-register-rule");
    screens.press("registerDiscardButton");
    screens.press("registerNewRuleButton");
    screens.take("gear-register-new-rule");
    screens.choose("registerSheetBox", "people");
    screens.take("gear-register-people");
    screens.press("registerClubButton");
    screens.take("gear-register-club");
    screens.press("renameKeepButton");
    screens.choose("registerSheetBox", "kit types");
    table->choose("kit_type\x1E"
                  "bailer");
    emit table->rowPressed(table->chosen());
    screens.settle();
    screens.take("gear-register-kit-type");
    screens.press("registerRemoveButton");
    screens.press("registerRemoveReallyTakeAwayButton");
    screens.take("gear-register-remove");
}

void takeAll(Screens& screens) {
    screens.show("missing");
    screens.find<app::RowList>("missingList")
        ->setCurrentIndex(screens.find<app::RowList>("missingList")->model()->index(1, 0));
    screens.take("gear-missing");
    screens.choose("writeOffReasonBox", "lost");
    screens.press("writeOffButton");
    screens.take("gear-missing-question");
    screens.show("events");
    screens.take("gear-events");
    takeKit(screens);
    takeRegister(screens);
    screens.show("bench");
    screens.choose("benchRuleBox", "float test");
    for (const char* code : {"KT017638PE", "K30268QHAF", "KG7RCVBA55", "KFGQ9XHHKJ", "KTY3P2SKK1"})
        screens.type("codeEdit", code);
    emit screens.find<app::RowList>("benchList")->rowPressed("scan KG7RCVBA55");
    screens.take("gear-bench");
    screens.show("stocktake");
    screens.choose("stocktakePlaceBox", "Gear store");
    screens.press("stocktakeBeginButton");
    screens.take("gear-stocktake-nothing-shown");
    for (const char* code : {"KT017638PE", "KXYS7WCBXG", "K3QA8GHK3G", "KG7RCVBA55", "KFGQ9XHHKJ"})
        screens.type("codeEdit", code);
    screens.take("gear-stocktake");
    screens.show("log");
    screens.find<app::RowList>("clubLogList")
        ->setCurrentIndex(screens.find<app::RowList>("clubLogList")->model()->index(1, 0));
    screens.take("gear-log");
    screens.show("manifests");
    screens.choose("manifestOwnerBox", "Dabchick");
    screens.find<app::PlainTable>("manifestTable")->choose("paddle");
    screens.take("gear-manifests");
    auto* versions = screens.find<app::RowList>("manifestVersionsList");
    versions->setCurrentIndex(versions->model()->index(1, 0));
    screens.take("gear-manifests-earlier");
    versions->setCurrentIndex(versions->model()->index(0, 0));
    screens.find<QRadioButton>("manifestPointsChoice")->setChecked(true);
    screens.find<app::PlainTable>("manifestTable")->choose("launch/keel chamber");
    screens.take("gear-manifests-points");
    screens.choose("manifestOwnerBox", "class inflatable");
    screens.find<app::PlainTable>("manifestTable")->choose("launch/keel chamber");
    screens.press("manifestPointTakeAwayButton");
    screens.take("gear-manifests-question");
}

} // namespace

int main(int argc, char** argv) {
    const support::ScreensProgram program(argc, argv);
    if (!program.hasFolder()) return 2;
    if (!makeClub(program)) return 3;
    Screens screens(program);
    if (!screens.isOpen()) return 3;
    takeAll(screens);
    return screens.isWritten() ? 0 : 3;
}
