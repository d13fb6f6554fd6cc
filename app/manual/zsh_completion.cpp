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

/// An array of `word:what it does`, to be described.
void zshDescribe(std::string& script, const std::string& what,
                 const std::vector<std::pair<std::string, std::string>>& all) {
    script += "        local -a words_of_it=(\n";
    for (const auto& [word, does] : all)
        script.append("            '").append(word).append(":").append(zshText(does)).append("'\n");
    script.append("        )\n        _describe ").append(what).append(" words_of_it\n");
}

using WordsThatDo = std::vector<std::pair<std::string, std::string>>;

void zshFirstWord(std::string& script, const ProgramText& program) {
    WordsThatDo commands, options;
    for (const CommandText& command : program.commands)
        if (command.name.find(' ') == std::string::npos) commands.emplace_back(command.name, command.does);
    for (const GroupText& group : program.groups)
        commands.emplace_back(group.name, group.does);
    for (const TakenText& taken : program.taken)
        options.emplace_back(taken.name, taken.does);
    script += "    if ((CURRENT == 2)); then\n";
    zshDescribe(script, "command", commands);
    zshDescribe(script, "option", options);
    script += "        return\n    fi\n    shift words\n    ((CURRENT--))\n    local command=$words[1]\n";
}

void zshSecondWord(std::string& script, const ProgramText& program, const GroupText& group) {
    WordsThatDo commands;
    for (const CommandText& command : program.commands)
        if (const std::string word = wordInGroup(command, group.name); !word.empty())
            commands.emplace_back(word, command.does);
    script.append("    if [[ $command == ")
        .append(group.name)
        .append(" ]]; then\n        if ((CURRENT == 2)); then\n");
    zshDescribe(script, "command", commands);
    script += "        return\n        fi\n        command=\"$command $words[2]\"\n        shift words\n"
              "        ((CURRENT--))\n    fi\n";
}

} // namespace

std::string zshCompletion(const ProgramText& program) {
    std::string script = "#compdef " + program.name + "\n_" + program.name + "() {\n";
    if (program.commands.empty()) {
        script += "    " + argumentsOf(program.taken) + "\n";
    } else {
        zshFirstWord(script, program);
        for (const GroupText& group : program.groups)
            zshSecondWord(script, program, group);
        script += "    case $command in\n";
        for (const CommandText& command : program.commands)
            script.append("    '")
                .append(command.name)
                .append("') ")
                .append(argumentsOf(command.taken))
                .append(" ;;\n");
        script += "    esac\n";
    }
    // Sourced, it is made known; found by its name, it is what the file does.
    return script + "}\nif [ \"$funcstack[1]\" = _" + program.name + " ]; then\n    _" + program.name +
           " \"$@\"\nelse\n    compdef _" + program.name + ' ' + program.name + "\nfi\n";
}

} // namespace app
