// The pictures of docs/screens of the gear officer's plans: the demo club on a day of its own.
//     gear_plans_screens FOLDER

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QLineEdit>
#include <QMainWindow>
#include <QPushButton>
#include <QRadioButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTextStream>

#include <filesystem>

#include "app/desk/club/club_thread.h"
#include "app/desk/gear/due/due_page.h"
#include "app/desk/gear/office/gear_office.h"
#include "app/desk/gear/office/gear_pages.h"
#include "app/desk/gear/ready/ready_page.h"
#include "app/desk/gear/record/evidence_panel.h"
#include "app/desk/gear/record/history_panel.h"
#include "app/desk/gear/record/record_page.h"
#include "app/desk/gear/record/verify_panel.h"
#include "app/desk/gear/replace/replace_page.h"
#include "app/desk/gear/shared/plain_table.h"
#include "app/desk/gear/tags/tags_page.h"
#include "app/desk/look/dress.h"
#include "app/desk/look/palette.h"
#include "app/desk/look/sounds.h"
#include "core/club.h"
#include "tests/support/wait_for.h"

namespace {

using support::waitFor;

core::CalendarDay today() {
    return *core::CalendarDay::from(2026, 3, 14);
}

core::Moment at(const char* instant) {
    return {*core::Instant::parse(instant), today()};
}

/// A check of Grebe with all its kit, so that there is evidence to look up.
void checkGrebe(core::Club& club, core::Phase phase, core::Moment moment) {
    const auto check = club.openCheck("Grebe", phase, moment);
    if (!check || !club.giveNames(check->check, {"Petra Lund", "Sami Reeve"}, moment)) return;
    const auto kit = club.kitOf("Grebe");
    for (const core::TagLabel& tag : *kit)
        if (!club.scan(check->check, tag.code, core::SeenBy::Camera, moment)) return;
    if (!club.sign(check->check, "Petra Lund", "Capsized dinghy off the reeds", moment)) return;
}

/// Pictures of the office's page in the themes and sizes asked for.
class Pictures {
public:
    Pictures(QMainWindow& window, QString folder)
        : m_window(window)
        , m_folder(std::move(folder)) {}

    bool take(const QString& name, bool all) {
        bool isWritten = true;
        const QStringList themes = all ? QStringList{"light", "sun", "dark"} : QStringList{"light"};
        const QList<QSize> sizes = all ? QList<QSize>{{1280, 800}, {1920, 1080}} : QList<QSize>{{1280, 800}};
        for (const QString& theme : themes)
            for (const QSize& size : sizes) {
                app::dress(*qApp, app::paletteOf(theme));
                m_window.resize(size);
                waitFor([] { return false; }, std::chrono::milliseconds(200)); // layouts settle
                isWritten &= m_window.grab().save(QStringLiteral("%1/%2-%3-%4x%5.png")
                                                      .arg(m_folder, name, theme)
                                                      .arg(size.width())
                                                      .arg(size.height()));
            }
        return isWritten;
    }

private:
    QMainWindow& m_window;
    QString m_folder;
};

/// Shows a page and waits for the signal that says it is filled.
template <class Page, class Signal>
Page* open(app::GearOffice& office, const char* id, Signal filled) {
    office.showPage(id);
    auto* page = qobject_cast<Page*>(office.page(id));
    if (!page) return nullptr;
    bool isFilled = false;
    QObject::connect(page, filled, page, [&isFilled] { isFilled = true; });
    page->hide();
    page->show();
    waitFor([&] { return isFilled; });
    page->disconnect(page);
    return page;
}

} // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir scratch;
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, scratch.path());
    QApplication application(argc, argv);
    QApplication::setOrganizationName("tholepin-screens");
    if (argc != 2 || !QDir().mkpath(argv[1])) {
        QTextStream(stderr) << "usage: gear_plans_screens FOLDER\n";
        return 2;
    }
    app::dress(application, app::paletteOf("light"));
    const std::filesystem::path file = scratch.filePath("club.tholepin").toStdString();
    {
        auto club = core::Club::create(file, "Quillmere Lake Rescue");
        if (!club || !club->importRegister(DEMO_CLUB_FOLDER, today(), false)) return 3;
        checkGrebe(*club, core::Phase::Launch, at("2026-03-14T05:20:00Z"));
        checkGrebe(*club, core::Phase::Return, at("2026-03-14T06:30:00Z"));
    }
    app::ClubThread club;
    app::Sounds sounds;
    QMainWindow window;
    auto& office = *new app::GearOffice(&window);
    bool isOpen = false;
    club.open(file, [&](const core::Outcome& opened) { isOpen = static_cast<bool>(opened); });
    if (!waitFor([&] { return isOpen; })) return 3;
    app::addGearPages(office,
                      {club, [] { return at("2026-03-14T06:40:00Z"); }, sounds, {}, [] { return false; }});
    window.setCentralWidget(&office);
    window.resize(1280, 800);
    window.show();
    Pictures pictures(window, argv[1]);
    bool isWritten = true;

    auto* due = open<app::DuePage>(office, "due", &app::DuePage::shown);
    isWritten &= pictures.take("due", true);
    due->findChild<QPushButton*>("dueTableButton")->click();
    isWritten &= pictures.take("due-table", false);
    office.showPage("ready");
    auto* ready = qobject_cast<app::ReadyPage*>(office.page("ready"));
    ready->makePlan();
    waitFor([&] { return !ready->moves().lines().empty(); });
    isWritten &= pictures.take("ready", true);
    auto* replace = open<app::ReplacePage>(office, "replace", &app::ReplacePage::planned);
    auto* table = replace->findChild<app::PlainTable*>("replaceTable");
    table->choose(QStringLiteral("first-aid kit\x1f"));
    isWritten &= pictures.take("replace", true);
    table->choose(QStringLiteral("knife\x1f"));
    replace->findChild<QRadioButton*>("replaceLifeChoice")->setChecked(true);
    isWritten &= pictures.take("replace-life", true);
    replace->findChild<QRadioButton*>("replaceArrivedChoice")->setChecked(true);
    isWritten &= pictures.take("replace-arrived", false);
    open<app::TagsPage>(office, "tags", &app::TagsPage::shown);
    isWritten &= pictures.take("tags", true);
    office.showPage("record");
    auto* record = qobject_cast<app::RecordPage*>(office.page("record"));
    auto* boats = record->findChild<QComboBox*>("evidenceBoatBox");
    waitFor([&] { return boats->count() > 0; });
    boats->setCurrentText("Grebe");
    record->findChild<QLineEdit*>("evidenceWhenEdit")->setText("2026-03-14 06:00");
    bool isAnswered = false;
    QObject::connect(&record->evidencePanel(), &app::EvidencePanel::answered, record,
                     [&] { isAnswered = true; });
    record->evidencePanel().look();
    waitFor([&] { return isAnswered; });
    isWritten &= pictures.take("record-evidence", true);
    record->showPanel(record->historyPanel());
    bool isTold = false;
    QObject::connect(&record->historyPanel(), &app::HistoryPanel::told, record, [&] { isTold = true; });
    record->historyPanel().tell("Grebe");
    waitFor([&] { return isTold; });
    isWritten &= pictures.take("record-history", false);
    record->showPanel(record->verifyPanel());
    bool isVerified = false;
    QObject::connect(&record->verifyPanel(), &app::VerifyPanel::verified, record, [&] { isVerified = true; });
    record->verifyPanel().verify();
    waitFor([&] { return isVerified; });
    isWritten &= pictures.take("record-verify", false);
    return isWritten ? 0 : 3;
}
