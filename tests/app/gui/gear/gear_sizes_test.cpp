#include "tests/app/gui/gear/gear_story.h"
#include "tests/app/gui/size_walk.h"

#include "app/gui/gear/ready/ready_page.h"
#include "app/gui/gear/record/evidence_panel.h"
#include "app/gui/gear/record/history_panel.h"
#include "app/gui/gear/record/record_page.h"
#include "app/gui/gear/record/verify_panel.h"
#include "app/gui/gear/setup/set_up_page.h"
#include "app/gui/gear/spreadsheet/spreadsheet_page.h"
#include "app/gui/theme/language.h"
#include "core/club/club_events.h"

#include <QCheckBox>
#include <QRadioButton>

#include <fstream>

namespace {

constexpr int menuBar = 36; ///< height; the pages have the rest of the window

/// Every page of the gear officer's, with what opens on it, in every size of window.
class GearSizes : public support::GearStory {
protected:
    void SetUp() override {
        GearStory::SetUp();
        auto club = stored(core::Club::Access::ReadWrite);
        check(club, "Dabchick", core::Phase::Launch, "Marta Quill", {"KNGZSTQ3HN", "KQ8SK0R3E2"},
              "2026-03-12T07:15:00Z");
        check(club, "Dabchick", core::Phase::Return, "Marta Quill", {"KNGZSTQ3HN"}, "2026-03-12T11:45:00Z");
    }
    void TearDown() override {
        GearStory::TearDown();
        app::speak("en");
    }

    void walk(const char* language) {
        app::speak(language);
        app::Choosers choosers;
        choosers.sticks = [this] { return QStringList{pathOf("STICK")}; };
        std::filesystem::create_directories(folder() / "STICK");
        openOffice("missing", choosers);
        support::SizeWalk all(office(), menuBar);
        m_walk = &all;
        walkToday();
        walkBench();
        walkKit();
        walkSeason();
        walkManifests();
        walkRegister();
        walkRecord();
        walkSetUp();
        EXPECT_EQ(all.faults(), "");
        EXPECT_GE(all.looks(), 200);
    }

    void go(const char* page) {
        office().showPage(page);
        settle();
    }

private:
    void look(const std::string& what) {
        settle();
        m_walk->look(what);
    }
    void click(const char* button) {
        auto* found = child<QAbstractButton>(button);
        ASSERT_NE(found, nullptr) << button;
        found->click();
        settle();
    }
    void write(const char* field, const QString& words) {
        auto* edit = child<QLineEdit>(field);
        ASSERT_NE(edit, nullptr) << field;
        edit->setText(words);
        emit edit->textEdited(words);
        emit edit->returnPressed();
        settle();
    }
    void pick(const char* name, int index) {
        auto* box = child<QComboBox>(name);
        ASSERT_NE(box, nullptr) << name;
        box->setCurrentIndex(std::min(index, box->count() - 1));
        emit box->activated(box->currentIndex());
        settle();
    }
    void pick(const char* name, const QString& words) {
        auto* box = child<QComboBox>(name);
        ASSERT_NE(box, nullptr) << name;
        ASSERT_GE(box->findText(words), 0) << words.toStdString();
        pick(name, box->findText(words));
    }
    void stand(const char* list, int row) {
        auto* view = child<QAbstractItemView>(list);
        ASSERT_NE(view, nullptr) << list;
        view->setCurrentIndex(view->model()->index(std::min(row, view->model()->rowCount() - 1), 0));
        settle();
    }
    void open(const char* table, int row) {
        stand(table, row);
        auto* view = child<app::PlainTable>(table);
        if (!view->chosen().isEmpty()) emit view->rowPressed(view->chosen());
        settle();
    }

