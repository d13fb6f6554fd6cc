#include "app/gui/gear/office/gear_pages.h"

#include "app/gui/club/club_thread.h"
#include "app/gui/gear/bench/bench_page.h"
#include "app/gui/gear/bench/stocktake_page.h"
#include "app/gui/gear/due/due_page.h"
#include "app/gui/gear/exchange/exchange_page.h"
#include "app/gui/gear/kit/kit_page.h"
#include "app/gui/gear/log/log_page.h"
#include "app/gui/gear/manifests/manifests_page.h"
#include "app/gui/gear/missing/event_page.h"
#include "app/gui/gear/missing/missing_page.h"
#include "app/gui/gear/office/gear_office.h"
#include "app/gui/gear/ready/ready_page.h"
#include "app/gui/gear/record/history_panel.h"
#include "app/gui/gear/record/record_page.h"
#include "app/gui/gear/register/register_page.h"
#include "app/gui/gear/replace/replace_page.h"
#include "app/gui/gear/setup/set_up_page.h"
#include "app/gui/gear/spreadsheet/spreadsheet_page.h"
#include "app/gui/gear/tags/tags_page.h"
#include "app/gui/widgets/gear_page.h"
#include "app/text/text.h"
#include "core/club/club.h"
#include "core/club/club_register.h"
#include "core/register/sheets.h"

#include <QCoreApplication>
#include <QKeySequence>

namespace app {
namespace {

struct GearPagesText {
    Q_DECLARE_TR_FUNCTIONS(GearPages)
};

void readPeople(GearOffice& office, const GearTools& tools) {
    tools.club.ask(
        &office,
        [today = tools.time().today](core::Club& open) { return open.register_().peopleHere(today); },
        [&office](const std::vector<core::Person>& people) {
            QStringList officers;
            QStringList others;
            for (const core::Person& person : people)
                (person.role == "gear officer" ? officers : others) << text(person.name);
            office.setPeople(officers, others);
        });
}

/// Goes to the item's page under Kit.
void showItem(GearOffice& office, const QString& code) {
    office.showPage("kit");
    if (auto* kit = qobject_cast<KitPage*>(office.page("kit"))) kit->showItem(code);
}

void showSheet(GearOffice& office, core::SheetId sheet, const QString& row) {
    office.showPage("register");
    if (auto* register_ = qobject_cast<RegisterPage*>(office.page("register")))
        register_->showSheet(sheet, row);
}

void showHistory(GearOffice& office, const QString& subject) {
    office.showPage("record");
    auto* record = qobject_cast<RecordPage*>(office.page("record"));
    if (!record) return;
    record->showPanel(record->historyPanel());
    record->historyPanel().tell(subject);
}

} // namespace

void addGearPages(GearOffice& office, const GearTools& given) {
    GearTools tools = given;
    tools.officer = [&office] { return office.officer(); };
    tools.showItem = [&office](const QString& code) { showItem(office, code); };
    tools.showPage = [&office](const QString& id) { office.showPage(id); };
    tools.showSheet = [&office](core::SheetId sheet, const QString& row) { showSheet(office, sheet, row); };
    tools.showHistory = [&office](const QString& subject) { showHistory(office, subject); };
    tools.hasPeople = [&office] { return office.hasPeople(); };
    tools.readPeople = [&office] { emit office.peopleWanted(); };
    tools.showBoard = [&office] { emit office.boardWanted(); };
    QObject::connect(&office, &GearOffice::peopleWanted, &office,
                     [&office, tools] { readPeople(office, tools); });
    const auto add = [&](const char* id, const QString& name, const char* keys, auto make) {
        office.addPage(id, name, QKeySequence(keys), make);
    };
    add("missing", GearPagesText::tr("&Missing"), "Alt+1",
        [tools](QWidget* in) { return new MissingPage(tools, in); });
    add("events", GearPagesText::tr("&Events"), "Alt+2",
        [tools](QWidget* in) { return new EventPage(tools, in); });
    add("kit", GearPagesText::tr("&Kit"), "Alt+3", [tools](QWidget* in) { return new KitPage(tools, in); });
    add("bench", GearPagesText::tr("&Bench"), "Alt+4",
        [tools](QWidget* in) { return new BenchPage(tools, in); });
    add("stocktake", GearPagesText::tr("&Stocktake"), "Alt+5",
        [tools](QWidget* in) { return new StocktakePage(tools, in); });
    add("log", GearPagesText::tr("&Log"), "Alt+6", [tools](QWidget* in) { return new LogPage(tools, in); });
    add("ready", GearPagesText::tr("Make &ready"), "Alt+7",
        [tools](QWidget* in) { return new ReadyPage(tools, in); });
    add("due", GearPagesText::tr("&Due"), "Alt+8", [tools](QWidget* in) { return new DuePage(tools, in); });
    add("replace", GearPagesText::tr("Re&placement"), "Alt+9",
        [tools](QWidget* in) { return new ReplacePage(tools, in); });
    add("tags", GearPagesText::tr("&Tags"), "Alt+0",
        [tools](QWidget* in) { return new TagsPage(tools, in); });
    add("manifests", GearPagesText::tr("Mani&fests"), "Ctrl+Alt+1",
        [tools](QWidget* in) { return new ManifestsPage(tools, in); });
    add("register", GearPagesText::tr("Re&gister"), "Ctrl+Alt+3",
        [tools](QWidget* in) { return new RegisterPage(tools, in); });
    add("record", GearPagesText::tr("Rec&ord"), "Ctrl+Alt+2",
        [tools](QWidget* in) { return new RecordPage(tools, in); });
    add("exchange", GearPagesText::tr("E&xchange"), "Ctrl+Alt+4",
        [tools](QWidget* in) { return new ExchangePage(tools, in); });
    add("setup", GearPagesText::tr("Set &up"), "Ctrl+Alt+8",
        [tools](QWidget* in) { return new SetUpPage(tools, in); });
    add("spreadsheet", GearPagesText::tr("&Import"), "Ctrl+Alt+9",
        [tools](QWidget* in) { return new SpreadsheetPage(tools, in); });
}

} // namespace app
