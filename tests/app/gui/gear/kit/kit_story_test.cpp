#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "tests/app/gui/gear/gear_story.h"

#include "app/gui/gear/kit/kit_item_panel.h"
#include "app/gui/gear/kit/kit_page.h"
#include "app/gui/gear/kit/new_kit_panel.h"
#include "app/gui/theme/language.h"
#include "app/gui/widgets/plain_table.h"

#include <QFile>

#include <algorithm>
#include <tuple>

using support::GearStory;

namespace {

// Of demo/club/items.csv.
constexpr const char* inflatableJacket = "K5M9AR38J5"; // with a cylinder, and it went off in the reeds
constexpr const char* brokenKnife = "KF9DPHVFJK";      // unserviceable
constexpr const char* anOar = "KFGQ9XHHKJ";

class KitStory : public GearStory {
protected:
    std::vector<app::TableRow> found() { return rowsInTable("kitTable"); }
    void find(const QString& typed) {
        typeInto("kitSearchEdit", typed);
        settle();
    }
    void openItem(const char* code) {
        find(code);
        press(Qt::Key_Return);
        ASSERT_TRUE(child("kitItemPanel")->isVisible());
    }
    void beginNewKit(const QString& kitType) {
        pressButton("newKitButton");
        choose("newKitTypeBox", kitType);
    }
    int countOf(const std::string& kitType) {
        const auto kit = stored().kit().all();
        return static_cast<int>(std::count_if(
            kit.begin(), kit.end(), [&](const core::Item& item) { return item.kitType == kitType; }));
    }
};

} // namespace

TEST_F(KitStory, theListNarrowsAsItIsTypedAndReturnOpensAnItem) {
    openOffice("kit");
    const auto all = stored().kit().all().size();
    EXPECT_EQ(found().size(), all - 1) << "what is written off is not shown unless asked for";
    find("tube bitt");
    ASSERT_EQ(found().size(), 1u);
    EXPECT_EQ(found()[0].cells[0], "rescue tube");
    EXPECT_EQ(textOf("kitCountLabel"), QString("1 item of %1 found").arg(all));
    press(Qt::Key_Down);
    press(Qt::Key_Return);
    EXPECT_EQ(textOf("kitNameLabel"), "rescue tube");
    EXPECT_TRUE(textOf("kitAboutLabel").startsWith("Home: Bittern"));
    find("no such thing");
    EXPECT_TRUE(found().empty());
}

TEST_F(KitStory, anItemShowsAllItsDatesWithTheirReasonsAndItsParts) {
    openOffice("kit");
    openItem(inflatableJacket);
    QStringList titles, headings;
    QString remarks;
    for (const app::ListRow& row : rowsIn("kitItemList")) {
        (row.isHeading ? headings : titles) << row.title;
        remarks += row.remark + '\n';
    }
    EXPECT_EQ(headings, (QStringList{"dates", "parts", "history, newest first"}));
    // Rules of demo/club/life_rules.csv for an inflatable jacket; by hand: made 2023-02 + 120 months; last
    // service 2025-04-26 + 12 months; it went off on 2026-02-21 and was not rearmed; cylinder weighed
    // 2024-04-20 + 24 months.
    for (const char* title : {"Yearly service: due on 26 April 2026", "Retire: due on 1 February 2033",
                              "Cylinder, weigh: due on 20 April 2026"})
        EXPECT_TRUE(titles.contains(title)) << title << " in\n" << titles.join('\n').toStdString();
    EXPECT_TRUE(titles.contains("Rearm: due now")) << titles.join('\n').toStdString();
    EXPECT_TRUE(remarks.contains("bladder held overnight")) << "the rule's source";
    EXPECT_TRUE(titles.contains("cylinder"));
}

TEST_F(KitStory, theRegisterMarksWhatIsDueAndNothingElse) {
    openOffice("kit");
    find(inflatableJacket); // went off and was not rearmed: due now
    ASSERT_EQ(found().size(), 1u);
    EXPECT_EQ(found()[0].mark, app::Mark::Look);
    EXPECT_EQ(found()[0].markWord, "look, something is due; serviceable");
    find("KT017638PE"); // of the same type: made 2024-05, serviced 2025-05-10, cylinder weighed 2024-05-10
    ASSERT_EQ(found().size(), 1u);
    EXPECT_EQ(found()[0].mark, app::Mark::Found);
    EXPECT_EQ(found()[0].markWord, "serviceable");
    find(brokenKnife);
    EXPECT_EQ(found()[0].mark, app::Mark::Look);
    EXPECT_EQ(found()[0].markWord, "unserviceable");
}

