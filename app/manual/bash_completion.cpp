#include "app/manual/completion.h"
#include "app/manual/program_text.h"

// A word of the program is never quoted by the shell: commands, options and their values are letters and
// hyphens.

namespace app {
namespace {

using Taken = std::vector<TakenText>;

std::string optionsOf(const Taken& taken) {
    std::vector<std::string> names;
    for (const TakenText& each : taken)
        if (each.isOption()) names.push_back(each.name);
    return joined(names);
}

/// `case` branch of what may be given, or nothing to offer.
std::string offer(const std::string& pattern, const TakenText& taken) {
    std::string does = ":";
    if (!taken.values.empty())
        does = "_NAME_words '" + joined(taken.values) + "'";
    else if (taken.isPath)
        does = "_NAME_files";
    return "        '" + pattern + "') " + does + "; return ;;\n";
}

/// After an option comes its value.
std::string valuesOf(const std::string& command, const Taken& taken) {
    std::string lines;
    for (const TakenText& each : taken)
        if (each.isOption() && !each.isFlag()) lines += offer(command + each.name, each);
    return lines;
}

/// What is known by its place: the n-th word that is neither an option nor an option's value. The last goes
/// on when it is repeated.
std::string placesOf(const std::string& command, const Taken& taken) {
    std::string lines;
    int place = 1;
    for (const TakenText& each : taken) {
        if (each.isOption()) continue;
        const std::string number = std::to_string(place++);
        if (each.isRepeated)
            lines += "        '" + command + "'*) " + (each.isPath ? "_NAME_files" : ":") + "; return ;;\n";
        else
            lines += offer(command + number, each);
    }
    return lines;
}

std::string wordsWithValue(const Taken& taken) {
    std::string pattern;
    for (const TakenText& each : taken)
        if (each.isOption() && !each.isFlag()) pattern += each.name + ' ';
    return pattern;
}

std::string named(std::string script, const std::string& name) {
    const std::string mark = "_NAME_";
    for (std::size_t at = script.find(mark); at != std::string::npos; at = script.find(mark, at))
        script.replace(at, mark.size(), '_' + name + '_');
    return script;
}

constexpr const char* helpers = R"(_NAME_words() {
    mapfile -t COMPREPLY < <(compgen -W "$1" -- "$word")
}
_NAME_files() {
    compopt -o filenames 2>/dev/null
    mapfile -t COMPREPLY < <(compgen -f -- "$word")
}
)";

constexpr const char* counting = R"(    local i place=1
    for ((i = first; i < COMP_CWORD; i++)); do
        case ${COMP_WORDS[i]} in
        --*) [[ " $valued " == *" ${COMP_WORDS[i]} "* ]] && i=$((i + 1)) ;;
        *) place=$((place + 1)) ;;
        esac
    done
)";

/// The first word, or the first two.
std::string bashCommands(const ProgramText& program) {
    std::vector<std::string> words;
    for (const CommandText& command : program.commands)
        if (command.name.find(' ') == std::string::npos) words.push_back(command.name);
    std::string groups;
    for (const GroupText& group : program.groups) {
        words.push_back(group.name);
        std::vector<std::string> inGroup;
        for (const CommandText& command : program.commands)
            if (const std::string word = wordInGroup(command, group.name); !word.empty())
                inGroup.push_back(word);
        groups.append("    if [ \"$command\" = ").append(group.name).append(" ]; then\n");
        groups.append("        if [ \"$COMP_CWORD\" = 2 ]; then\n            _NAME_words '");
        groups.append(joined(inGroup)).append("'\n            return\n        fi\n");
        groups += "        command=\"$command ${COMP_WORDS[2]}\" first=3\n    fi\n";
    }
    words.push_back(optionsOf(program.taken));
    return "    if [ \"$COMP_CWORD\" = 1 ]; then\n        _NAME_words '" + joined(words) +
           "'\n        return\n    fi\n    command=${COMP_WORDS[1]} first=2\n" + groups;
}

} // namespace

std::string bashCompletion(const ProgramText& program) {
    const bool isPlain = program.commands.empty();
    std::vector<CommandText> commands = program.commands;
    if (isPlain)
        commands.push_back(
            {.name = {}, .section = {}, .does = {}, .more = {}, .needsSomebody = {}, .taken = program.taken});
    std::string options, values, places;
    for (const CommandText& command : commands) {
        const std::string key = command.name + ' ';
        options += "        '" + command.name + "') options='" + optionsOf(command.taken) + "' valued='" +
                   wordsWithValue(command.taken) + "' ;;\n";
        values += valuesOf(key, command.taken);
        places += placesOf(key, command.taken);
    }
    std::string script =
        "# bash completion of " + program.name + "\n" + helpers + "_" + program.name +
        "() {\n    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]}\n" +
        "    local command= options= valued= first=1\n    COMPREPLY=()\n";
    if (!isPlain) script += bashCommands(program);
    script += "    case $command in\n" + options + "    esac\n    case \"$command $before\" in\n" + values +
              "    esac\n    if [[ $word == -* ]]; then\n        _NAME_words \"$options\"\n        return\n  "
              "  fi\n" +
              counting + "    case \"$command $place\" in\n" + places + "    esac\n}\ncomplete -F _" +
              program.name + ' ' + program.name + '\n';
    return named(script, program.name);
}

} // namespace app
