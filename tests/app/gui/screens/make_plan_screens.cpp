// The pictures of docs/screens of the gear officer's plans: the demo club on a day of its own.
//     gui_plans_screens FOLDER

#include "tests/app/gui/screens/screens.h"

#include "app/gui/gear/due/due_page.h"
#include "app/gui/gear/ready/ready_page.h"
#include "app/gui/gear/record/evidence_panel.h"
#include "app/gui/gear/record/history_panel.h"
#include "app/gui/gear/record/record_page.h"
#include "app/gui/gear/record/verify_panel.h"
#include "app/gui/gear/replace/replace_page.h"
#include "app/gui/gear/tags/tags_page.h"
#include "app/gui/widgets/plain_table.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QRadioButton>

namespace {

using support::at;
using support::waitFor;

/// A check of Grebe with all its kit, so that there is evidence to look up.
void checkGrebe(core::Club& club, core::Phase phase, core::Moment moment) {
    const std::string check =
        support::checkWithAllKit(club, "Grebe", phase, moment, {"Petra Lund", "Sami Reeve"});
    if (!club.checks().sign(check, "Petra Lund", "Capsized dinghy off the reeds", moment)) return;
}

/// Shows a page and waits for the signal that says it is filled.
template <class Page, class From>
Page* open(app::GearOffice& office, const char* id, void (From::*filled)()) {
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

/// Until what was asked of that part is shown.
template <class Ask>
void waitForShown(app::GearPart& part, Ask ask) {
    bool isShown = false;
    const auto waiting =
        QObject::connect(&part, &app::GearPart::shown, &part, [&isShown] { isShown = true; });
    ask();
    waitFor([&] { return isShown; });
    QObject::disconnect(waiting);
}

void takeDue(support::ScreensOffice& screens) {
    auto* due = open<app::DuePage>(screens.office(), "due", &app::DuePage::shown);
    screens.take("due");
    due->findChild<QPushButton*>("dueTableButton")->click();
    screens.take("due-table");
}

void takeReady(support::ScreensOffice& screens) {
    app::GearOffice& office = screens.office();
    office.showPage("ready");
    auto* ready = qobject_cast<app::ReadyPage*>(office.page("ready"));
    ready->makePlan();
    waitFor([&] { return !ready->moves().lines().empty(); });
    screens.take("ready");
}

void takeReplace(support::ScreensOffice& screens) {
    auto* replace = open<app::ReplacePage>(screens.office(), "replace", &app::ReplacePage::planned);
    auto* table = replace->findChild<app::PlainTable*>("replaceTable");
    table->choose(QStringLiteral("first-aid kit\x1f"));
    screens.take("replace");
    emit table->rowPressed(table->chosen());
    screens.take("replace-stock");
    table->choose(QStringLiteral("knife\x1f"));
    replace->findChild<QRadioButton*>("replaceLifeChoice")->setChecked(true);
    screens.take("replace-life");
    replace->findChild<QRadioButton*>("replaceArrivedChoice")->setChecked(true);
    screens.take("replace-arrived");
}

void takeRecord(support::ScreensOffice& screens) {
    app::GearOffice& office = screens.office();
    office.showPage("record");
    auto* record = qobject_cast<app::RecordPage*>(office.page("record"));
    auto* boats = record->findChild<QComboBox*>("evidenceBoatBox");
    waitFor([&] { return boats->count() > 0; });
    boats->setCurrentText("Grebe");
    record->findChild<QLineEdit*>("evidenceWhenEdit")->setText("2026-03-14 06:00");
    waitForShown(record->evidencePanel(), [&] { record->evidencePanel().look(); });
    screens.take("record-evidence");
    record->showPanel(record->historyPanel());
    auto* names = record->findChild<QComboBox*>("historyNameBox");
    waitFor([&] { return names->findText("Grebe") >= 0; });
    names->setCurrentText("Grebe");
    waitForShown(record->historyPanel(), [&] { emit names->activated(names->currentIndex()); });
    screens.take("record-history");
    record->showPanel(record->verifyPanel());
    waitForShown(record->verifyPanel(), [&] { record->verifyPanel().verify(); });
    screens.take("record-verify");
}

} // namespace

int main(int argc, char** argv) {
    const support::ScreensProgram program(argc, argv);
    if (!program.hasFolder()) return 2;
    {
        auto club = program.makeClub();
        if (!club) return 3;
        checkGrebe(*club, core::Phase::Launch, at("2026-03-14T05:20:00Z"));
        checkGrebe(*club, core::Phase::Return, at("2026-03-14T06:30:00Z"));
    }
    support::ScreensOffice screens(program);
    if (!screens.isOpen()) return 3;
    screens.office().show();
    takeDue(screens);
    takeReady(screens);
    takeReplace(screens);
    open<app::TagsPage>(screens.office(), "tags", &app::TagsPage::shown);
    screens.take("tags");
    takeRecord(screens);
    return screens.isWritten() ? 0 : 3;
}
