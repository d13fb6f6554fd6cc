#include "app/manual/completion.h"
#include "app/manual/help_text.h"
#include "app/manual/program_text.h"
#include "tests/app/cli/small_club.h"

#include <fstream>
#include <regex>
#include <set>

namespace small_club {
namespace {

using testing::AnyOf;
using testing::HasSubstr;
using testing::Not;

/// Those that --help lists, beneath a heading each.
std::set<std::string> commandsOfTheProgram() {
    std::set<std::string> commands;
    const std::string help = ctl({"--help"}).out;
    const std::regex entry("\n  ([a-z][a-z-]*( [a-z][a-z-]*)?)(?=  |\n)");
    for (std::sregex_iterator at(help.begin(), help.end(), entry), end; at != end; ++at)
        commands.insert((*at)[1]);
    return commands;
}

/// The commands of docs/command-line.md with the options that its table names for each.
std::map<std::string, std::set<std::string>> commandsOfTheDocument() {
    std::map<std::string, std::set<std::string>> commands;
    const std::set<std::string> known = commandsOfTheProgram();
    std::ifstream in(DOCS_FOLDER "/command-line.md");
    const std::regex usage("`([a-z][a-z-]*)( [a-z][a-z-]*)?[^`]*`");
    const std::regex option("--[a-z][a-z-]*");
    for (std::string line; std::getline(in, line);) {
        if (!line.starts_with("| `")) continue;
        const std::string cell = line.substr(2, line.find(" | ", 2) - 2);
        for (std::sregex_iterator at(cell.begin(), cell.end(), usage), end; at != end; ++at) {
            const std::string words = at->str();
            const std::string both = (*at)[1].str() + (*at)[2].str(); // of a command of a group
            auto& options = commands[known.contains(both) ? both : (*at)[1].str()];
            for (std::sregex_iterator each(words.begin(), words.end(), option); each != end; ++each)
                options.insert(each->str());
        }
    }
    return commands;
}

/// A command of two words is given as two.
Ran helpOf(const std::string& command) {
    const auto blank = command.find(' ');
    if (blank == std::string::npos) return ctl({command, "--help"});
    return ctl({command.substr(0, blank), command.substr(blank + 1), "--help"});
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
        const std::string help = helpOf(command).out;
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
        std::istringstream help(helpOf(command).out);
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

/// Two commands of a group, of which one is called as another command.
const app::ProgramText& grouped() {
    static const app::ProgramText program{
        "shed",
        "a program",
        "",
        {{"--help", {}, "help"}},
        {{"boats", "", "boats", "", "", {{"--json", {}, "json"}}},
         {"hub boats", "", "boats of all", "", "", {{"--club", "CLUB", "which", {"ours", "theirs"}}}},
         {"hub join", "", "join", "", "", {}}},
        {{"hub", "exchange"}}};
    return program;
}

/// What bash and fish make of the line.
void expectCompleted(const std::vector<std::string>& words, const std::string& wanted) {
    std::string line;
    for (const std::string& word : words)
        line += (line.empty() ? "" : " ") + word;
    const std::string last = std::to_string(words.size() - 1);
    const Ran bash = support::runProgram("/bin/bash", {"-c", app::bashCompletion(grouped()) + "COMP_WORDS=(" +
                                                                 line + "); COMP_CWORD=" + last +
                                                                 "; _shed; echo ${COMPREPLY[*]}"});
    EXPECT_EQ(bash.out, wanted + '\n') << line << bash.err;
    const Ran fish =
        support::runProgram("/usr/bin/fish", {"--no-config", "-c",
                                              app::fishCompletion(grouped()) + "complete -C '" + line + "'"});
    EXPECT_EQ(fish.out.substr(0, fish.out.find('\t')), wanted) << line << fish.err;
}

TEST(Completion, ofACommandOfTwoWords) {
    expectCompleted({"shed", "hu"}, "hub");
    expectCompleted({"shed", "hub", "jo"}, "join");
    expectCompleted({"shed", "hub", "boats", "--cl"}, "--club");
    expectCompleted({"shed", "hub", "boats", "--club", "th"}, "theirs");
    expectCompleted({"shed", "boats", "--js"}, "--json");
    EXPECT_EQ(app::pageNameOf(grouped(), grouped().commands[2]), "shed-hub-join");
    EXPECT_EQ(grouped().commandOf({"hub", "boats", "x"}), "hub boats");
    EXPECT_EQ(grouped().commandOf({"hub"}), "");
    EXPECT_THAT(app::zshCompletion(grouped()), HasSubstr("'hub boats') _arguments"));
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
