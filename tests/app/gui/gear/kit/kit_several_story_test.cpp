#include "core/club/club_kit.h"
#include "tests/app/gui/gear/register/register_story.h"

#include "app/gui/gear/kit/kit_words.h"

#include <QCheckBox>
#include <QFile>
#include <QHeaderView>

#include <algorithm>
#include <fstream>

namespace {

// Of demo/club/items.csv: in the gear store.
constexpr const char* storeOar = "KFGQ9XHHKJ";
constexpr const char* aPaddle = "KXYS7WCBXG";
constexpr const char* anotherPaddle = "K3QA8GHK3G";
constexpr const char* aJacket = "K30268QHAF";        // life jacket, M
constexpr const char* dabchicksKnife = "KMRMQRZM66"; // missing

class KitTable : public support::RegisterStory {
protected:
    core::Item item(const char* code) { return *stored().kit().item(code); }
    QStringList columnShown(int column) {
        QStringList cells;
        for (const app::TableRow& row : rowsInTable("kitTable"))
            cells << row.cells[column];
        return cells;
    }
    /// Goes to that row and ticks it with the space bar.
    void tick(const char* code) {
        focus("kitTable");
        press(Qt::Key_Home, Qt::ControlModifier);
        auto* table = child<app::PlainTable>("kitTable");
        for (int i = 0; i < table->model()->rowCount() && table->chosen() != code; ++i)
            press(Qt::Key_Down);
        ASSERT_EQ(table->chosen(), code);
        press(Qt::Key_Space);
    }
    void openTicked(std::initializer_list<const char*> codes, const QString& act) {
        openOffice("kit");
        for (const char* code : codes)
            tick(code);
        choose("kitSeveralActBox", act);
    }
};

} // namespace

TEST_F(KitTable, isFilteredByStateHomeAndType) {
    openOffice("kit");
    const auto countOf = [&](auto is) {
        const auto kit = stored().kit().all();
        return static_cast<std::size_t>(std::count_if(kit.begin(), kit.end(), is));
    };
    choose("kitStateBox", "written off");
    EXPECT_EQ(columnShown(app::tagColumn), QStringList{"KFRN 1CCP VA"});
    choose("kitStateBox", "all");
    EXPECT_EQ(rowsInTable("kitTable").size(), stored().kit().all().size());
    choose("kitStateBox", "in use");
    choose("kitHomeBox", "Bittern");
    EXPECT_EQ(rowsInTable("kitTable").size(),
              countOf([](const core::Item& item) { return item.boat == "Bittern"; }));
    choose("kitTypeBox", "paddle");
    EXPECT_EQ(rowsInTable("kitTable").size(), 2U);
    choose("kitHomeBox", "no home");
    choose("kitTypeBox", "any type");
    EXPECT_TRUE(rowsInTable("kitTable").empty());
}

TEST_F(KitTable, isOrderedByEachColumnBothWays) {
    openOffice("kit");
    auto* order = child<QComboBox>("kitOrderBox");
    ASSERT_EQ(order->count(), static_cast<int>(app::kitColumns().size()));
    for (int column = 0; column < order->count(); ++column) {
        if (column == app::dueColumn) continue; // by its day, below
        choose("kitOrderBox", order->itemText(column));
        QStringList cells = columnShown(column);
        cells.removeAll(QString());
        EXPECT_TRUE(std::is_sorted(cells.begin(), cells.end(), [](const QString& a, const QString& b) {
            return a.compare(b, Qt::CaseInsensitive) < 0;
        })) << cells.join('|').toStdString();
        const QStringList forwards = columnShown(column);
        EXPECT_FALSE(std::find(forwards.begin(), forwards.end(), "") < forwards.end() &&
                     forwards.front().isEmpty() && !cells.isEmpty())
            << "what is empty comes last";
        pressButton("kitBackwardsCheck");
        QStringList backwards = columnShown(column);
        std::reverse(backwards.begin(), backwards.end());
        EXPECT_EQ(backwards, forwards);
        pressButton("kitBackwardsCheck");
    }
}