TEST_F(KitStory, aNewTagNamesTheItemFromThenOn) {
    openOffice("kit");
    openItem(anOar);
    pressButton("kitNewTagButton");
    const std::string tag = stored().kit().tagLabels({anOar})->front().code;
    EXPECT_NE(tag, anOar);
    EXPECT_EQ(textOf("kitTagLabel").remove(' ').toStdString(), tag);
    EXPECT_EQ(stored().kit().itemOfScan(tag, today())->id, anOar);
    EXPECT_FALSE(stored().kit().itemOfScan(anOar, today()));
    EXPECT_EQ(stored().answers().history(anOar)->back().by, "Joss Iveny");
    find(QString::fromStdString(tag));
    ASSERT_EQ(found().size(), 1u);
    EXPECT_EQ(found()[0].key, anOar);
}

TEST_F(KitStory, anUnserviceableItemIsReleasedAndAnotherIsNotOffered) {
    openOffice("kit");
    openItem(brokenKnife);
    EXPECT_TRUE(textOf("kitStateLabel").startsWith("Unserviceable, since 1 March 2026"));
    pressButton("kitReleaseButton");
    EXPECT_EQ(stored().kit().item(brokenKnife)->state, core::ItemState::Serviceable);
    EXPECT_FALSE(child("kitReleaseButton")->isVisible());
}

TEST_F(KitStory, writtenOffIsStoredWithItsReason) {
    openOffice("kit");
    openItem(anOar);
    choose("kitWriteOffReasonBox", "worn");
    EXPECT_FALSE(child("kitWriteOffQuestionLabel")->isVisible());
    pressButton("kitWriteOffButton");
    pressButton("kitWriteOffButton"); // a double click
    EXPECT_EQ(stored().kit().item(anOar)->state, core::ItemState::Serviceable);
    EXPECT_TRUE(child("kitWriteOffQuestionLabel")->isVisible());
    EXPECT_TRUE(textOf("kitWriteOffQuestionLabel").startsWith("Write it off as worn?"));
    EXPECT_TRUE(textOf("kitWriteOffQuestionLabel").contains("Destroy its tag"));
    EXPECT_TRUE(textOf("kitWriteOffQuestionLabel").contains("Flares, cylinders and extinguishers"));
    pressButton("kitWriteOffKeepButton");
    EXPECT_FALSE(child("kitWriteOffButton")->isEnabled()) << "no reason is chosen any more";
    choose("kitWriteOffReasonBox", "worn");
    pressButtonTwice("kitWriteOffButton");
    EXPECT_EQ(stored().kit().item(anOar)->state, core::ItemState::WrittenOff);
    EXPECT_EQ(stored().kit().item(anOar)->why, "worn");
    EXPECT_FALSE(child("kitWriteOffButton")->isVisible());
    EXPECT_FALSE(child("kitPrintButton")->isEnabled()) << "it needs no tag any more";
}

TEST_F(KitStory, whatWasRegisteredByMistakeIsWrittenOffSo) {
    openOffice("kit");
    openItem(anOar);
    choose("kitWriteOffReasonBox", "registered by mistake");
    pressButtonTwice("kitWriteOffButton");
    EXPECT_TRUE(stored().kit().item(anOar)->isByMistake());
    EXPECT_TRUE(textOf("kitStateLabel").startsWith("Written off: registered by mistake, since"));
}

TEST_F(KitStory, writtenOffByMistakeIsReinstatedForAReason) {
    ASSERT_TRUE(stored(core::Club::Access::ReadWrite).kit().writeOff(anOar, "lost", "Joss Iveny", moment()));
    openOffice("kit");
    openItem(anOar);
    EXPECT_FALSE(child<QPushButton>("kitReinstateButton")->isEnabled());
    typeInto("kitReinstateReasonEdit", "ok");
    EXPECT_FALSE(child<QPushButton>("kitReinstateButton")->isEnabled());
    typeInto("kitReinstateReasonEdit", "lay in the trailer");
    press(Qt::Key_Return);
    EXPECT_EQ(stored().kit().item(anOar)->state, core::ItemState::WrittenOff) << "Return leads to the button";
    pressButton("kitReinstateButton");
    EXPECT_EQ(stored().kit().item(anOar)->state, core::ItemState::Serviceable);
    EXPECT_TRUE(textOf("kitSaidLabel").startsWith("Reinstated: it is what it was before."));
    EXPECT_FALSE(child("kitReinstateButton")->isVisible());
    const auto rows = rowsIn("kitItemList");
    EXPECT_TRUE(std::any_of(rows.begin(), rows.end(), [](const auto& row) {
        return row.title.contains("writing off taken back: lay in the trailer", Qt::CaseInsensitive) ||
               row.remark.contains("writing off taken back: lay in the trailer", Qt::CaseInsensitive);
    }));
}

