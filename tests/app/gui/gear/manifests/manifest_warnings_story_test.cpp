#include "app/text/outlook_sentences.h"
#include "core/base/error_code.h"
#include "tests/app/gui/gear/manifests/manifests_story.h"

#include <QComboBox>
#include <QPushButton>
#include <QSpinBox>

using support::inflatable;
using support::ManifestsStory;

namespace {

const QString noAnchor =
    "Is it meant so? A 'anchor' is asked for, and the club has none: each check will miss it.";

/// A kit type of which the club has no item, and the form of a new line.
class LineWarnings : public ManifestsStory {
protected:
    void beginLine() {
        import("kit_types.csv", "kit_type\nanchor\n");
        openOffice("manifests");
        pressButton("manifestAddButton");
    }
    QLabel& label() { return *child<QLabel>("manifestLineWarningsLabel"); }
    bool isTold() {
        return support::waitFor([&] { return label().isVisible(); });
    }
};

} // namespace

// In the words of the register's forms, which are the import's.
TEST_F(LineWarnings, aLineThatMayNotBeMeantSoIsToldBeforeItIsSaved) {
    beginLine();
    EXPECT_FALSE(label().isVisible());
    choose("manifestKitTypeBox", "anchor");
    ASSERT_TRUE(isTold());
    EXPECT_EQ(label().text(), noAnchor);
    EXPECT_EQ(label().text(), app::warningsInLines(
                                  std::vector{core::Error{core::ErrorCode::TypeWithoutItem, {"anchor"}}}, 1));
    pressButton("manifestLineWriteButton");
    EXPECT_TRUE(storedLine(inflatable, "anchor")) << "it is taken";
    EXPECT_EQ(textOf("manifestSaidLabel").count("Is it meant so?"), 0) << "it was told";
    EXPECT_FALSE(label().isVisible()) << "the line stands as it is";
}

TEST_F(LineWarnings, whoeverSavesAtOnceIsToldWithWhatBecameOfIt) {
    beginLine();
    auto* kitTypes = child<QComboBox>("manifestKitTypeBox");
    kitTypes->setCurrentIndex(kitTypes->findText("anchor"));
    child<QPushButton>("manifestLineWriteButton")->click();
    settle();
    EXPECT_TRUE(storedLine(inflatable, "anchor"));
    EXPECT_TRUE(textOf("manifestSaidLabel").endsWith(noAnchor)) << textOf("manifestSaidLabel").toStdString();
}

TEST_F(LineWarnings, aLineThatIsMeantSoIsToldNothingOf) {
    beginLine();
    choose("manifestKitTypeBox", "anchor");
    ASSERT_TRUE(isTold());
    choose("manifestKitTypeBox", "throw line");
    ASSERT_TRUE(support::waitFor([&] { return !label().isVisible(); }));
    pressButton("manifestLineWriteButton");
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("Throw line: 1 asked from now on."));
    EXPECT_FALSE(textOf("manifestSaidLabel").contains("Is it meant so?"));
}

TEST_F(LineWarnings, removingALineAsksNothingOfTheKind) {
    beginLine();
    choose("manifestKitTypeBox", "anchor");
    pressButton("manifestLineWriteButton");
    chooseRow("anchor");
    child<QSpinBox>("manifestNumberBox")->setValue(3);
    ASSERT_TRUE(isTold());
    pressButton("manifestLineTakeAwayButton");
    EXPECT_FALSE(label().isVisible()) << "the question stands alone";
    pressButton("manifestLineReallyTakeAwayButton");
    EXPECT_FALSE(storedLine(inflatable, "anchor"));
    EXPECT_FALSE(textOf("manifestSaidLabel").contains("Is it meant so?"));
}

TEST_F(LineWarnings, importedSheetsTellWhichRowsMayNotBeMeantSo) {
    app::Choosers choosers;
    choosers.importFolder = [this](QWidget*) { return pathOf("sheets"); };
    std::filesystem::create_directory(pathOf("sheets").toStdString());
    std::ofstream(pathOf("sheets/manifest_lines.csv").toStdString())
        << "boat_class,kit_type\ninflatable,throw line\ninflatible,knife\n";
    openOffice("manifests", choosers);
    pressButton("manifestImportButton");
    settle();
    EXPECT_EQ(
        textOf("manifestSaidLabel").split('\n'),
        (QStringList{"Imported: 2 rows.",
                     "manifest_lines.csv, row 3: Is it meant so? No boat has the class 'inflatible': its "
                     "manifest is asked of none.",
                     "manifest_lines.csv, row 3: Is it meant so? The class 'inflatible' is almost "
                     "'inflatable': if they are one, write them alike."}));
}
