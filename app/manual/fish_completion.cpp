#include "app/manual/completion.h"
#include "app/manual/program_text.h"

namespace app {
namespace {

std::string fishText(const std::string& text) {
    std::string safe;
    for (const char c : text)
        safe += c == '\'' || c == '\\' ? std::string("\\") + c : std::string(1, c);
    return '\'' + safe + '\'';
}

std::string fishLine(const std::string& begin, const TakenText& taken) {
    std::string line = begin;
    if (taken.isOption()) line += " -l " + taken.name.substr(2) + " -d " + fishText(taken.does);
    if (!taken.values.empty())
        line += (taken.isOption() ? " -x -a " : " -a ") + fishText(joined(taken.values));
    else if (taken.isPath)
        line += taken.isOption() ? " -r -F" : " -F";
    else if (taken.isOption() && !taken.isFlag())
        line += " -x";
    else if (!taken.isOption())
        return {};
    return line + '\n';
}

std::string fishWord(const std::string& begin, const std::string& word, const std::string& does) {
    return begin + " -a " + word + " -d " + fishText(does) + '\n';
}

/// Whether the words before the one that is typed are the program and those given; `only`: and no more.
constexpr const char* fishIs = R"(
    set -l words (commandline -opc)
    if test "$argv[1]" = only
        test "$words[2..]" = "$argv[2..]"
    else if test (count $argv) = 0
        test (count $words) = 1
    else
        set -l last (math (count $argv) + 1)
        test (count $words) -ge $last; and test "$words[2..$last]" = "$argv"
    end
end
)";

} // namespace

std::string fishCompletion(const ProgramText& program) {
    const std::string complete = "complete -c " + program.name;
    std::string script = "# fish completion of " + program.name + '\n' + complete + " -f\n";
    if (program.commands.empty()) {
        for (const TakenText& taken : program.taken)
            script += fishLine(complete, taken);
        return script;
    }
    const std::string is = "__" + program.name + "_is";
    script += "function " + is + fishIs;
    const std::string first = complete + " -n " + is; // of the word after the program
    for (const TakenText& taken : program.taken)
        script += fishLine(first, taken);
    for (const GroupText& group : program.groups)
        script += fishWord(first, group.name, group.does);
    for (const CommandText& command : program.commands) {
        const auto blank = command.name.find(' ');
        if (blank == std::string::npos) {
            script += fishWord(first, command.name, command.does);
        } else {
            std::string second = complete;
            second.append(" -n '").append(is).append(" only ").append(command.name, 0, blank).append("'");
            script += fishWord(second, command.name.substr(blank + 1), command.does);
        }
        std::string later = complete;
        later.append(" -n '").append(is).append(" ").append(command.name).append("'");
        for (const TakenText& taken : command.taken)
            script += fishLine(later, taken);
    }
    return script;
}

} // namespace app
