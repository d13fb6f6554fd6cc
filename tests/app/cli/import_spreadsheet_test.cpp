#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

class ImportSpreadsheet : public SmallClub {
protected:
    Ran import(const std::string& text, std::vector<std::string> more = {},
               const std::string& as = "items") const {
        std::vector<std::string> words{"import", write("kit.csv", text), "--as", as, "--today", today};
        words.insert(words.end(), more.begin(), more.end());
        return run(words);
    }
};

const std::string kit = "Our kit\n\nWhat;Where;Qty;Colour\nknife;Coot;2;red\npaddle;Teal;1;blue\n";

TEST_F(ImportSpreadsheet, saysHowItWasReadAndWhatBecameOfIt) {
    const Ran ran = import(kit, {"--json"});
    ASSERT_EQ(ran.exit, 0) << ran.err;
    const Json answer = Json::parse(ran.out);
    EXPECT_EQ(answer["sheet"], "kit.csv");
    EXPECT_EQ(answer["heading_row"], 3);
    EXPECT_EQ(answer["columns"], (Json{{"What", "kit_type"}, {"Where", "home"}, {"Qty", "quantity"}}));
    EXPECT_EQ(answer["left_out"], Json::array({"Colour"}));
    EXPECT_EQ(answer["accepted"]["items.csv"], 3);
    EXPECT_TRUE(answer["rejected"].empty());
    EXPECT_TRUE(answer.contains("warnings"));
}

TEST_F(ImportSpreadsheet, twiceChangesNothing) {
    ASSERT_EQ(import(kit).exit, 0);
    const std::string before = content();
    const Ran ran = import(kit);
    EXPECT_EQ(ran.exit, 0);
    EXPECT_THAT(ran.out, HasSubstr("Colour   left out"));
    EXPECT_EQ(content(), before);
}

TEST_F(ImportSpreadsheet, onlyPlansInADryRun) {
    const std::string before = content();
    EXPECT_EQ(import(kit, {"--dry-run"}).exit, 0);
    EXPECT_EQ(content(), before);
}

TEST_F(ImportSpreadsheet, namesSheetAndCellOfWhatItRefuses) {
    const std::string before = content();
    const Ran ran = import("What;Where\nknife;Coot\nspoon;Coot\nknife;Swan\n", {"--json"});
    EXPECT_EQ(ran.exit, 2);
    EXPECT_THAT(ran.err, HasSubstr("kit.csv!A3: the club has no kit_type 'spoon': correct it"));
    EXPECT_THAT(ran.err, HasSubstr("kit.csv!B4: the club has no boat and no place 'Swan'"));
    const Json rejected = Json::parse(ran.out)["rejected"];
    ASSERT_EQ(rejected.size(), 2U);
    EXPECT_EQ(rejected[0]["file"], "kit.csv");
    EXPECT_EQ(rejected[0]["row"], 3);
    EXPECT_EQ(rejected[0]["column"], "What");
    EXPECT_EQ(rejected[0]["cell"], "A3");
    EXPECT_EQ(content(), before);
}

TEST_F(ImportSpreadsheet, makesWhatIsMissingWhereItMay) {
    const std::string text = "What;Size;Where\nspoon;big;Loft\n";
    EXPECT_EQ(import(text, {"--make", "kit_types"}).exit, 2);
    const Ran ran = import(text, {"--make", "kit_types,sizes,places", "--json"});
    ASSERT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(Json::parse(ran.out)["accepted"].dump(),
              R"({"places.csv":1,"kit_types.csv":1,"sizes.csv":1,"items.csv":1})");
}

TEST_F(ImportSpreadsheet, asksForTheOrderOfDayAndMonth) {
    const std::string text = "What;Made\nknife;03/04/2024\n";
    const Ran asked = import(text);
    EXPECT_EQ(asked.exit, 2);
    expectOneErrorLine(asked);
    EXPECT_THAT(asked.err, HasSubstr("'03/04/2024' may be two days"));
    EXPECT_THAT(asked.err, HasSubstr("(kit.csv!B2); say which, with --days dmy or --days mdy"));
    ASSERT_EQ(import(text, {"--days", "dmy"}).exit, 0);
    ASSERT_EQ(run({"export", m_folder / "out"}).exit, 0);
    EXPECT_THAT(textOf(m_folder / "out" / "items.csv"), HasSubstr("2024-04-03"));
}

TEST_F(ImportSpreadsheet, takesColumnsByTheirHeadings) {
    const std::string text = "Thing;Bought, or given\nknife;2024\n";
    EXPECT_EQ(import(text).exit, 0) << "what stands below is a kit type";
    const Ran ran = import(text, {"--columns", "Thing=kit_type,Bought, or given=made", "--json"});
    ASSERT_EQ(ran.exit, 0) << ran.err;
    EXPECT_EQ(Json::parse(ran.out)["columns"]["Bought, or given"], "made");
}

TEST_F(ImportSpreadsheet, ofItsOwnExportChangesNothing) {
    ASSERT_EQ(run({"export", m_folder / "out"}).exit, 0);
    const std::string before = content();
    for (const std::string name :
         {"items", "boats", "kit_types", "life_rules", "manifest_lines", "points", "people"}) {
        const Ran ran = run({"import", m_folder / "out" / (name + ".csv"), "--as", name, "--today", today});
        EXPECT_EQ(ran.exit, 0) << ran.err;
    }
    EXPECT_EQ(content(), before);
}

