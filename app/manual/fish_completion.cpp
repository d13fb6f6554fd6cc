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
    script += "function " + is +
              "\n    set -l words (commandline -opc)\n    if test (count $argv) = 0\n"
              "        test (count $words) = 1\n    else\n"
              "        test (count $words) -gt 1; and test $words[2] = $argv[1]\n    end\nend\n";
    for (const TakenText& taken : program.taken)
        script += fishLine(complete + " -n " + is, taken);
    for (const CommandText& command : program.commands) {
        script += complete + " -n " + is + " -a " + command.name + " -d " + fishText(command.does) + '\n';
        for (const TakenText& taken : command.taken)
            script += fishLine(complete + " -n '" + is + ' ' + command.name + '\'', taken);
    }
    return script;
}

} // namespace app
