// Pictures of the gear officer's pages for docs/screens: the demo club after a training day, in every theme
// and two sizes.
//     desk_gear_screens FOLDER

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTextStream>

#include "app/desk/check/check_list_view.h"
#include "app/desk/club/club_thread.h"
#include "app/desk/gear/bench/bench_page.h"
#include "app/desk/gear/bench/stocktake_page.h"
#include "app/desk/gear/kit/kit_page.h"
#include "app/desk/gear/missing/event_page.h"
#include "app/desk/gear/office/gear_office.h"
#include "app/desk/gear/office/gear_pages.h"
#include "app/desk/gear/shared/plain_table.h"
#include "app/desk/look/dress.h"
#include "app/desk/look/palette.h"
#include "app/desk/look/sounds.h"
#include "core/club.h"
#include "core/register/manifest_record.h"
#include "tests/support/wait_for.h"

namespace {

using support::waitFor;

core::CalendarDay today() {
    return *core::CalendarDay::from(2026, 3, 14);
}

core::Moment at(const std::string& instant) {
    return {*core::Instant::parse(instant), today()};
}

/// A check of the boat's own kit, but for some that is missing and some that came along.
void check(core::Club& club, const std::string& boat, core::Phase phase,
           const std::vector<std::string>& people, const std::string& instant,
           const std::vector<std::string>& without, const std::vector<std::string>& with) {
    const auto open = club.openCheck(boat, phase, at(instant));
    if (!open || !club.giveNames(open->check, people, at(instant)) ||
        !club.giveEvent(open->check, "Spring training", at(instant)))
        return;
    std::vector<std::string> codes = with;
    const auto kit = club.kitOf(boat);
    for (const core::TagLabel& tag : *kit)
        if (std::find(without.begin(), without.end(), tag.code) == without.end()) codes.push_back(tag.code);
    for (const std::string& code : codes)
        if (!club.scan(open->check, code, core::SeenBy::Camera, at(instant))) return;
    if (!club.sign(open->check, people.front(), "training", at(instant))) return;
}

/// Three boats train; two rescue tubes change over and a tow line stays behind.
bool makeClub(const std::string& file) {
    auto club = core::Club::create(file, "Quillmere Lake Rescue");
    if (!club || !club->importRegister(DEMO_CLUB_FOLDER, today(), false)) return false;
    const std::string bitternsTube = "KPZ36AE62R", dabchicksTube = "KQ8SK0R3E2", bitternsLine = "KDVK4H6SRX",
                      dabchicksKnife = "KMRMQRZM66";
    const auto launch = core::Phase::Launch, back = core::Phase::Return;
    const core::ManifestOwner inflatables{core::ManifestOwner::Kind::BoatClass, "inflatable"};
    if (!club->changeManifest(inflatables, {.kitType = "radio", .quantity = 2, .note = "one is spare"},
                              "Joss Iveny", {core::Instant::now(), today()}))
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

class Screens {
public:
    Screens(app::GearOffice& office, app::ClubThread& club, QString folder)
        : m_office(office)
        , m_club(club)
        , m_folder(std::move(folder)) {}

    void settle() {
        for (int round = 0; round < 4; ++round) {
            bool isDone = false;
            m_club.ask(
                &m_office, [](core::Club&) { return true; }, [&](bool) { isDone = true; });
            waitFor([&] { return isDone; });
        }
    }

    void take(const char* name) {
        settle();
        for (const char* theme : {"light", "sun", "dark"})
            for (const QSize& size : {QSize(1280, 800), QSize(1920, 1080)}) {
                app::dress(*qApp, app::paletteOf(theme));
                m_office.window()->resize(size);
                waitFor([] { return false; }, std::chrono::milliseconds(150)); // layouts settle
                m_isWritten &= m_office.window()->grab().save(QStringLiteral("%1/gear-%2-%3-%4x%5.png")
                                                                  .arg(m_folder, name, theme)
                                                                  .arg(size.width())
                                                                  .arg(size.height()));
            }
    }

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
    template <class Widget>
    Widget* find(const char* name) {
        return m_office.page(m_office.currentPage())->findChild<Widget*>(name);
    }
    void show(const char* page) {
        m_office.showPage(page);
        settle();
    }
    bool isWritten() const { return m_isWritten; }

private:
    app::GearOffice& m_office;
    app::ClubThread& m_club;
    QString m_folder;
    bool m_isWritten = true;
};

void takeAll(Screens& screens) {
    screens.show("missing");
    screens.find<app::CheckListView>("missingList")
        ->setCurrentIndex(screens.find<app::CheckListView>("missingList")->model()->index(1, 0));
    screens.take("missing");
    screens.show("events");
    screens.take("events");
    screens.show("kit");
    screens.type("kitSearchEdit", "K5M9AR38J5");
    screens.find<QLineEdit>("kitSearchEdit")->setText("jacket");
    screens.take("kit");
    screens.press("newKitButton");
    screens.choose("newKitTypeBox", "life jacket");
    screens.take("kit-new");
    screens.show("bench");
    screens.choose("benchRuleBox", "float test");
    for (const char* code : {"KT017638PE", "K30268QHAF", "KG7RCVBA55", "KFGQ9XHHKJ", "KTY3P2SKK1"})
        screens.type("codeEdit", code);
    emit screens.find<app::CheckListView>("benchList")->kitPressed("KG7RCVBA55");
    screens.take("bench");
    screens.show("stocktake");
    screens.choose("stocktakePlaceBox", "Gear store");
    screens.press("stocktakeBeginButton");
    for (const char* code : {"KT017638PE", "KXYS7WCBXG", "K3QA8GHK3G", "KG7RCVBA55", "KFGQ9XHHKJ"})
        screens.type("codeEdit", code);
    screens.take("stocktake");
    screens.show("log");
    screens.find<app::CheckListView>("clubLogList")
        ->setCurrentIndex(screens.find<app::CheckListView>("clubLogList")->model()->index(1, 0));
    screens.take("log");
    screens.show("manifests");
    screens.choose("manifestOwnerBox", "Dabchick");
    screens.find<app::PlainTable>("manifestTable")->choose("paddle");
    screens.take("manifests");
    auto* versions = screens.find<app::CheckListView>("manifestVersionsList");
    versions->setCurrentIndex(versions->model()->index(1, 0));
    screens.take("manifests-earlier");
    versions->setCurrentIndex(versions->model()->index(0, 0));
    screens.find<QRadioButton>("manifestPointsChoice")->setChecked(true);
    screens.take("manifests-points");
}

} // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir scratch;
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, scratch.path());
    QApplication application(argc, argv);
    if (argc != 2) {
        QTextStream(stderr) << "usage: desk_gear_screens FOLDER\n";
        return 2;
    }
    const std::string file = scratch.filePath("club.tholepin").toStdString();
    if (!makeClub(file)) return 3;
    app::dress(application, app::paletteOf("light"));
    app::ClubThread club;
    bool isOpen = false;
    club.open(file, [&](const core::Outcome& opened) { isOpen = static_cast<bool>(opened); });
    if (!waitFor([&] { return isOpen; })) return 3;
    app::Sounds sounds;
    app::GearOffice office;
    app::addGearPages(office,
                      {club, [] { return at("2026-03-14T06:40:00Z"); }, sounds, {}, [] { return false; }});
    office.resize(1280, 800);
    office.showPage("missing");
    office.show();
    Screens screens(office, club, QString::fromLocal8Bit(argv[1]));
    takeAll(screens);
    return screens.isWritten() ? 0 : 3;
}
