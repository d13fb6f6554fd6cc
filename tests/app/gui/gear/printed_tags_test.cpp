#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "tests/app/gui/gear/gear_story.h"

#include "app/text/printed_tags.h"
#include "app/text/words.h"

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
    void expectPrinted(const char* list, const char* code, const QString& printed) {
        const auto row = rowOf(list, code);
        ASSERT_TRUE(row) << list;
        EXPECT_EQ(row->aside, printed);
        EXPECT_TRUE(row->spoken.contains(printed)) << "it is read aloud too";
    }
};

} // namespace

TEST_F(PrintedTags, standInPlaceOfTheItemsCodeAndOthersAreLetBe) {
    app::ListRow row;
    row.code = rackJacket;
    row.aside = app::codeInWords(rackJacket);
    row.asideIsCode = true;
    const std::string printed = "KFGQ9XHHKJ";
    EXPECT_EQ(app::withPrintedTags({row}, {{rackJacket, printed}})[0].aside, app::codeInWords(printed));
    EXPECT_EQ(app::withPrintedTags({row}, {{rackJacket, printed}})[0].code, rackJacket);
    EXPECT_EQ(app::withPrintedTags({row}, {{grebeTube, printed}})[0].aside, app::codeInWords(rackJacket));
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
    const std::string code = stored().answers().missingItems().front().code;
    const QString printed = replace(code.c_str());
    openOffice("missing");
    expectPrinted("missingList", code.c_str(), printed);
    EXPECT_TRUE(textOf("missingNameLabel").endsWith(printed)) << textOf("missingNameLabel").toStdString();
}

TEST_F(PrintedTags, areWhatAnEventTellsToChangeOver) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        check(club, "Grebe", core::Phase::Launch, "Petra Lund", {grebeTube}, "2026-03-13T07:00:00Z");
        check(club, "Dabchick", core::Phase::Launch, "Tobin Ashe", {dabchickTube}, "2026-03-13T07:10:00Z");
        check(club, "Grebe", core::Phase::Return, "Petra Lund", {dabchickTube}, "2026-03-13T11:00:00Z");
        check(club, "Dabchick", core::Phase::Return, "Tobin Ashe", {grebeTube}, "2026-03-13T11:10:00Z");
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
