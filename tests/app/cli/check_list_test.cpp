#include "tests/app/cli/read_back.h"
#include "tests/app/cli/small_club.h"

#include <fstream>

namespace small_club {
namespace {

using testing::HasSubstr;
using testing::Not;

class CheckLists : public SmallClub {
protected:
    std::string out() const { return m_folder / "check.pdf"; }
    std::string printed(std::vector<std::string> more = {}) {
        std::vector<std::string> words{"check-list", "--boat", "teal", "--out", out(), "--today", today};
        words.insert(words.end(), more.begin(), more.end());
        const Ran ran = run(words);
        EXPECT_EQ(ran.exit, 0) << ran.err;
        return textOfPdf(out());
    }
    void import(const std::map<std::string, std::string>& files) {
        writeFiles(m_folder / "more", files);
        const Ran ran = run({"import", m_folder / "more", "--today", today});
        ASSERT_EQ(ran.exit, 0) << ran.out << ran.err;
    }
    /// What is drawn, as poppler finds it: each box and line is a path of its own.
    int paths() const {
        const std::string svg = m_folder / "check.svg";
        EXPECT_EQ(support::runProgram(popplerTool("pdftocairo"), {"-svg", out(), svg}).exit, 0);
        const std::string text = textOf(svg);
        int count = 0;
        for (auto at = text.find("<path"); at != std::string::npos; at = text.find("<path", at + 1))
            count += text.compare(at, 300, "stroke") != 0 &&
                     text.substr(at, text.find('>', at) - at).find("stroke-width") != std::string::npos;
        return count;
    }
    /// A manifest of so many further lines, each once.
    void addLines(int count) {
        std::string types = "kit_type\n", lines = "boat_class,kit_type,quantity,note\n";
        for (int i = 0; i < count; ++i) {
            types += "thing " + std::to_string(i) + "x\n";
            lines += "inflatable,thing " + std::to_string(i) + "x,1,look at it closely\n";
        }
        import({{"kit_types.csv", types}, { "manifest_lines.csv", lines }});
    }
};

TEST_F(CheckLists, hasAllThatIsAskedOnOnePage) {
    const std::string text = printed();
    EXPECT_EQ(pagesOfPdf(out()), 1);
    for (const char* part :
         {"Teal", "day", "driver", "crew", "signature", "person in charge", "Nothing is open in the log",
          "Before the launch", "hull", "bow chamber, 18 to 22 kPa",
          "engine run, 0:05 to 5:00 min, not required", "2 × life jacket, one for each on board",
          "2 × paddle", "tow line", "radio, not required", "Complete kit is not permission to launch",
          "14 March 2026"})
        EXPECT_THAT(text, HasSubstr(part));
    EXPECT_THAT(text, Not(HasSubstr("After the return"))) << "no such point is asked";
    EXPECT_THAT(text, Not(HasSubstr("page 1"))) << "it is the only one";
}

TEST_F(CheckLists, hasTheBoatsOpenEntriesAndThoseOfItsKitAlone) {
    ASSERT_EQ(run({"log-add", "--boat", "Teal", "--text", "Handle frays", "--severity", "remark", "--by",
                   "Ada Thorne", "--today", today})
                  .exit,
              0);
    ASSERT_EQ(run({"log-add", "--boat", "Coot", "--text", "Leaks much", "--severity", "stop", "--by",
                   "Ada Thorne", "--today", today})
                  .exit,
              0);
    const std::string text = printed();
    EXPECT_THAT(text, HasSubstr("Open in the log"));
    EXPECT_THAT(text, HasSubstr("14 March 2026: Handle frays"));
    EXPECT_THAT(text, Not(HasSubstr("Leaks")));
}

TEST_F(CheckLists, hasABoxForEachThingThatIsWanted) {
    printed();
    const int before = paths();
    ASSERT_GT(before, 14) << "of seven things each two, of a look one";
    import({{ "manifest_lines.csv", "boat_class,kit_type,quantity,required\ninflatable,paddle,6,yes\n" }});
    printed();
    EXPECT_EQ(paths(), before + 8) << "four more, aboard and back";
}

TEST_F(CheckLists, growsSmallerThenTwoColumnsThenASecondPage) {
    addLines(60);
    EXPECT_THAT(printed(), HasSubstr("thing 59x"));
    EXPECT_EQ(pagesOfPdf(out()), 1);
    addLines(400);
    const std::string text = printed();
    const int pages = pagesOfPdf(out());
    EXPECT_GT(pages, 1);
    for (int i = 0; i < 400; ++i)
        ASSERT_THAT(text, HasSubstr("thing " + std::to_string(i) + "x"));
    EXPECT_THAT(textOfPdf(out(), pages), HasSubstr("page " + std::to_string(pages) + " of"));
    EXPECT_THAT(textOfPdf(out(), pages), HasSubstr("signature"));
}

TEST_F(CheckLists, cutsNothingOfLongNames) {
    const std::string longName(200, '#');
    import(
        {{ "points.csv",
           "boat_class,phase,point,kind,required,note\ninflatable,return," + longName + ",look,yes,\"" +
               std::string(500, 'Q') + "\"\n" }});
    const std::string text = printed();
    EXPECT_EQ(std::count(text.begin(), text.end(), '#'), 200);
    EXPECT_EQ(std::count(text.begin(), text.end(), 'Q'), 500);
}

TEST_F(CheckLists, documentAndErrors) {
    const Ran ran = run({"check-list", "--boat", "teal", "--out", out(), "--json"});
    EXPECT_EQ(Json::parse(ran.out), Json({{"boat", "Teal"}, {"file", out()}, {"pages", 1}}));
    const Ran unknown = run({"check-list", "--boat", "Swan", "--out", m_folder / "swan.pdf"});
    EXPECT_EQ(unknown.exit, 2);
    expectOneErrorLine(unknown);
    EXPECT_FALSE(std::filesystem::exists(m_folder / "swan.pdf"));
    const Ran nowhere = run({"check-list", "--boat", "Teal", "--out", m_folder / "no" / "teal.pdf"});
    EXPECT_EQ(nowhere.exit, 3);
    expectOneErrorLine(nowhere);
}

/// The round of the trade: before, the loose kit, after (common practice, no source).
TEST_F(CheckLists, wallCardOfAStarterHasTheWholeRoundInItsOrder) {
    const std::string file = m_folder / "begun.tholepin";
    ASSERT_EQ(ctl({"create", file, "--club", "Begun", "--starter", "inflatable"}).exit, 0);
    writeFiles(m_folder / "boats", {{"boats.csv", "boat,boat_class\nTeal,inflatable\nGull,inflatable\n"}});
    ASSERT_EQ(ctl({"import", file, m_folder / "boats"}).exit, 0);
    ASSERT_EQ(ctl({"check-list", file, "--boat", "Teal", "--card", "--out", out()}).exit, 0);
    EXPECT_EQ(pagesOfPdf(out()), 1);
    // In the order in which it is drawn, column by column.
    const Ran read = support::runProgram(popplerTool("pdftotext"), {"-raw", out(), "-"});
    std::string text = read.out;
    std::replace(text.begin(), text.end(), '\n', ' ');
    std::size_t at = 0;
    for (const char* part : {"inflatable",
                             "Before",
                             "earlier log entries read *",
                             "hull: no wear, no cuts *",
                             "bungs in *",
                             "floor fast to the hull *",
                             "handles, foot straps, ropes",
                             "no sharp edges *",
                             "capsize rope in its pocket *",
                             "bow chamber, 17 to 21",
                             "valves clean and capped *",
                             "fuel bladder fast at its points *",
                             "fuel line: no cracks, in its loops",
                             "out of gear",
                             "cooling water seen while it runs *",
                             "Kit",
                             "rescue tube *",
                             "2 × paddle *",
                             "tow line *",
                             "knife *",
                             "2 × whistle *",
                             "2 × life jacket",
                             "radio *",
                             "in its waterproof cover",
                             "After",
                             "rinsed with fresh water, bungs out *",
                             "free of sand *",
                             "plate and guard",
                             "pin in its nut *",
                             "safety chain fast *",
                             "engine run in fresh water, 3:00 to 5:00",
                             "fuel line off",
                             "treated against",
                             "fuel filled *",
                             "stowed *",
                             "log written *",
                             "* common practice, no published source."}) {
        const std::size_t found = text.find(part, at);
        ASSERT_NE(found, std::string::npos) << part << " after " << text.substr(0, at);
        at = found;
    }
    EXPECT_THAT(text, Not(HasSubstr("bow chamber, 17 to 21 kPa *")))
        << "its range is an example, not practice";
    EXPECT_THAT(text, Not(HasSubstr("Teal"))) << "it hangs there for all boats of the class";
}

TEST_F(CheckLists, wallCardNamesABoatThatDiffersFromItsClass) {
    EXPECT_THAT(printed({"--card"}), Not(HasSubstr("Teal")));
    import({{ "manifest_lines.csv", "boat,kit_type,quantity\nTeal,flare,3\n" }});
    const std::string text = printed({"--card"});
    EXPECT_THAT(text, HasSubstr("inflatable: Teal"));
    EXPECT_THAT(text, HasSubstr("3 × flare"));
}

} // namespace
} // namespace small_club
