#include "app/gui/theme/language.h"
#include "app/text/words.h"
#include "core/store/database.h"
#include "tests/app/gui/gear/manifests/manifests_story.h"

#include <fstream>
#include <utility>

using support::inflatable;
using support::ManifestsStory;

TEST_F(ManifestsStory, anEarlierVersionShowsWhatWasAskedThenAndChangesNothing) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        check(club, "Bittern", core::Phase::Launch, "Tobin Ashe", {}, "2026-03-10T07:00:00Z");
        ASSERT_TRUE(club.manifests().changeLine(inflatable, {.kitType = "radio", .quantity = 2}, "Joss Iveny",
                                                moment("2026-03-11T09:00:00Z")));
        ASSERT_TRUE(club.manifests().changeLine(inflatable, {.kitType = "bailer", .quantity = 0},
                                                "Joss Iveny", moment("2026-03-12T09:00:00Z")));
    }
    openOffice("manifests");
    ASSERT_EQ(rowsIn("manifestVersionsList").size(), 3u);
    EXPECT_FALSE(rowOf("bailer"));
    chooseVersion(2);
    EXPECT_EQ(rowOf("radio")->cells, (QStringList{"radio", "1", "yes", "2"}));
    EXPECT_EQ(rowOf("radio")->markWord, "different today");
    EXPECT_EQ(rowOf("bailer")->cells[3], "not asked");
    EXPECT_EQ(rowOf("paddle")->markWord, "");
    EXPECT_TRUE(textOf("manifestAboutLabel").contains("1 check was signed by it, the last of Bittern"))
        << textOf("manifestAboutLabel").toStdString();
    EXPECT_FALSE(child("manifestLinePanel")->isVisible());
    EXPECT_FALSE(child("manifestAddButton")->isVisible());
    chooseVersion(0);
    EXPECT_EQ(rowOf("radio")->cells[1], "2");
    EXPECT_TRUE(child("manifestAddButton")->isVisible());
}

TEST_F(ManifestsStory, sheetsGoOutAreChangedAndComeBackAsAVersion) {
    app::Choosers choosers;
    choosers.exportFolder = choosers.importFolder = [this](QWidget*) { return pathOf("sheets"); };
    openOffice("manifests", choosers);
    pressButton("manifestExportButton");
    const auto folder = std::filesystem::path(pathOf("sheets").toStdString());
    ASSERT_TRUE(std::filesystem::exists(folder / "points.csv"));
    for (const auto& file : std::filesystem::directory_iterator(folder))
        std::filesystem::remove(file.path());
    std::ofstream(folder / "points.csv") << "boat_class,phase,point,low\ninflatable,launch,keel chamber,19\n";
    pressButton("manifestImportButton");
    settle();
    EXPECT_EQ(textOf("manifestSaidLabel"), "Imported: 1 row.");
    const auto versions = stored().manifests().read()->versionsOf(inflatable);
    ASSERT_EQ(versions.size(), 2u);
    EXPECT_EQ(versions[1].changes.front().pointAfter->limits.low, 19);
    EXPECT_EQ(rowsIn("manifestVersionsList").size(), 2u);
}

TEST_F(ManifestsStory, versionsOfOneDayTellTheirTimeAndAnImportIsNobodys) {
    {
        core::Club club = stored(core::Club::Access::ReadWrite);
        for (const char* at : {"2026-03-11T09:00:00Z", "2026-03-12T08:05:00Z", "2026-03-12T15:40:00Z"})
            ASSERT_TRUE(club.manifests().changeLine(
                inflatable, {.kitType = "radio", .quantity = 2 + at[12] - '0'}, "Joss Iveny", moment(at)));
    }
    openOffice("manifests");
    const auto rows = rowsIn("manifestVersionsList");
    ASSERT_EQ(rows.size(), 4u);
    const auto timeOf = [](const char* at) { return app::timeInWords(*core::Instant::parse(at)); };
    EXPECT_EQ(rows[0].title, "12 March 2026");
    EXPECT_EQ(rows[0].remark, timeOf("2026-03-12T15:40:00Z") + " · Radio: 7 instead of 10, by Joss Iveny");
    EXPECT_EQ(rows[1].title, "12 March 2026");
    EXPECT_TRUE(rows[1].remark.startsWith(timeOf("2026-03-12T08:05:00Z") + " · Radio: 10"));
    EXPECT_EQ(rows[2].title, "11 March 2026");
    EXPECT_EQ(rows[2].remark, "Radio: 11 instead of 1, by Joss Iveny") << "the only one of its day";
    EXPECT_EQ(rows[3].remark, "The first, by an import of sheets");
}

TEST_F(ManifestsStory, aRecordThatCannotBeReadIsOneErrorAndThePageComesBackWithIt) {
    const auto setKind = [this](const char* kind) {
        core::Database(file(), core::Database::Mode::ReadWrite)
            .script(std::string("DROP TRIGGER fact_is_never_changed; UPDATE fact SET body = "
                                "json_set(body, '$.set.kind', '") +
                    kind +
                    "') WHERE kind = 'point' AND body LIKE '%keel chamber%';"
                    "CREATE TRIGGER fact_is_never_changed BEFORE UPDATE ON fact BEGIN\n"
                    "    SELECT RAISE(ABORT, 'a fact is never changed');\nEND");
    };
    setKind("squint");
    openOffice("manifests");
    EXPECT_TRUE(textOf("manifestSaidLabel").startsWith("The record of the manifests cannot be read"))
        << textOf("manifestSaidLabel").toStdString();
    EXPECT_TRUE(rows().empty());
    EXPECT_TRUE(rowsIn("manifestVersionsList").empty());
    EXPECT_FALSE(child("manifestAddButton")->isVisible());
    EXPECT_FALSE(child("manifestLinePanel")->isVisible());
    setKind("measure");
    office().showPage("missing");
    settle();
    office().showPage("manifests");
    settle();
    EXPECT_EQ(textOf("manifestSaidLabel"), "");
    EXPECT_EQ(rows().size(), 12u);
}

TEST_F(ManifestsStory, aSheetThatIsRefusedSaysWhyInTheWindowsLanguage) {
    app::Choosers choosers;
    choosers.importFolder = [this](QWidget*) { return pathOf("sheets"); };
    std::filesystem::create_directory(pathOf("sheets").toStdString());
    std::ofstream(pathOf("sheets/points.csv").toStdString())
        << "boat_class,phase,point,low\ninflatable,launch,keel chamber,\"19,5\"\n";
    for (const auto& [language, said] :
         {std::pair("de",
                    "points.csv, Zeile 2 low: „19,5“ ist hier keine Zahl: mit Punkt schreiben, ohne Komma"),
          std::pair("en", "points.csv, row 2 low: '19,5' is no number: write it with a full stop, "
                          "without a comma")}) {
        app::speak(language);
        openOffice("manifests", choosers);
        pressButton("manifestImportButton");
        settle();
        EXPECT_EQ(textOf("manifestSaidLabel").section('\n', 1), said);
    }
    app::speak("en");
}
