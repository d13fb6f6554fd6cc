#include "app/manual/help_text.h"
#include "app/manual/program_text.h"

#include <algorithm>

namespace app {
namespace {

/// Text as roff takes it: what would be an order of its own is none.
std::string roffWord(std::string_view text) {
    std::string safe;
    for (const char c : text) {
        if (c == '\\')
            safe += "\\e";
        else if (c == '-')
            safe += "\\-";
        else
            safe += c;
    }
    if (safe.starts_with('.') || safe.starts_with('\'')) safe.insert(0, "\\&");
    return safe;
}

/// A line of text. In running text a hyphen is a hyphen.
std::string roffLine(std::string_view text) {
    std::string safe;
    for (const char c : text)
        safe += c == '\\' ? std::string("\\e") : std::string(1, c);
    if (safe.starts_with('.') || safe.starts_with('\'')) safe.insert(0, "\\&");
    return safe + '\n';
}

std::string roffHeading(const std::string& name) {
    return ".SH " + name + '\n';
}

std::string roffHead(const std::string& page, const std::string& does) {
    return ".TH " + roffWord(page) + " 1 \"\" \"Tholepin " + versionText() + "\" \"Tholepin\"\n" +
           roffHeading("NAME") + roffWord(page) + " \\- " + roffLine(does);
}

std::string manEntry(const TakenText& taken) {
    std::string lines = ".TP\n\\fB" + roffWord(taken.name) + "\\fR";
    if (!taken.value.empty()) lines += " \\fI" + roffWord(taken.value) + "\\fR";
    if (taken.isRepeated) lines += "…";
    return lines + '\n' + roffLine(taken.does);
}

std::string entriesOf(const std::string& name, const std::vector<TakenText>& all, bool options) {
    std::string lines;
    for (const TakenText& taken : all)
        if (taken.isOption() == options) lines += manEntry(taken);
    return lines.empty() ? lines : roffHeading(name) + lines;
}

std::string manExits(std::string_view needsSomebody) {
    std::string lines = roffHeading("EXIT STATUS");
    for (int code = 0; code <= 3; ++code)
        if (const std::string meaning = meaningOfExit(code, needsSomebody); !meaning.empty())
            lines += ".TP\n\\fB" + std::to_string(code) + "\\fR\n" + roffLine(meaning);
    return lines;
}

std::string seeAlso(const std::vector<std::string>& pages) {
    std::string lines = roffHeading("SEE ALSO");
    for (std::size_t i = 0; i < pages.size(); ++i)
        lines += ".BR " + roffWord(pages[i]) + " (1)" + (i + 1 < pages.size() ? ",\n" : "\n");
    return lines;
}

std::string pageOfCommands(const ProgramText& program) {
    std::string page = roffHeading("SYNOPSIS") + ".B " + program.name + "\n.I COMMAND FILE\n…\n.br\n.B " +
                       program.name + "\n.I COMMAND\n.B \\-\\-help\n" + roffHeading("DESCRIPTION") +
                       roffLine(program.more);
    std::string section;
    for (const CommandText& command : program.commands) {
        if (command.section != section) page += ".SS " + command.section + '\n';
        section = command.section;
        page += ".TP\n\\fB" + roffWord(command.name) + "\\fR\n" + roffLine(command.does);
    }
    return page + entriesOf("OPTIONS", program.taken, true) +
           manExits("see the command's own page, " + program.name + "-COMMAND(1)");
}

std::string pageWithoutCommands(const ProgramText& program) {
    return roffHeading("SYNOPSIS") + ".B " + program.name + "\n[OPTION…] [FILE]\n" +
           roffHeading("DESCRIPTION") + roffLine(program.more) +
           entriesOf("ARGUMENTS", program.taken, false) + entriesOf("OPTIONS", program.taken, true);
}

} // namespace

std::string pageNameOf(const ProgramText& program, const CommandText& command) {
    std::string name = program.name + '-' + command.name;
    std::replace(name.begin(), name.end(), ' ', '-');
    return name;
}

std::string manPageOf(const ProgramText& program) {
    const std::string page = roffHead(program.name, program.does);
    if (program.commands.empty()) return page + pageWithoutCommands(program) + seeAlso({"tholepinctl"});
    return page + pageOfCommands(program) + seeAlso({"tholepin"});
}

std::string manPageOf(const ProgramText& program, const CommandText& command) {
    std::string page = roffHead(pageNameOf(program, command), command.does) + roffHeading("SYNOPSIS") +
                       roffWord(usageOf(program, command)) + '\n' + roffHeading("DESCRIPTION");
    page += roffLine(command.more.empty() ? command.does + "." : command.more);
    return page + entriesOf("ARGUMENTS", command.taken, false) + entriesOf("OPTIONS", command.taken, true) +
           manExits(command.needsSomebody) + seeAlso({program.name, "tholepin"});
}

} // namespace app
