#include "tests/app/cli/small_club.h"

#include <fstream>
#include <regex>
#include <set>

namespace small_club {
namespace {

using testing::AnyOf;
using testing::HasSubstr;
using testing::Not;

/// The commands of docs/command-line.md with the options that its table names for each.
std::map<std::string, std::set<std::string>> commandsOfTheDocument() {
    std::map<std::string, std::set<std::string>> commands;
    std::ifstream in(DOCS_FOLDER "/command-line.md");
    const std::regex usage("`([a-z][a-z-]*)( [^`]*)?`");
    const std::regex option("--[a-z][a-z-]*");
    for (std::string line; std::getline(in, line);) {
        if (!line.starts_with("| `")) continue;
        const std::string first = std::regex_replace(line, std::regex("\\\\\\|"), "/");
        const std::string cell = first.substr(2, first.find(" | ", 2) - 2);
        for (std::sregex_iterator at(cell.begin(), cell.end(), usage), end; at != end; ++at) {
            const std::string words = at->str();
            auto& options = commands[(*at)[1]];
            for (std::sregex_iterator each(words.begin(), words.end(), option); each != end; ++each)
                options.insert(each->str());
        }
    }
    return commands;
}

/// Those that --help lists, beneath a heading each.
std::set<std::string> commandsOfTheProgram() {
    std::set<std::string> commands;
    const std::string help = ctl({"--help"}).out;
    const std::regex entry("\n  ([a-z][a-z-]*)");
    for (std::sregex_iterator at(help.begin(), help.end(), entry), end; at != end; ++at)
        commands.insert((*at)[1]);
    return commands;
}

TEST(Manual, theDocumentHasEachCommandAndNoOther) {
    std::set<std::string> told;
    for (const auto& [command, options] : commandsOfTheDocument())
        told.insert(command);
    EXPECT_EQ(told, commandsOfTheProgram());
    EXPECT_GT(told.size(), 40U);
}

TEST(Manual, theOptionsOfTheDocumentAreInTheHelp) {
    int compared = 0;
    for (const auto& [command, options] : commandsOfTheDocument()) {
        const std::string help = ctl({command, "--help"}).out;
        for (const std::string& option : options) {
            EXPECT_THAT(help, HasSubstr("\n  " + option)) << command;
            ++compared;
        }
    }
    EXPECT_GT(compared, 80);
}

TEST(Manual, helpTellsTheExitCodes) {
    const std::string due = ctl({"due", "--help"}).out;
    for (const char* code : {"\n  0 ", "\n  1 ", "\n  2 ", "\n  3 "})
        EXPECT_THAT(due, HasSubstr(code));
    EXPECT_THAT(ctl({"export", "--help"}).out, Not(HasSubstr("\n  1 "))) << "it never needs somebody";
}

TEST(Manual, helpFitsATerminal) {
    for (const std::string& command : commandsOfTheProgram()) {
        std::istringstream help(ctl({command, "--help"}).out);
        for (std::string line; std::getline(help, line);)
            EXPECT_LE(line.size(), 86U) << command << ": " << line; // bytes: dots and dashes have three
    }
}

TEST(Manual, theVersionIsTold) {
    EXPECT_THAT(ctl({"--version"}).out, testing::MatchesRegex("tholepinctl [0-9]+\\.[0-9]+\\.[0-9]+\n"));
}

TEST(DidYouMean, ofASlipInACommandOrOption) {
    EXPECT_THAT(ctl({"chekc", "a"}).err, HasSubstr("did you mean check?"));
    EXPECT_THAT(ctl({"withdraw", "a"}).err, HasSubstr("did you mean withdraw-record?"));
    EXPECT_THAT(ctl({"due", "a", "--withn", "3"}).err, HasSubstr("did you mean --within?"));
    EXPECT_THAT(ctl({"due", "a", "--withn=3"}).err, HasSubstr("did you mean --within?"));
    EXPECT_THAT(ctl({"--verison"}).err, HasSubstr("did you mean --version?"));
    for (const auto& words :
         {std::vector<std::string>{"launch"}, {"due", "a", "--fast"}, {"--quick"}, {"x"}}) {
        const Ran ran = ctl(words);
        EXPECT_EQ(ran.exit, 2);
        EXPECT_THAT(ran.err, Not(HasSubstr("did you mean")));
    }
}

using Quiet = SmallClub;

TEST_F(Quiet, saysNothingAndTellsByItsExitCode) {
    const Ran loud = run({"missing"});
    EXPECT_FALSE(loud.out.empty());
    const Ran quiet = run({"missing", "--quiet"});
    EXPECT_EQ(quiet.exit, loud.exit);
    EXPECT_TRUE(quiet.out.empty()) << quiet.out;
    const Ran wrong = run({"history", "nobody", "--quiet"});
    EXPECT_EQ(wrong.exit, 2);
    expectOneErrorLine(wrong);
    EXPECT_EQ(run({"missing", "--quiet", "--json"}).exit, 2) << "nothing and a document are two wishes";
}

TEST_F(Quiet, aHistoryIsToldInWords) {
    const Ran ran = run({"history", knife});
    EXPECT_EQ(ran.exit, 0);
    EXPECT_THAT(ran.out, HasSubstr("Entered in the register: "));
    EXPECT_THAT(ran.out, Not(AnyOf(HasSubstr("{"), HasSubstr("\"set\""))));
    EXPECT_THAT(run({"history", knife, "--json"}).out, HasSubstr("\"set\""));
}

} // namespace
} // namespace small_club
