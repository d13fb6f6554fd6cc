#include "tests/app/gui/gear/register/register_story.h"

#include <tuple>

using core::SheetId;

namespace {

/// What a row is called, whether it was ever meant, and its last day.
using RegisterNames = support::RegisterStory;

TEST_F(RegisterNames, aNameThatIsAlmostAnotherIsToldBeforeItIsGiven) {
    openOffice("register");
    openRow("kit types", "knife");
    pressButton("registerRenameButton");
    typeInto("renameNameEdit", "bailr");
    ASSERT_TRUE(planned([&] { return textOf("renameWarningsLabel").contains("is almost 'bailer'"); }));
    typeInto("renameNameEdit", "cutter");
    ASSERT_TRUE(planned([&] { return !child("renameWarningsLabel")->isVisible(); }));
    pressButton("renameButton");
    EXPECT_TRUE(storedRow(SheetId::KitTypes, {"cutter"}));
}

TEST_F(RegisterNames, aBoatAndItsClassAreRenamed) {
    openOffice("register");
    openRow("boats", "Dabchick");
    pressButton("registerRenameButton");
    typeInto("renameNameEdit", "Bittern"); // there is one
    pressButton("renameButton");
    EXPECT_FALSE(textOf("renameSaidLabel").isEmpty());
    EXPECT_TRUE(storedRow(SheetId::Boats, {"Dabchick"}));
    typeInto("renameNameEdit", "Goosander");
    pressButton("renameButton");
    EXPECT_EQ(said(), "“Dabchick” is called “Goosander” from now on.");
    EXPECT_TRUE(storedRow(SheetId::Boats, {"Goosander"}));
    EXPECT_FALSE(storedRow(SheetId::Boats, {"Dabchick"}));
    openRow("boats", "Goosander");
    pressButton("registerRenameButton");
    choose("renameWhatBox", "class “inflatable”");
    typeInto("renameNameEdit", "rib");
    pressButton("renameButton");
    EXPECT_EQ(storedCell(SheetId::Boats, {"Bittern"}, "boat_class"), "rib") << "all boats of the class";
}

TEST_F(RegisterNames, eachOtherNameIsRenamedToo) {
    openOffice("register");
    const std::tuple<const char*, const char*, const char*, SheetId, core::Cells> cases[] = {
        {"people", "Hal Okoro", "Hal Reed", SheetId::People, {"Hal Reed"}},
        {"places", "Drying rack", "Drying room", SheetId::Places, {"Drying room"}},
        {"kit types", "bailer", "scoop", SheetId::KitTypes, {"scoop"}},
        {"kit types", "size adult", "grown-up", SheetId::Sizes, {"inflatable jacket", "grown-up"}}};
    for (const auto& [sheet, row, name, id, key] : cases) {
        openRow(sheet, row);
        pressButton("registerRenameButton");
        typeInto("renameNameEdit", name);
        press(Qt::Key_Return); // to the button
        EXPECT_FALSE(storedRow(id, key)) << name;
        press(Qt::Key_Space);
        EXPECT_TRUE(storedRow(id, key)) << name;
    }
}

TEST_F(RegisterNames, theClubsNameIsMended) {
    const std::string before = stored().name();
    openOffice("register");
    openRow("boats", "Grebe");
    pressButton("registerClubButton");
    EXPECT_EQ(child<QLineEdit>("renameNameEdit")->text().toStdString(), before);
    EXPECT_FALSE(child("renameButton")->isEnabled()) << "it is called so";
    press(Qt::Key_Escape);
    EXPECT_FALSE(child("renameNameEdit")->isVisible());
    EXPECT_FALSE(child("registerRowPanel")->isVisible());
    pressButton("registerClubButton");
    typeInto("renameNameEdit", QString(201, 'a'));
    pressButton("renameButton");
    EXPECT_FALSE(textOf("renameSaidLabel").isEmpty());
    EXPECT_EQ(stored().name(), before);
    typeInto("renameNameEdit", "Quillmere Lake Lifeboat");
    pressButton("renameButton");
    EXPECT_EQ(stored().name(), "Quillmere Lake Lifeboat");
    EXPECT_TRUE(said().contains("Quillmere Lake Lifeboat"));
    openRow("boats", "Grebe");
    EXPECT_FALSE(child("renameNameEdit")->isVisible());
}

TEST_F(RegisterNames, aKitTypeMadeInErrorIsTakenAwayWithItsSize) {
    openOffice("register");
    choose("registerSheetBox", "kit types");
    pressButton("registerNewButton");
    typeInto("cell_kit_type", "tow lien");
    pressButton("registerSaveButton");
    pressButton("registerNewSizeButton");
    typeInto("cell_size", "long");
    pressButton("registerSaveButton");
    openRow("kit types", "tow lien");
    EXPECT_EQ(child<QPushButton>("registerRemoveButton")->text(), "Remove kit type…");
    pressButton("registerRemoveButton");
    pressButton("registerRemoveReallyTakeAwayButton");
    EXPECT_TRUE(said().contains("tow lien/long")) << said().toStdString();
    EXPECT_TRUE(storedRow(SheetId::KitTypes, {"tow lien"}));
    pressButton("registerRemoveKeepButton");
    openRow("kit types", "size long");
    EXPECT_EQ(child<QPushButton>("registerRemoveButton")->text(), "Remove size…");
    pressButton("registerRemoveButton");
    press(Qt::Key_Escape);
    EXPECT_TRUE(storedRow(SheetId::Sizes, {"tow lien", "long"})) << "it was kept";
    pressButton("registerRemoveButton");
    pressButton("registerRemoveReallyTakeAwayButton");
    EXPECT_EQ(said(), "Tow lien, size long: removed.");
    openRow("kit types", "tow lien");
    pressButton("registerRemoveButton");
    pressButton("registerRemoveReallyTakeAwayButton");
    EXPECT_FALSE(storedRow(SheetId::KitTypes, {"tow lien"}));
    EXPECT_FALSE(child("registerRowPanel")->isVisible());
}

TEST_F(RegisterNames, whatIsNoLongerHereHasALastDay) {
    openOffice("register");
    openRow("people", "Wren Dallow"); // has a whistle of her own
    pressButton("registerEndButton");
    typeInto("endDayEdit", "31.3.2026");
    EXPECT_EQ(textOf("endDayUnderstoodLabel"), "is 31 March 2026");
    pressButton("endButton");
    EXPECT_FALSE(textOf("endSaidLabel").isEmpty()) << "where does it go?";
    EXPECT_EQ(storedCell(SheetId::People, {"Wren Dallow"}, "until"), "");
    ASSERT_TRUE(stored(core::Club::Access::ReadWrite)
                    .register_()
                    .write({SheetId::Items, {{{{"code", "KMD903N033"}}, {{"person", ""}}, std::nullopt}}},
                           "Joss Iveny", moment()));
    pressButton("endButton");
    EXPECT_EQ(storedCell(SheetId::People, {"Wren Dallow"}, "until"), "2026-03-31");
    EXPECT_EQ(said(), "“Wren Dallow” is here until 31 March 2026.");
    openRow("people", "Wren Dallow");
    pressButton("registerEndButton");
    typeInto("endDayEdit", "soon");
    EXPECT_FALSE(child<QPushButton>("endButton")->isEnabled());
    press(Qt::Key_Escape);
    EXPECT_TRUE(child("registerRowPanel")->isVisible());
}

} // namespace