// Days of demo/club by hand: the jacket of May 2016 ends in May 2026; the one without a float test has no
// date.
TEST_F(KitTable, saysWhatIsDueNextAndIsOrderedByItsDay) {
    openOffice("kit");
    choose("kitOrderBox", "by next due");
    const QStringList due = columnShown(app::dueColumn);
    EXPECT_TRUE(due.contains("1 May 2026: retire") || due.contains("no date: float test"))
        << due.join('|').toStdString();
    for (const app::TableRow& row : rowsInTable("kitTable"))
        if (row.key == "KK9RY1CAA0") {
            EXPECT_EQ(row.cells[app::dueColumn], "1 May 2029: cap");
        }
    EXPECT_EQ(due.back(), "") << "what never falls due comes last";
}

TEST_F(KitTable, aPressOnAHeadingOrdersAndAnotherTurnsItRound) {
    openOffice("kit");
    auto* header = child<app::PlainTable>("kitTable")->horizontalHeader();
    const auto pressHeading = [&](int column) {
        QTest::mouseClick(header->viewport(), Qt::LeftButton, {},
                          QPoint(header->sectionViewportPosition(column) + 10, header->height() / 2));
    };
    pressHeading(2);
    EXPECT_EQ(child<QComboBox>("kitOrderBox")->currentText(), "by home");
    EXPECT_FALSE(child<QCheckBox>("kitBackwardsCheck")->isChecked());
    pressHeading(2);
    EXPECT_TRUE(child<QCheckBox>("kitBackwardsCheck")->isChecked());
}

TEST_F(KitTable, severalAreMovedAtOnce) {
    openTicked({aPaddle, anotherPaddle, storeOar}, "Move to…");
    EXPECT_FALSE(child<QPushButton>("kitSeveralButton")->isEnabled());
    typeInto("kitSeveralNameBox", "grebe");
    EXPECT_EQ(child<QPushButton>("kitSeveralButton")->text(), "Move 3 items");
    pressButton("kitSeveralButton");
    for (const char* code : {aPaddle, anotherPaddle, storeOar}) {
        EXPECT_EQ(item(code).boat, "Grebe") << "as the register spells it";
        EXPECT_EQ(item(code).place, "");
    }
    EXPECT_EQ(textOf("kitPageSaidLabel"), "3 items are changed.");
    EXPECT_FALSE(child("kitSeveralPanel")->isVisible()) << "nothing is ticked any more";
    tick(aPaddle);
    choose("kitSeveralActBox", "Move to…");
    typeInto("kitSeveralNameBox", "Drying rack");
    pressButton("kitSeveralButton");
    EXPECT_EQ(item(aPaddle).place, "Drying rack");
    EXPECT_EQ(item(aPaddle).boat, "");
}

TEST_F(KitTable, aMoveSaysWhatABoatWillLack) {
    openTicked({"KGNNWAZAVX"}, "Move to…"); // Bittern's radio
    typeInto("kitSeveralNameBox", "Gear store");
    EXPECT_TRUE(planned([&] {
        return textOf("kitSeveralEffectsLabel").contains("Bittern will have no radio.");
    })) << textOf("kitSeveralEffectsLabel").toStdString();
    EXPECT_EQ(item("KGNNWAZAVX").boat, "Bittern");
}

// In a label of its own, which stands out as in the form of one row.
TEST_F(KitTable, aMoveToAPlaceThatEndsIsAskedAbout) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        const core::CalendarDay lastDay = *core::CalendarDay::from(2026, 12, 31); // still here today
        std::ofstream(folder() / "places.csv") << "place,until\nDrying rack," << lastDay.iso() << "\n";
        const auto plan = club.register_().importCsv(folder().path(), today(), false);
        ASSERT_TRUE(plan && plan->rejected.empty());
    }
    openTicked({aPaddle}, "Move to…");
    typeInto("kitSeveralNameBox", "Drying rack");
    EXPECT_TRUE(planned([&] { return child("kitSeveralWarningsLabel")->isVisible(); }));
    EXPECT_TRUE(textOf("kitSeveralWarningsLabel")
                    .startsWith("Is it meant so? The last day of 'Drying rack' is 2026-12-31"))
        << textOf("kitSeveralWarningsLabel").toStdString();
    EXPECT_EQ(child("kitSeveralWarningsLabel")->property("role"), "look");
    typeInto("kitSeveralNameBox", "Boathouse"); // the twin: it does not end
    EXPECT_FALSE(child("kitSeveralWarningsLabel")->isVisible());
}

