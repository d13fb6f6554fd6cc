#include "app/manual/help_text.h"

#include "app/manual/program_text.h"

namespace app {
namespace {

constexpr std::size_t lineWidth = 80;
constexpr std::size_t textColumn = 20;

/// Characters of a UTF-8 text.
std::size_t lengthOf(std::string_view text) {
    std::size_t length = 0;
    for (const char byte : text)
        length += (static_cast<unsigned char>(byte) & 0xC0) != 0x80;
    return length;
}

/// Lines of words, each begun at that column; the first line is begun already.
std::string wrapped(std::string_view text, std::size_t column) {
    std::string lines;
    std::size_t at = column;
    while (!text.empty()) {
        const std::string_view word = text.substr(0, text.find(' '));
        text.remove_prefix(std::min(text.size(), word.size() + 1));
        const std::size_t length = lengthOf(word);
        if (at > column && at + 1 + length > lineWidth) {
            lines += '\n' + std::string(column, ' ');
            at = column;
        } else if (at > column) {
            lines += ' ';
            ++at;
        }
        lines += word;
        at += length;
    }
    return lines + '\n';
}

/// A name in the first column and its text beside it, or beneath it when the name is long.
std::string twoColumns(const std::string& name, const std::string& text) {
    std::string lines = "  " + name;
    if (lengthOf(lines) + 2 > textColumn)
        lines += '\n' + std::string(textColumn, ' ');
    else
        lines += std::string(textColumn - lengthOf(lines), ' ');
    return lines + wrapped(text, textColumn);
}

std::string helpEntry(const TakenText& taken) {
    std::string name = taken.name;
    if (!taken.value.empty()) name += ' ' + taken.value;
    if (taken.isRepeated) name += "…";
    return twoColumns(name, taken.does);
}

std::string helpExits(std::string_view needsSomebody) {
    std::string lines = "\nExit codes:\n";
    for (int code = 0; code <= 3; ++code)
        if (const std::string meaning = meaningOfExit(code, needsSomebody); !meaning.empty())
            lines += twoColumns(std::to_string(code), meaning);
    return lines;
}

} // namespace

std::string meaningOfExit(int code, std::string_view needsSomebody) {
    switch (code) {
    case 0:
        return needsSomebody.empty() ? "done" : "done, and nothing to report";
    case 1:
        return needsSomebody.empty() ? ""
                                     : "done, and the answer needs somebody: " + std::string(needsSomebody);
    case 2:
        return "bad usage or bad input; nothing was changed";
    default:
        return "the file or a device failed";
    }
}

std::string usageOf(const ProgramText& program, const CommandText& command) {
    std::string usage = program.name + ' ' + command.name;
    const auto add = [&usage](const TakenText& taken) {
        std::string word = taken.name;
        if (!taken.value.empty()) word += ' ' + taken.value;
        if (taken.isRepeated) word += "…";
        usage += taken.isRequired ? ' ' + word : " [" + word + ']';
    };
    for (const TakenText& taken : command.taken)
        if (!taken.isOption()) add(taken);
    bool hasMore = false;
    for (const TakenText& taken : command.taken) {
        if (taken.isOption() && taken.isRequired) add(taken);
        hasMore = hasMore || (taken.isOption() && !taken.isRequired);
    }
    return hasMore ? usage + " [OPTION…]" : usage;
}

std::string helpOf(const ProgramText& program) {
    std::string help = wrapped(program.does, 0) + "\nUsage: " + program.name + " COMMAND FILE …\n       " +
                       program.name + " COMMAND --help\n";
    std::string section;
    for (const CommandText& command : program.commands) {
        if (command.section != section) help += '\n' + command.section + ":\n";
        section = command.section;
        help += twoColumns(command.name, command.does);
    }
    help += "\nOptions:\n";
    for (const TakenText& taken : program.taken)
        help += helpEntry(taken);
    return help + helpExits("see the command's own help");
}

std::string helpOf(const ProgramText& program, const CommandText& command) {
    std::string help = wrapped(command.does, 0) + "\nUsage: " + wrapped(usageOf(program, command), 7);
    if (!command.more.empty()) help += '\n' + wrapped(command.more, 0);
    help += "\nGiven by their place:\n";
    for (const TakenText& taken : command.taken)
        if (!taken.isOption()) help += helpEntry(taken);
    if (help.ends_with("place:\n")) help.resize(help.rfind("\nGiven"));
    help += "\nOptions:\n";
    for (const TakenText& taken : command.taken)
        if (taken.isOption()) help += helpEntry(taken);
    return help + helpExits(command.needsSomebody);
}

std::string helpOf(const ProgramText& program, const GroupText& group) {
    std::string help =
        wrapped(group.does, 0) + "\nUsage: " + program.name + ' ' + group.name + " COMMAND …\n\nCommands:\n";
    for (const CommandText& command : program.commands)
        if (!wordInGroup(command, group.name).empty()) help += twoColumns(command.name, command.does);
    return help + helpExits("see the command's own help");
}

} // namespace app
