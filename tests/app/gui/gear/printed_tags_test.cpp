#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "tests/app/gui/gear/gear_story.h"

#include "app/gui/board/shed_board.h"
#include "app/gui/widgets/list_row.h"
#include "app/text/words.h"

#include <algorithm>

using support::GearStory;

namespace {

// Of demo/club/items.csv: a jacket at the drying rack, and the rescue tubes of two boats.
constexpr const char* rackJacket = "KG7RCVBA55";
constexpr const char* grebeTube = "KMC20GKEK9";
constexpr const char* dabchickTube = "KQ8SK0R3E2";

class PrintedTags : public GearStory {
protected:
    QString replace(const char* code) {
        const auto tag = stored(core::Club::Access::ReadWrite).kit().replaceTag(code, "Joss Iveny", moment());
        EXPECT_TRUE(tag);
        return app::codeInWords(*tag);
    }
    /// Every item gets a new tag.
    void replaceAll() {
        core::Club club = stored(core::Club::Access::ReadWrite);
        for (const core::Item& item : club.kit().all()) {
            m_old << app::codeInWords(item.tag);
            if (item.state == core::ItemState::WrittenOff) continue;
            m_new << app::codeInWords(*club.kit().replaceTag(item.id, "Joss Iveny", moment()));
        }
    }
    /// All words of the page shown: its lists and tables, as they are read aloud too, and its labels.
    QString wordsOnPage() {
        const QWidget* page = office().page(office().currentPage());
        QStringList words;
        for (const auto* list : page->findChildren<app::RowListModel*>())
            for (const app::ListRow& row : list->rows())
                words << row.title << row.aside << row.remark << row.aloud();
        for (const auto* table : page->findChildren<app::PlainTableModel*>())
            for (int row = 0; row < table->rowCount(); ++row)
                words << table->shown(row).cells;
        for (const auto* label : page->findChildren<QLabel*>())
            words << label->text();
        return words.join('\n');
    }
    void expectOnlyNewTags(const char* where, const QString& words) {
        SCOPED_TRACE(where);
        const auto stands = [&](const QString& tag) { return words.contains(tag); };
        EXPECT_TRUE(std::any_of(m_new.begin(), m_new.end(), stands)) << words.toStdString();
        const auto old = std::find_if(m_old.begin(), m_old.end(), stands);
        EXPECT_EQ(old, m_old.end()) << (old == m_old.end() ? "" : old->toStdString());
    }
    void expectPrinted(const char* list, const char* code, const QString& printed) {
        const auto row = rowOf(list, code);
        ASSERT_TRUE(row) << list;
        EXPECT_EQ(row->aside, printed);
        EXPECT_TRUE(row->spoken.contains(printed)) << "it is read aloud too";
    }
    static void swapTubes(core::Club& club) {
        check(club, "Grebe", core::Phase::Launch, "Petra Lund", {grebeTube}, "2026-03-13T07:00:00Z");
        check(club, "Dabchick", core::Phase::Launch, "Tobin Ashe", {dabchickTube}, "2026-03-13T07:10:00Z");
        check(club, "Grebe", core::Phase::Return, "Petra Lund", {dabchickTube}, "2026-03-13T11:00:00Z");
        check(club, "Dabchick", core::Phase::Return, "Tobin Ashe", {grebeTube}, "2026-03-13T11:10:00Z");
    }

private:
    QStringList m_old, m_new; // as they are shown
};

} // namespace

TEST_F(PrintedTags, standInPlaceOfTheItemsCode) {
    const std::string printed = "KFGQ9XHHKJ";
    const app::ListRow row = app::plainRow("a", app::Mark::Found, {}, "jacket", {}, {rackJacket, printed});
    EXPECT_EQ(row.aside, app::codeInWords(printed));
    EXPECT_TRUE(row.spoken.contains(app::codeInWords(printed))) << row.spoken.toStdString();
    EXPECT_EQ(row.code, rackJacket);
    EXPECT_EQ(app::plainRow("a", app::Mark::Found, {}, "jacket", {}, {rackJacket, rackJacket}).aside,
              app::codeInWords(rackJacket));
}

