// The pictures of docs/screens of the gear officer's plans: the demo club on a day of its own.
//     gui_plans_screens FOLDER

#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
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
    const auto check = club.checks().open("Grebe", phase, moment);
    if (!check || !club.checks().giveNames(check->check, {"Petra Lund", "Sami Reeve"}, moment)) return;
    const auto kit = club.kit().labelsOfBoat("Grebe");
    for (const core::TagLabel& tag : *kit)
        if (!club.checks().scan(check->check, tag.code, core::SeenBy::Camera, moment)) return;
    if (!club.checks().sign(check->check, "Petra Lund", "Capsized dinghy off the reeds", moment)) return;
}

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
    app::GearOffice& office = screens.office();
    office.show();

    auto* due = open<app::DuePage>(office, "due", &app::DuePage::shown);
    screens.take("due");
    due->findChild<QPushButton*>("dueTableButton")->click();
    screens.take("due-table");
    office.showPage("ready");
    auto* ready = qobject_cast<app::ReadyPage*>(office.page("ready"));
    ready->makePlan();
    waitFor([&] { return !ready->moves().lines().empty(); });
    screens.take("ready");
    auto* replace = open<app::ReplacePage>(office, "replace", &app::ReplacePage::planned);
    auto* table = replace->findChild<app::PlainTable*>("replaceTable");
    table->choose(QStringLiteral("first-aid kit\x1f"));
    screens.take("replace");
    table->choose(QStringLiteral("knife\x1f"));
    replace->findChild<QRadioButton*>("replaceLifeChoice")->setChecked(true);
    screens.take("replace-life");
    replace->findChild<QRadioButton*>("replaceArrivedChoice")->setChecked(true);
    screens.take("replace-arrived");
    open<app::TagsPage>(office, "tags", &app::TagsPage::shown);
    screens.take("tags");
    office.showPage("record");
    auto* record = qobject_cast<app::RecordPage*>(office.page("record"));
    auto* boats = record->findChild<QComboBox*>("evidenceBoatBox");
    waitFor([&] { return boats->count() > 0; });
    boats->setCurrentText("Grebe");
    record->findChild<QLineEdit*>("evidenceWhenEdit")->setText("2026-03-14 06:00");
    bool isAnswered = false;
    QObject::connect(&record->evidencePanel(), &app::EvidencePanel::shown, record,
                     [&] { isAnswered = true; });
    record->evidencePanel().look();
    waitFor([&] { return isAnswered; });
    screens.take("record-evidence");
    record->showPanel(record->historyPanel());
    bool isTold = false;
    QObject::connect(&record->historyPanel(), &app::HistoryPanel::shown, record, [&] { isTold = true; });
    auto* names = record->findChild<QComboBox*>("historyNameBox");
    waitFor([&] { return names->findText("Grebe") >= 0; });
    names->setCurrentText("Grebe");
    emit names->activated(names->currentIndex());
    waitFor([&] { return isTold; });
    screens.take("record-history");
    record->showPanel(record->verifyPanel());
    bool isVerified = false;
    QObject::connect(&record->verifyPanel(), &app::VerifyPanel::shown, record, [&] { isVerified = true; });
    record->verifyPanel().verify();
    waitFor([&] { return isVerified; });
    screens.take("record-verify");
    return screens.isWritten() ? 0 : 3;
}