TEST_F(ImportSpreadsheet, takesPeople) {
    EXPECT_EQ(import("Name;Role\nCy Dahl;helm\n", {}, "people").exit, 0);
    ASSERT_EQ(run({"export", m_folder / "out"}).exit, 0);
    EXPECT_THAT(textOf(m_folder / "out" / "people.csv"), HasSubstr("Cy Dahl,"));
}

TEST_F(ImportSpreadsheet, takesAWordForWhatItIsSaidToMean) {
    const std::string text = "Name;Role\nCy Dahl;old salt\n";
    EXPECT_EQ(import(text, {}, "people").exit, 2) << "nobody knows the word";
    ASSERT_EQ(import(text, {"--words", "role:Old salt=driver"}, "people").exit, 0);
    ASSERT_EQ(run({"export", m_folder / "out"}).exit, 0);
    EXPECT_THAT(textOf(m_folder / "out" / "people.csv"), HasSubstr("driver"));
}

TEST_F(ImportSpreadsheet, aWordThatWasToldOnceIsKnownFromThenOn) {
    const std::string told = "Name;Role\nCy Dahl;old salt\n", next = "Name;Role\nDi Moe;Old Salt\n";
    ASSERT_EQ(import(told, {"--words", "role:Old salt=driver", "--dry-run"}, "people").exit, 0);
    EXPECT_EQ(import(next, {}, "people").exit, 2) << "nothing was imported, and nothing kept";
    ASSERT_EQ(import(told, {"--words", "role:Old salt=driver"}, "people").exit, 0);
    ASSERT_EQ(import(next, {}, "people").exit, 0);
    const std::string before = content();
    ASSERT_EQ(import(told, {"--words", "role:old-salt=driver"}, "people").exit, 0);
    EXPECT_EQ(content(), before) << "it is known already";
    ASSERT_EQ(import(next, {"--words", "role:OLD SALT=crew"}, "people").exit, 0);
    ASSERT_EQ(import(next, {}, "people").exit, 0);
    ASSERT_EQ(run({"export", m_folder / "out"}).exit, 0);
    const std::string people = textOf(m_folder / "out" / "people.csv");
    EXPECT_THAT(people, HasSubstr("Cy Dahl,"));
    EXPECT_THAT(people.substr(people.find("Di Moe")), HasSubstr(",crew")) << "the newest holds";
    EXPECT_EQ(run({"verify"}).exit, 0);
}

TEST_F(ImportSpreadsheet, tellsAndForgetsTheWordsOfTheClub) {
    EXPECT_THAT(run({"words"}).out, HasSubstr("not told"));
    const std::string sheet = "Name,Role\nJo Ek,bow hand\nUli Ott,Bow Hand\n";
    const Ran told = import(sheet, {"--words", "role:bow hand=driver", "--dry-run"}, "people");
    EXPECT_THAT(told.out, HasSubstr("role: bow hand → driver, 2 rows"));
    ASSERT_EQ(import(sheet, {"--words", "role:bow hand=driver"}, "people").exit, 0);
    const Json again = Json::parse(import(sheet, {"--json"}, "people").out);
    EXPECT_EQ(again["words"],
              Json::parse(R"([{"column":"role","word":"bow hand","means":"driver","rows":2}])"));
    const Json word = Json::parse(R"({"sheet":"people","column":"role","word":"bow hand","means":"driver"})");
    EXPECT_EQ(Json::parse(run({"words", "--json"}).out)["words"], Json::array({word}));
    EXPECT_EQ(run({"words", "--forget", "state:bow hand"}).exit, 2);
    EXPECT_EQ(run({"words", "--forget", "helm"}).exit, 2);
    EXPECT_EQ(import(sheet, {}, "people").exit, 0);
    const Ran forgotten = run({"words", "--forget", "people.role:bow hand", "--json"});
    EXPECT_EQ(Json::parse(forgotten.out)["forgotten"], Json::array({word}));
    EXPECT_EQ(Json::parse(forgotten.out)["words"], Json::array());
    EXPECT_EQ(import(sheet, {}, "people").exit, 2);
}

TEST_F(ImportSpreadsheet, refusesInOneLine) {
    const std::string before = content();
    const std::string good = write("kit.csv", kit);
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {"import", good},
             {"import", m_folder / "none.xlsx", "--as", "items"},
             {"import", m_folder.path().string(), "--as", "items"},
             {"import", write("kit.xlsx", kit), "--as", "items"},
             {"import", good, "--as", "things"},
             {"import", good, "--as", "items", "--days", "ymd"},
             {"import", good, "--as", "items", "--make", "boats"},
             {"import", good, "--as", "items", "--columns", "What"},
             {"import", good, "--as", "items", "--words", "helm=driver"},
             {"import", good, "--as", "items", "--words", "role:helm=driver"},
             {"import", good, "--as", "items", "--sheet", "Crew"}}) {
        const Ran ran = run(words);
        EXPECT_EQ(ran.exit, 2) << words.back();
        expectOneErrorLine(ran);
    }
    EXPECT_EQ(content(), before);
}

} // namespace
} // namespace small_club