TEST_F(KitTable, oneThatIsRefusedLeavesAllAsTheyAre) {
    openTicked({aJacket, aPaddle}, "Size…"); // a paddle has no sizes
    typeInto("kitSeveralNameBox", "S");
    pressButton("kitSeveralButton");
    EXPECT_TRUE(textOf("kitSeveralSaidLabel").startsWith("Nothing was changed. paddle KXYS 7WCB XG"))
        << textOf("kitSeveralSaidLabel").toStdString();
    EXPECT_EQ(item(aJacket).size, "M");
    tick(aPaddle); // off again
    typeInto("kitSeveralNameBox", "S");
    pressButton("kitSeveralButton");
    EXPECT_EQ(item(aJacket).size, "S");
}

TEST_F(KitTable, severalAreGivenToAPersonAndTakenBack) {
    openTicked({"KMD903N033", "KWHPC9RHNN"}, "Give to…"); // whistles
    for (const char* person : {"Hal Okoro", ""}) {
        if (!child("kitSeveralPanel")->isVisible()) {
            tick("KMD903N033");
            tick("KWHPC9RHNN");
        }
        typeInto("kitSeveralNameBox", person);
        if (*person == 0) press(Qt::Key_Delete);
        pressButton("kitSeveralButton");
        EXPECT_EQ(item("KMD903N033").person, person);
        EXPECT_EQ(item("KWHPC9RHNN").person, person);
    }
}

TEST_F(KitTable, whatAnotherMovedMeanwhileIsNotMoved) {
    openTicked({aPaddle, storeOar}, "Move to…");
    typeInto("kitSeveralNameBox", "Grebe");
    ASSERT_TRUE(
        stored(core::Club::Access::ReadWrite)
            .register_()
            .write({core::SheetId::Items, {{{{"code", aPaddle}}, {{"place", "Drying rack"}}, std::nullopt}}},
                   "Petra Lund", moment()));
    pressButton("kitSeveralButton");
    EXPECT_TRUE(textOf("kitSeveralSaidLabel").contains("was changed meanwhile"))
        << textOf("kitSeveralSaidLabel").toStdString();
    EXPECT_EQ(item(aPaddle).place, "Drying rack");
    EXPECT_EQ(item(storeOar).place, "Gear store");
    pressButton("kitSeveralButton"); // it was told
    EXPECT_EQ(item(aPaddle).boat, "Grebe");
}

TEST_F(KitTable, severalAreWrittenOffForOneReasonAllOrNone) {
    openTicked({aPaddle, anotherPaddle}, "Write off…");
    choose("kitSeveralWhyBox", "worn");
    pressButton("kitSeveralButton");
    pressButton("kitSeveralButton"); // a double click
    EXPECT_EQ(item(aPaddle).state, core::ItemState::Serviceable);
    ASSERT_TRUE(stored(core::Club::Access::ReadWrite).kit().writeOff(anotherPaddle, "lost", "Ada", moment()));
    pressButtonTwice("kitSeveralButton");
    EXPECT_EQ(item(aPaddle).state, core::ItemState::Serviceable) << "the other was written off meanwhile";
    office().showPage("log");
    office().showPage("kit");
    settle();
    pressButton("kitUntickButton");
    EXPECT_FALSE(child("kitSeveralPanel")->isVisible());
    tick(aPaddle);
    choose("kitSeveralActBox", "Write off…");
    choose("kitSeveralWhyBox", "worn");
    pressButtonTwice("kitSeveralButton");
    EXPECT_EQ(item(aPaddle).state, core::ItemState::WrittenOff);
    EXPECT_EQ(item(aPaddle).why, "worn");
}