TEST_F(PrintedTags, areWhatTheStocktakeLooksFor) {
    const QString printed = replace(rackJacket);
    openOffice("stocktake");
    choose("stocktakePlaceBox", "Drying rack");
    pressButton("stocktakeBeginButton");
    expectPrinted("stocktakeList", rackJacket, printed);
    focus("stocktakeList");
    typeCode(printed);
    EXPECT_NE(headingOf("stocktakeList", rackJacket), "still to find");
    expectPrinted("stocktakeList", rackJacket, printed);
}

TEST_F(PrintedTags, areWhatTheBenchShows) {
    const QString printed = replace(rackJacket);
    openOffice("bench");
    choose("benchRuleBox", "float test");
    focus("benchList");
    typeCode(printed);
    expectPrinted("benchList", rackJacket, printed);
    EXPECT_TRUE(textOf("saidLabel").contains(printed)) << textOf("saidLabel").toStdString();
    pressButton("benchRecordButton");
    expectPrinted("benchList", rackJacket, printed);
}

TEST_F(PrintedTags, areWhatTheMissingListLooksFor) {
    const std::string code = stored().answers().missingItems().front().item.id;
    const QString printed = replace(code.c_str());
    openOffice("missing");
    expectPrinted("missingList", code.c_str(), printed);
    EXPECT_TRUE(textOf("missingNameLabel").endsWith(printed)) << textOf("missingNameLabel").toStdString();
}

TEST_F(PrintedTags, areWhatAnEventTellsToChangeOver) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        swapTubes(club);
    }
    const QString printed = replace(grebeTube), other = replace(dabchickTube);
    openOffice("events");
    typeInto("eventEdit", "2026-03-13");
    press(Qt::Key_Return);
    QString said;
    for (const app::ListRow& row : rowsIn("eventList"))
        said += row.aside + ' ' + row.remark + '\n';
    for (const QString& tag : {printed, other})
        EXPECT_TRUE(said.contains(tag)) << said.toStdString();
    for (const char* code : {grebeTube, dabchickTube})
        EXPECT_FALSE(said.contains(app::codeInWords(code))) << said.toStdString();
}

TEST_F(PrintedTags, standOnEveryPageAndTheOldOnesOnNone) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        swapTubes(club);
        check(club, "Bittern", core::Phase::Launch, "Hal Okoro", {"KGYD21XNA5"}, "2026-03-13T12:00:00Z");
        check(club, "Bittern", core::Phase::Return, "Hal Okoro", {}, "2026-03-13T13:00:00Z");
    }
    replaceAll();
    openOffice("missing");
    expectOnlyNewTags("missing", wordsOnPage());
    office().showPage("events");
    settle();
    typeInto("eventEdit", "2026-03-13");
    press(Qt::Key_Return);
    expectOnlyNewTags("events", wordsOnPage());
    office().showPage("kit");
    settle();
    typeInto("kitSearchEdit", rackJacket);
    press(Qt::Key_Return); // the item's own page beside the list
    expectOnlyNewTags("kit", wordsOnPage());
    office().showPage("log");
    settle();
    expectOnlyNewTags("log", wordsOnPage());
    office().showPage("ready");
    settle();
    pressButton("readyPlanButton");
    ASSERT_TRUE(support::waitFor([&] { return !rowsIn("readyMoveList").empty(); }));
    expectOnlyNewTags("ready", wordsOnPage());
    office().showPage("due");
    settle();
    expectOnlyNewTags("due", wordsOnPage());
    office().showPage("stocktake");
    settle();
    choose("stocktakePlaceBox", "Gear store");
    pressButton("stocktakeBeginButton");
    expectOnlyNewTags("stocktake", wordsOnPage());
    office().showPage("bench");
    settle();
    focus("benchList");
    typeCode(QString::fromStdString(stored().kit().item(rackJacket)->tag));
    expectOnlyNewTags("bench", wordsOnPage());
    const app::BoardState board = app::readBoard(stored(), today());
    QStringList reasons;
    for (const core::BoatCondition& boat : board.boats)
        reasons << app::wordsOf(boat, board).reasons;
    expectOnlyNewTags("board", reasons.join('\n'));
}