    void walkToday() {
        go("missing");
        stand("missingList", 1);
        look("missing");
        pick("writeOffReasonBox", 1);
        click("writeOffButton");
        look("missing, asked once more");
        go("events");
        look("events");
        go("log");
        stand("clubLogList", 1);
        look("log");
        go("ready");
        auto* ready = qobject_cast<app::ReadyPage*>(office().page("ready"));
        look("ready, empty");
        ready->makePlan();
        ASSERT_TRUE(support::waitFor([&] { return !ready->moves().lines().empty(); }));
        look("ready");
    }
    void walkBench() {
        go("bench");
        look("bench, empty");
        pick("benchRuleBox", 1);
        for (const char* code : {"KT017638PE", "K30268QHAF", "KG7RCVBA55"})
            write("codeEdit", code);
        emit child<app::RowList>("benchList")->rowPressed("scan KG7RCVBA55");
        look("bench");
        go("stocktake");
        look("stocktake, empty");
        pick("stocktakePlaceBox", "Gear store");
        click("stocktakeBeginButton");
        for (const char* code : {"KT017638PE", "KXYS7WCBXG", "K3QA8GHK3G"})
            write("codeEdit", code);
        look("stocktake");
        go("tags");
        look("tags");
    }
    void walkKit() {
        go("kit");
        look("kit");
        auto* table = child<app::PlainTable>("kitTable");
        static_cast<app::PlainTableModel*>(table->model())->setTicked({"KGNNWAZAVX", "KVP5CYVRE7"});
        emit table->ticksChanged();
        look("kit, several");
        click("kitUntickButton");
        write("kitSearchEdit", "K5M9AR38J5");
        look("kit, an item");
        click("recordErrorButton");
        look("kit, an error in the record");
        click("recordErrorButton");
        pick("kitWriteOffReasonBox", 1);
        click("kitWriteOffButton");
        look("kit, asked once more");
        click("kitChangeButton");
        look("kit, a change");
        click("newKitButton");
        pick("newKitTypeBox", "life jacket");
        look("kit, new");
    }
    void walkSeason() {
        go("due");
        look("due");
        click("dueTableButton");
        look("due, table");
        go("replace");
        settle();
        look("replacement");
        open("replaceTable", 0);
        for (const char* part : {"replaceStockChoice", "replaceLifeChoice", "replaceArrivedChoice"}) {
            click(part);
            look(std::string("replacement, ") + part);
        }
    }
    void walkManifests() {
        go("manifests");
        pick("manifestOwnerBox", "Dabchick");
        stand("manifestTable", 1);
        look("manifests");
        click("manifestPointsChoice");
        stand("manifestTable", 1);
        look("manifests, points");
        pick("manifestOwnerBox", 0);
        stand("manifestTable", 0);
        click("manifestPointTakeAwayButton");
        look("manifests, asked once more");
    }
    void walkRegister() {
        go("register");
        auto* sheets = child<QComboBox>("registerSheetBox");
        for (int sheet = 0; sheet < sheets->count(); ++sheet) {
            pick("registerSheetBox", sheet);
            look("register, " + sheets->currentText().toStdString());
            open("registerTable", 0);
            look("register, a row of " + sheets->currentText().toStdString());
        }
    }
    void walkRecord() {
        go("record");
        auto* record = qobject_cast<app::RecordPage*>(office().page("record"));
        pick("evidenceBoatBox", "Dabchick");
        write("evidenceWhenEdit", "2026-03-12 08:00");
        record->evidencePanel().look();
        look("record, evidence");
        record->showPanel(record->historyPanel());
        record->historyPanel().tell("Dabchick");
        look("record, history");
        record->showPanel(record->verifyPanel());
        record->verifyPanel().verify();
        look("record, verified");
    }
    void walkSetUp() {
        go("exchange");
        settle();
        look("exchange");
        go("setup");
        look("set up");
        auto* page = qobject_cast<app::SetUpPage*>(office().page("setup"));
        page->showFitOut("Dabchick");
        stand("fitOutList", 2);
        look("fit out");
        go("spreadsheet");
        look("import, empty");
        const QString file = pathOf("Our kit.csv");
        std::ofstream(file.toStdString())
            << "Item;Size;Where;Serial no.;Made;Expiry;Condition;Colour\n"
               "Knife;;Boat store;K-114;03/04/2024;;ok;orange\nPaddle;;Dabchick;;05/06/2023;;fine;\n"
               "Life jacket;adult M;Dabchick;LJ-7;2022;01/11/2026;sound;red\nTow line;;Dabchick;;last "
               "year;;ok;\n";
        auto* import = qobject_cast<app::SpreadsheetPage*>(office().page("spreadsheet"));
        import->readFile(file);
        waitForPlan(*import);
        look("import, questions");
        child<QComboBox>("spreadsheetDaysBox")->setCurrentIndex(1);
        waitForPlan(*import);
        look("import, plan");
    }
    void waitForPlan(const app::SpreadsheetPage& page) {
        for (int round = 0; round < 2; ++round) {
            settle();
            ASSERT_TRUE(support::waitFor([&] { return !page.isBusy(); }));
        }
    }

    support::SizeWalk* m_walk = nullptr;
};

TEST_F(GearSizes, noPageIsBadlyLaidOutInEnglish) {
    walk("en");
}

TEST_F(GearSizes, noPageIsBadlyLaidOutInGerman) {
    walk("de");
}

/// A table that shows one row and a half is no table.
TEST_F(GearSizes, tablesHaveTheirRowsInView) {
    struct Wanted {
        const char *page, *table;
        QSize window;
        int rows;
    };
    const Wanted all[] = {
        {"replace", "replaceTable", {1280, 800}, 8}, {"replace", "replaceTable", {1024, 768}, 6},
        {"replace", "replaceTable", {800, 600}, 6}, // after scrolling
        {"kit", "kitTable", {1280, 800}, 10},        {"kit", "kitTable", {1024, 768}, 6},
        {"kit", "kitTable", {800, 600}, 4}};
    for (const char* language : {"en", "de"}) {
        app::speak(language);
        openOffice("kit");
        support::SizeWalk sizes(office(), menuBar);
        for (const Wanted& each : all) {
            go(each.page);
            sizes.resize(each.window);
            const auto* table = child<app::PlainTable>(each.table);
            ASSERT_GT(table->model()->rowCount(), each.rows);
            EXPECT_GE(table->viewport()->height() / table->rowHeight(0), each.rows)
                << each.page << " at " << each.window.width() << ", " << language;
        }
    }
}

} // namespace