TEST_F(KitTable, tagsOfSeveralAreSaved) {
    const QString sheet = pathOf("tags.pdf");
    app::Choosers choosers;
    choosers.saveFile = [sheet](QWidget*, const QString&) { return sheet; };
    openOffice("kit", choosers);
    tick(aPaddle);
    tick(storeOar);
    choose("kitSeveralActBox", "Tags…");
    pressButton("kitSeveralButton");
    EXPECT_TRUE(QFile::exists(sheet));
}

TEST_F(KitTable, rowsAreTickedWithTheMouseToo) {
    openOffice("kit");
    auto* table = child<app::PlainTable>("kitTable");
    const auto at = [&](int row) {
        return table->visualRect(table->model()->index(row, 0)).topLeft() + QPoint(18, 20);
    };
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, at(0)); // on its box
    EXPECT_FALSE(child("kitItemPanel")->isVisible()) << "it is not opened by that";
    QTest::mouseClick(table->viewport(), Qt::LeftButton, Qt::ShiftModifier, at(3) + QPoint(60, 0));
    EXPECT_EQ(static_cast<app::PlainTableModel*>(table->model())->ticked().size(), 4U);
    QTest::mouseClick(table->viewport(), Qt::LeftButton, Qt::ControlModifier, at(1) + QPoint(60, 0));
    EXPECT_EQ(static_cast<app::PlainTableModel*>(table->model())->ticked().size(), 3U);
    focus("kitTable");
    press(Qt::Key_A, Qt::ControlModifier);
    EXPECT_EQ(static_cast<app::PlainTableModel*>(table->model())->ticked().size(),
              static_cast<std::size_t>(table->model()->rowCount()));
}

TEST_F(KitTable, aPartIsARowOfItsOwn) {
    openOffice("kit");
    typeInto("kitSearchEdit", "KGNNWAZAVX"); // a radio with its battery
    settle();
    press(Qt::Key_Return);
    pressButton("kitChangeButton");
    focus("kitPartsList");
    press(Qt::Key_Home);
    press(Qt::Key_Return);
    typeInto("cell_first_use", "1.2.2026");
    pressButton("kitChangeSaveButton");
    EXPECT_EQ(storedCell(core::SheetId::Parts, {"KGNNWAZAVX", "battery"}, "first_use"), "2026-02-01");
    EXPECT_TRUE(child("kitChangePanel")->isVisible());
    pressButton("kitNewPartButton");
    typeInto("cell_part", "aerial");
    press(Qt::Key_Tab);
    EXPECT_TRUE(child("cell_made")->hasFocus());
    typeInto("cell_serial", "A-1");
    pressButton("kitChangeSaveButton");
    EXPECT_EQ(storedCell(core::SheetId::Parts, {"KGNNWAZAVX", "aerial"}, "serial"), "A-1");
    pressButton("kitChangeBackButton");
    EXPECT_TRUE(child("kitItemList")->isVisible());
}

TEST_F(KitTable, thereIsRoomForAnItemBesideAWideTable) {
    openOffice("kit");
    office().resize(1920, 1080);
    typeInto("kitSearchEdit", "paddle");
    press(Qt::Key_Return);
    EXPECT_TRUE(child("kitTable")->isVisible());
    EXPECT_TRUE(child("kitItemPanel")->isVisible());
    const QString first = textOf("kitTagLabel");
    focus("kitTable");
    press(Qt::Key_Down);
    EXPECT_NE(textOf("kitTagLabel"), first) << "the next one is shown as it is reached";
    press(Qt::Key_Escape);
    EXPECT_FALSE(child("kitItemPanel")->isVisible());
    EXPECT_TRUE(child("kitTable")->hasFocus());
}

TEST_F(KitTable, whatIsMissingIsInItsList) {
    openOffice("kit");
    choose("kitStateBox", "missing");
    const auto rows = rowsInTable("kitTable");
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0].key, dabchicksKnife);
}