TEST_F(KitStory, whatAnotherWroteOffMeanwhileIsRefusedInTheWindowsLanguage) {
    for (const auto& [language, reason, said] :
         {std::tuple("de", "verschlissen", "Es ist schon ausgesondert; es ist nichts mehr zu tun."),
          std::tuple("en", "worn", "It is written off already; nothing is left to do.")}) {
        app::speak(language);
        const std::string oar = stored(core::Club::Access::ReadWrite)
                                    .kit()
                                    .registerKit({.kitType = "oar"}, "Joss Iveny", moment())
                                    ->front()
                                    .id;
        openOffice("kit");
        openItem(oar.c_str());
        choose("kitWriteOffReasonBox", reason);
        ASSERT_TRUE(
            stored(core::Club::Access::ReadWrite).kit().writeOff(oar, "lost", "Joss Iveny", moment()));
        pressButtonTwice("kitWriteOffButton");
        EXPECT_EQ(textOf("kitSaidLabel"), said);
        EXPECT_EQ(stored().kit().item(oar)->why, "lost");
    }
    app::speak("en");
}

TEST_F(KitStory, nothingIsDoneByNobody) {
    openOffice("kit");
    openItem(brokenKnife);
    office().setOfficer({});
    pressButton("kitReleaseButton");
    EXPECT_EQ(stored().kit().item(brokenKnife)->state, core::ItemState::Unserviceable);
    EXPECT_TRUE(textOf("kitSaidLabel").startsWith("Choose your name first"));
}

TEST_F(KitStory, newKitByNumberGetsTagsThatAreSavedAsPdf) {
    const QString sheet = pathOf("tags.pdf");
    app::Choosers choosers;
    choosers.saveFile = [sheet](QWidget*, const QString&) { return sheet; };
    openOffice("kit", choosers);
    const int before = countOf("paddle");
    beginNewKit("paddle");
    typeInto("newCountBox", "3");
    choose("newHomeBox", "Gear store");
    typeInto("newMadeEdit", "2026-01");
    typeInto("newMakerEdit", "Quayside");
    EXPECT_EQ(child<QPushButton>("registerKitButton")->text(), "Register 3 items");
    pressButton("registerKitButton");
    EXPECT_EQ(countOf("paddle"), before + 3);
    const auto codes = child<app::NewKitPanel>("newKitPanel")->registered();
    ASSERT_EQ(codes.size(), 3u);
    for (const std::string& code : codes) {
        const auto item = stored().kit().item(code);
        ASSERT_TRUE(item);
        EXPECT_EQ(item->place, "Gear store");
        EXPECT_EQ(item->made->text(), "2026-01");
        EXPECT_EQ(item->maker, "Quayside");
    }
    pressButton("newTagsButton");
    QFile pdf(sheet);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.read(5) == "%PDF-");
}

// Element string: GS1 General Specifications, sample company prefix 9521101.
TEST_F(KitStory, newKitByMakersLabels) {
    openOffice("kit");
    beginNewKit("radio");
    typeInto("newLabelEdit", "(01)09521101530001(11)251200(21)S-77");
    press(Qt::Key_Return);
    typeInto("newLabelEdit", "(01)09521101530002(21)S-78"); // its check digit is wrong
    press(Qt::Key_Return);
    EXPECT_FALSE(textOf("newKitSaidLabel").startsWith("Label taken"))
        << textOf("newKitSaidLabel").toStdString();
    EXPECT_EQ(child<QPushButton>("registerKitButton")->text(), "Register 1 item");
    pressButton("registerKitButton");
    const auto codes = child<app::NewKitPanel>("newKitPanel")->registered();
    ASSERT_EQ(codes.size(), 1u);
    EXPECT_EQ(stored().kit().item(codes[0])->serial, "S-77");
    EXPECT_EQ(stored().kit().item(codes[0])->made->text(), "2025-12");
}

TEST_F(KitStory, aBadDayIsRefusedAndNothingIsRegistered) {
    openOffice("kit");
    const int before = countOf("oar");
    beginNewKit("oar");
    typeInto("newMadeEdit", "yesterday");
    pressButton("registerKitButton");
    EXPECT_TRUE(textOf("newKitSaidLabel").contains("is no day"));
    EXPECT_EQ(countOf("oar"), before);
    typeInto("newMadeEdit", "2026");
    pressButton("registerKitButton");
    EXPECT_EQ(countOf("oar"), before + 1);
}
