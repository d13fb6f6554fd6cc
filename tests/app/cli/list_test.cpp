#include "tests/app/cli/read_back.h"
#include "tests/app/cli/small_club.h"

namespace small_club {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

class Lists : public SmallClub {
protected:
    std::string out(const std::string& name) const { return m_folder / name; }
    /// What the list says as PDF, its blanks made one each.
    std::string printed(const std::string& list, int exit) {
        const Ran ran = run({"list", list, "--out", out("list.pdf"), "--today", today});
        EXPECT_EQ(ran.exit, exit) << ran.err;
        return textOfPdf(out("list.pdf"));
    }
    Json rows(const std::string& list, int exit) {
        const Ran ran = run({"list", list, "--out", out("list.csv"), "--today", today});
        EXPECT_EQ(ran.exit, exit) << ran.err;
        return rowsOfCsv(out("list.csv"));
    }
    void import(const std::map<std::string, std::string>& files) {
        writeFiles(m_folder / "more", files);
        const Ran ran = run({"import", m_folder / "more", "--today", today});
        ASSERT_EQ(ran.exit, 0) << ran.out << ran.err;
    }
};

TEST_F(Lists, missingKitOnPaperHasItsChainAndItsPage) {
    const std::string text = printed("missing", 1);
    for (const char* part : {"Missing", "1 item missing", "knife", "Coot", "8 March 2026", "page 1 of 1"})
        EXPECT_THAT(text, HasSubstr(part));
    EXPECT_THAT(text, HasSubstr(groupedCode(cootKnife)));
}

TEST_F(Lists, aSheetHasIsoDaysAndWholeCodesByAForeignReader) {
    const Json table = rows("missing", 1);
    ASSERT_EQ(table.size(), 2U);
    EXPECT_EQ(table[0], Json({"kit", "tag", "boat", "missing since", "how it was lost from sight"}));
    EXPECT_EQ(table[1][0], "knife");
    EXPECT_EQ(table[1][1], cootKnife);
    EXPECT_EQ(table[1][3], "2026-03-08");
    const std::string bytes = textOf(out("list.csv"));
    EXPECT_EQ(std::count(bytes.begin(), bytes.end(), '\n'), 2);
    EXPECT_THAT(bytes, testing::EndsWith("\r\n"));
}

TEST_F(Lists, kitLeavesOutWhatIsWrittenOffAndSaysSo) {
    const Json table = rows("kit", 0);
    EXPECT_EQ(table.size(), 9U) << "eight things and the headings";
    EXPECT_THAT(table.dump(), Not(HasSubstr(writtenOff)));
    EXPECT_THAT(table.dump(), HasSubstr(knife));
    EXPECT_THAT(printed("kit", 0), HasSubstr("8 items. 1 item written off, not listed."));
}

TEST_F(Lists, theNextDayOfAThingStandsWithItsRule) {
    for (const Json& row : rows("kit", 0))
        if (row[8] == towLine) {
            EXPECT_EQ(row[5], "2026-06-01") << "first used a year before";
            EXPECT_EQ(row[6], "yearly look");
            return;
        }
    FAIL() << "the tow line is not listed";
}

TEST_F(Lists, exitCodesAreThoseOfTheAnswers) {
    const auto exitOf = [&](const std::vector<std::string>& more) {
        std::vector<std::string> words{"list", "due", "--out", out("due.csv")};
        words.insert(words.end(), more.begin(), more.end());
        return run(words).exit;
    };
    EXPECT_EQ(exitOf({"--within", "90d", "--today", "2026-01-02"}), 0) << "150 days ahead";
    EXPECT_EQ(exitOf({"--within", "90d", "--today", "2026-05-25"}), 1) << "seven days ahead";
    EXPECT_EQ(exitOf({"--within", "200d", "--today", "2026-01-02"}), 0) << "within 200 days, but later";
    EXPECT_EQ(rowsOfCsv(out("due.csv")).size(), 2U);
    printed("log", 0);
    printed("boats", 1);
}

TEST_F(Lists, documentSaysWhatWasWritten) {
    const Ran ran = run({"list", "kit", "--out", out("kit.pdf"), "--json"});
    EXPECT_EQ(ran.exit, 0);
    EXPECT_EQ(Json::parse(ran.out), Json({{"list", "kit"}, {"file", out("kit.pdf")}, {"rows", 8}}));
    EXPECT_EQ(ran.err, "");
}

TEST_F(Lists, stocktakeHasWhatIsToBeCountedAtAPlace) {
    EXPECT_THAT(printed("stocktake", 0), HasSubstr("Nothing is to be counted."));
    import({{"places.csv", "place\nLoft\n"},
            { "items.csv",
              "code,kit_type,size,place,state,since,why,serial,registered\n"
              "K000000018,paddle,,Loft,,,,,2024-01-01\n"
              "K000000026,life jacket,M,Shed,,,,LJ-4,2024-01-01\n"
              "K000000034,knife,,Shed,missing,2026-03-01,lost,,2024-01-01\n" }});
    EXPECT_EQ(rows("stocktake", 0),
              Json({{"place", "kit", "size", "owner", "state", "serial", "tag"},
                    {"Loft", "paddle", "", "", "serviceable", "", "K000000018"},
                    {"Shed", "life jacket", "M", "", "serviceable", "LJ-4", "K000000026"}}));
    EXPECT_THAT(printed("stocktake", 0), HasSubstr("2 items to count."));
    const std::vector<std::string> words{"list", "stocktake", "--out", out("shed.csv"), "--place"};
    const auto at = [&](const std::string& place) {
        auto all = words;
        all.push_back(place);
        return run(all);
    };
    EXPECT_EQ(at("shed").exit, 0);
    EXPECT_EQ(rowsOfCsv(out("shed.csv")).size(), 2U);
    const Ran nowhere = at("Attic");
    EXPECT_EQ(nowhere.exit, 2);
    expectOneErrorLine(nowhere);
    // The paper asks for what a stocktake that begins asks for.
    const Json begun = Json::parse(
        run({"stocktake", "--place", "Shed", "--codes", "-", "--json", "--today", today}, knife + "\n").out);
    EXPECT_THAT(begun.dump(), HasSubstr("K000000026"));
    EXPECT_THAT(begun.dump(), Not(HasSubstr("K000000034")));
}

TEST_F(Lists, makeReadyHasEachBoatWithWhatIsCarriedToIt) {
    EXPECT_EQ(rows("make-ready", 1)[1][0], "Coot") << "left out, so the first";
    import(
        {{ "items.csv",
           "code,kit_type,place,first_use,registered\nK000000018,paddle,Shed,,2024-01-01\n"
           "K000000026,paddle,Shed,,2024-01-01\nK000000034,life jacket,Shed,,2024-01-01\n"
           "K000000042,life jacket,Shed,,2024-01-01\n"
           "K000000050,tow line,Shed,2026-01-01,2024-01-01\n"
           "K00000009T,knife,Shed,,2024-01-01\n" }});
    const Json table = rows("make-ready", 0);
    EXPECT_EQ(table[0], Json({"boat", "kit", "tag", "from", "remark"}));
    ASSERT_EQ(table.size(), 9U) << "two boats and six things to carry";
    EXPECT_THAT(table.dump(), HasSubstr(Json({"Coot", "knife", "K00000009T", "Shed", ""}).dump()));
    const std::string text = printed("make-ready", 0);
    for (const char* part : {"Make ready", "2 of 2 boats can be made complete, with 6 moves."})
        EXPECT_THAT(text, HasSubstr(part));
}

TEST_F(Lists, aCellIsNoFormulaAndIsShownAsItIs) {
    import({{"kit_types.csv", "kit_type\n\"=1+1, \"\"red\"\"\"\nКошка é\n"},
            { "items.csv",
              "kit_type,place,serial,registered\n\"=1+1, \"\"red\"\"\",Shed,@sum,2024-01-01\n"
              "Кошка é,Shed,-2,2024-01-01\n" }});
    const Json table = rows("kit", 0);
    EXPECT_EQ(table[1][0], "'=1+1, \"red\"") << "by its name the first";
    EXPECT_EQ(table[1][7], "'@sum");
    EXPECT_EQ(table[table.size() - 1][0], "Кошка é");
    const std::string text = printed("kit", 0);
    EXPECT_THAT(text, HasSubstr("=1+1, \"red\""));
    EXPECT_THAT(text, HasSubstr("Кошка é"));
}

TEST_F(Lists, aLongListIsWholeOnItsPages) {
    const std::string longName(200, '#');
    std::string items = "kit_type,place,registered\n";
    for (int i = 0; i < 300; ++i)
        items += (i % 50 == 0 ? longName : std::string("paddle")) + ",Shed,2024-01-01\n";
    import({{"kit_types.csv", "kit_type\n" + longName + "\n"}, { "items.csv", items }});
    const Json table = rows("kit", 0);
    ASSERT_EQ(table.size(), 309U);
    printed("kit", 0);
    const int pages = pagesOfPdf(out("list.pdf"));
    EXPECT_GT(pages, 3);
    std::string all;
    for (int page = 1; page <= pages; ++page) {
        const std::string text = textOfPdf(out("list.pdf"), page);
        EXPECT_THAT(text, HasSubstr("page " + std::to_string(page) + " of " + std::to_string(pages)));
        EXPECT_THAT(text, HasSubstr("Small Club · Kit · 14 March 2026"));
        all += text;
    }
    for (std::size_t i = 1; i < table.size(); ++i)
        ASSERT_THAT(all, HasSubstr(groupedCode(table[i][8]))) << "row " << i;
    EXPECT_EQ(std::count(all.begin(), all.end(), '#'), 6 * 200) << "six long names, nothing cut";
}

TEST_F(Lists, aRowThatIsHigherThanAPageGoesOnOnTheNext) {
    std::string words;
    while (words.size() < 1990)
        words += "Zz ";
    ASSERT_EQ(
        run({"log-add", "--boat", "Teal", "--text", words, "--severity", "remark", "--by", "Ada Thorne"})
            .exit,
        0);
    printed("log", 0);
    std::string all;
    for (int page = 1; page <= pagesOfPdf(out("list.pdf")); ++page)
        all += textOfPdf(out("list.pdf"), page);
    EXPECT_EQ(std::count(all.begin(), all.end(), 'Z'), std::count(words.begin(), words.end(), 'Z'));
}

TEST_F(Lists, anEmptyListSaysSo) {
    EXPECT_THAT(printed("log", 0), HasSubstr("The log is empty."));
    EXPECT_EQ(rows("log", 0).size(), 1U) << "its headings";
}

TEST_F(Lists, refusesWhatItCannotWriteWithOneLine) {
    const std::vector<std::pair<std::vector<std::string>, int>> cases{
        {{"list", "kit", "--out", out("kit.doc")}, 2},
        {{"list", "everything", "--out", out("kit.pdf")}, 2},
        {{"list", "due", "--within", "soon", "--out", out("kit.pdf")}, 2},
        {{"list", "kit", "--place", "Shed", "--out", out("kit.pdf")}, 2},
        {{"list", "kit", "--out", out("nowhere") + "/kit.pdf"}, 3},
        {{"list", "kit", "--out", out("nowhere") + "/kit.csv"}, 3}};
    for (const auto& [words, exit] : cases) {
        const Ran ran = run(words);
        EXPECT_EQ(ran.exit, exit) << words[1] << ' ' << words.back();
        expectOneErrorLine(ran);
    }
    EXPECT_FALSE(std::filesystem::exists(out("kit.pdf")));
    EXPECT_EQ(run({"list", "kit", "--out", out("kit.pdf")}).exit, 0) << "the same, well asked for";
}

TEST_F(Lists, takesNoClubFilesPlace) {
    const std::string before = content();
    const std::filesystem::path disguised = m_folder / "club.pdf";
    std::filesystem::copy_file(m_file, disguised);
    EXPECT_EQ(run({"list", "kit", "--out", disguised}).exit, 2);
    EXPECT_EQ(contentOf(disguised), before);
}

} // namespace
} // namespace small_club
