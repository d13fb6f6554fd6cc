#include "core/club/club_record.h"
#include "tests/app/gui/gear/manifests/manifests_story.h"

#include <QComboBox>
#include <QPushButton>

using support::ManifestsStory;

namespace {

const core::ManifestOwner inflatible{core::ManifestOwner::Kind::BoatClass, "inflatible"};

/// A class that an import brought by a slip: no boat has it.
class NoBoatStory : public ManifestsStory {
protected:
    void SetUp() override {
        ManifestsStory::SetUp();
        import("manifest_lines.csv", "boat_class,kit_type,quantity\ninflatible,knife,2\n");
        import("points.csv", "boat_class,phase,point,kind\ninflatible,launch,hull,look\n");
    }
    QStringList owners() {
        QStringList names;
        const auto* box = child<QComboBox>("manifestOwnerBox");
        for (int i = 0; i < box->count(); ++i)
            names << box->itemText(i);
        return names;
    }
    bool isInRegister(core::SheetId sheet, const core::Cells& key) {
        return stored().register_().row(sheet, key).has_value();
    }
};

} // namespace

TEST_F(NoBoatStory, theClassIsListedAndSaysThatNoBoatHasIt) {
    openOffice("manifests");
    EXPECT_EQ(owners(), (QStringList{"class inflatable", "class skiff", "class inflatible: no boat has it",
                                     "Bittern", "Dabchick", "Grebe"}));
    EXPECT_EQ(child<QComboBox>("manifestOwnerBox")->currentText(), "class inflatable");
    EXPECT_TRUE(child("manifestAddButton")->isVisible());
    choose("manifestOwnerBox", "class inflatible: no boat has it");
    EXPECT_EQ(textOf("manifestSummaryLabel"),
              "inflatible: 1 line and 1 point. No boat has this class: nothing is asked by it.");
    ASSERT_EQ(rows().size(), 1u);
    EXPECT_FALSE(child("manifestAddButton")->isVisible());
    chooseRow("knife");
    press(Qt::Key_Return);
    EXPECT_EQ(textOf("manifestLineLabel"), "Knife, class inflatible");
    EXPECT_TRUE(textOf("manifestLineAboutLabel").startsWith("No boat has this class:"));
    EXPECT_TRUE(child("manifestLineTakeAwayButton")->isVisible());
    for (const char* name : {"manifestLineWriteButton", "manifestNumberBox", "manifestNoteEdit"})
        EXPECT_FALSE(child(name)->isVisible()) << name;
    choose("manifestOwnerBox", "class skiff"); // the twin
    chooseRow("knife");
    for (const char* name : {"manifestLineWriteButton", "manifestNumberBox", "manifestNoteEdit"})
        EXPECT_TRUE(child(name)->isVisible()) << name;
}

TEST_F(NoBoatStory, itsLineAndPointAreRemovedAndThenItIsListedNoMore) {
    openOffice("manifests");
    choose("manifestOwnerBox", "class inflatible: no boat has it");
    chooseRow("knife");
    pressButton("manifestLineTakeAwayButton");
    EXPECT_TRUE(isInRegister(core::SheetId::ManifestLines, {"inflatible", "", "knife"}))
        << "it is asked first";
    EXPECT_EQ(textOf("manifestLineQuestionLabel"),
              "Remove “knife” from class inflatible? No boat has the class.");
    pressButton("manifestLineReallyTakeAwayButton");
    EXPECT_FALSE(isInRegister(core::SheetId::ManifestLines, {"inflatible", "", "knife"}));
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("Knife removed."));
    EXPECT_EQ(child<QComboBox>("manifestOwnerBox")->currentText(), "class inflatible: no boat has it");
    choosePoint("launch/hull");
    EXPECT_EQ(textOf("manifestPointLabel"), "Hull, class inflatible");
    EXPECT_FALSE(child("manifestPointNameEdit")->isVisible());
    pressButton("manifestPointTakeAwayButton");
    pressButton("manifestPointReallyTakeAwayButton");
    EXPECT_FALSE(isInRegister(core::SheetId::Points, {"inflatible", "", "launch", "hull"}));
    EXPECT_FALSE(owners().filter("inflatible").size());
    EXPECT_EQ(child<QComboBox>("manifestOwnerBox")->currentText(), "class inflatable");
    EXPECT_EQ(stored().manifests().read()->versionsOf(inflatible).back().by, "Joss Iveny");
    EXPECT_TRUE(stored().record().verify(false)->problems.empty());
}

TEST_F(NoBoatStory, aBoatThatGetsTheClassMakesItOneLikeTheOthers) {
    openOffice("manifests");
    choose("manifestOwnerBox", "class inflatible: no boat has it");
    chooseRow("knife");
    import("boats.csv", "boat,boat_class\nGrebe,inflatible\n");
    pressButton("manifestLineTakeAwayButton");
    pressButton("manifestLineReallyTakeAwayButton");
    EXPECT_TRUE(textOf("manifestSaidLabel").contains("was changed meanwhile"))
        << textOf("manifestSaidLabel").toStdString();
    EXPECT_TRUE(storedLine(inflatible, "knife")) << "a boat is asked it by now";
    office().showPage("missing");
    settle();
    office().showPage("manifests");
    settle();
    EXPECT_EQ(child<QComboBox>("manifestOwnerBox")->currentText(), "class inflatible");
    EXPECT_TRUE(child("manifestNumberBox")->isVisible());
    EXPECT_TRUE(child("manifestLineWriteButton")->isVisible());
}
