#include "app/manual/completion.h"
#include "app/manual/program_text.h"

namespace app {
namespace {

/// A text within single quotes, in which _arguments and _describe read `[`, `]`, `:` and `\`.
std::string zshText(const std::string& text) {
    std::string safe;
    for (const char c : text) {
        if (c == '\'')
            safe += "'\\''";
        else if (c == '[' || c == ']' || c == ':' || c == '\\')
            safe += std::string("\\") + c;
        else
            safe += c;
    }
    return safe;
}

/// What is offered for a value: `:BOAT:` and how it is completed.
std::string zshValue(const TakenText& taken) {
    const std::string& name = taken.isOption() ? taken.value : taken.name;
    std::string offer = " ";
    if (!taken.values.empty()) {
        offer = '(' + joined(taken.values) + ')';
    } else if (taken.isPath) {
        offer = "_files";
    }
    return ':' + zshText(name) + ':' + offer;
}

std::string argumentsOf(const std::vector<TakenText>& all) {
    std::string lines = "_arguments -s";
    for (const TakenText& taken : all) {
        lines += " \\\n            '";
        if (taken.isRepeated) lines += '*';
        if (taken.isOption()) lines += taken.name + '[' + zshText(taken.does) + ']';
        if (!taken.isFlag()) lines += zshValue(taken);
        lines += '\'';
    }
    return lines;
}

} // namespace

std::string zshCompletion(const ProgramText& program) {
    std::string script = "#compdef " + program.name + "\n_" + program.name + "() {\n";
    if (program.commands.empty())
        script += "    " + argumentsOf(program.taken) + "\n";
    else {
        script += "    if ((CURRENT == 2)); then\n        local -a commands=(\n";
        for (const CommandText& command : program.commands)
            script += "            '" + command.name + ':' + zshText(command.does) + "'\n";
        script += "        )\n        _describe command commands\n        local -a options=(";
        for (const TakenText& taken : program.taken)
            script += '\'' + taken.name + ':' + zshText(taken.does) + "' ";
        script += ")\n        _describe option options\n        return\n    fi\n    shift words\n    "
                  "((CURRENT--))\n"
                  "    case $words[1] in\n";
        for (const CommandText& command : program.commands)
            script += "    " + command.name + ") " + argumentsOf(command.taken) + " ;;\n";
        script += "    esac\n";
    }
    // Sourced, it is made known; found by its name, it is what the file does.
    return script + "}\nif [ \"$funcstack[1]\" = _" + program.name + " ]; then\n    _" + program.name +
           " \"$@\"\nelse\n    compdef _" + program.name + ' ' + program.name + "\nfi\n";
}

} // namespace app
