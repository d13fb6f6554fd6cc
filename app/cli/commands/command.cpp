#include "app/cli/commands/command.h"

#include "app/cli/terminal/last_words.h"
#include "app/cli/terminal/terminal.h"
#include "app/manual/help_text.h"
#include "app/manual/program_text.h"
#include "core/base/store_failure.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <map>

namespace app {

struct Command::State {
    CLI::App* app = nullptr;
    Run run;
    CommandText text;
    bool isQuiet = false;
    std::vector<std::pair<std::string, std::string>> atLeastOneOf;
};

struct CommandLine::State {
    CLI::App app{{}, "tholepinctl"};
    ProgramText text{
        "tholepinctl",
        "Tholepin on the command line: the kit of a rescue-boat club, its checks and its record.",
        "Every command takes the club file first. Answers go to standard output, with --json as one "
        "document; what goes wrong is one line on standard error. The window is tholepin.",
        {{"--help", {}, "say what it takes, and end"}, {"--version", {}, "say its version, and end"}},
        {}};
    std::vector<std::shared_ptr<Command::State>> commands;
    std::string section;
    Run chosen;
};

namespace {

void makeRequired(CLI::Option* option, Need need) {
    if (need == Need::Required) option->required();
    if (need != Need::Optional)
        option->check([](const std::string& given) {
            return given.find_first_not_of(" \t") == std::string::npos
                       ? "it is empty: give a value or leave it out"
                       : std::string();
        });
}

/// `--boat`: BOAT; of a few values these. What stands by its place has none.
std::string valueOf(const std::string& name, const std::vector<std::string>& values) {
    if (!name.starts_with("--")) return {};
    if (!values.empty() && values.size() <= 4) return joined(values, "|");
    if (isNameOfPath(name)) return "PATH";
    static const std::map<std::string, std::string> words{
        {"--today", "DAY"},    {"--on", "WHEN"},       {"--at", "INSTANT"},     {"--until", "INSTANT"},
        {"--by", "PERSON"},    {"--sign", "PERSON"},   {"--driver", "PERSON"},  {"--crew", "PERSON"},
        {"--why", "REASON"},   {"--urgent", "REASON"}, {"--discard", "REASON"}, {"--within", "DAYS"},
        {"--left", "INSTANT"}, {"--back", "INSTANT"},  {"--incidents", "TEXT"}, {"--closing", "TEXT"}};
    if (const auto known = words.find(name); known != words.end()) return known->second;
    std::string word = name.substr(2);
    std::transform(word.begin(), word.end(), word.begin(),
                   [](unsigned char c) { return c == '-' ? '_' : static_cast<char>(std::toupper(c)); });
    return word;
}

/// "did you mean check?", or where else to look.
std::string mendOf(const std::string& given, const std::vector<std::string>& known,
                   const std::string& otherwise) {
    const std::vector<std::string> likely = meant(given, known);
    return likely.empty() ? otherwise : "did you mean " + joined(likely, " or ") + "?";
}

std::vector<std::string> commandsOf(const ProgramText& program) {
    std::vector<std::string> names;
    for (const CommandText& command : program.commands)
        names.push_back(command.name);
    for (const GroupText& group : program.groups)
        names.push_back(group.name);
    return names;
}

std::vector<std::string> optionsOf(const std::vector<TakenText>& all) {
    std::vector<std::string> names;
    for (const TakenText& taken : all)
        if (taken.isOption()) names.push_back(taken.name);
    return names;
}

/// Of the words that were given the first option that is none: `--bota` of `--bota=Teal`.
std::string unknownOption(const std::vector<std::string>& words, const std::vector<std::string>& known) {
    for (const std::string& word : words) {
        const std::string option = word.substr(0, word.find('='));
        if (option == "--") break;
        if (option.starts_with("--") && std::find(known.begin(), known.end(), option) == known.end())
            return option;
    }
    return {};
}

/// The help of what was asked for: a command, a group, or all of it.
std::string helpFor(const ProgramText& program, const std::vector<std::string>& words) {
    if (const CommandText* command = program.command(program.commandOf(words)))
        return helpOf(program, *command);
    for (const GroupText& group : program.groups)
        if (!words.empty() && words.front() == group.name) return helpOf(program, group);
    return helpOf(program);
}

int explain(const ProgramText& program, const CLI::ParseError& error, const std::vector<std::string>& words) {
    if (dynamic_cast<const CLI::CallForHelp*>(&error) != nullptr) {
        say(helpFor(program, words));
        return finishOutput(ExitFine);
    }
    const std::string name = program.commandOf(words);
    const CommandText* command = program.command(name);
    const std::string first = words.empty() ? std::string() : words.front();
    const bool isGroup = program.isGroup(first);
    const std::string mend = command   ? "tholepinctl " + name + " --help says what it takes"
                             : isGroup ? "tholepinctl " + first + " --help lists its commands"
                                       : "tholepinctl --help lists the commands";
    const std::vector<std::string> options = optionsOf(command ? command->taken : program.taken);
    if (const std::string unknown = unknownOption(words, options); !unknown.empty())
        return failWith("there is no option " + unknown, name, mendOf(unknown, options, mend));
    if (command || first.empty() || first.starts_with('-') || (isGroup && words.size() == 1))
        return failWith(error.what(), command ? name : first, mend);
    const std::string given = isGroup ? first + ' ' + words[1] : first;
    return failWith("there is no command '" + given + "'", {}, mendOf(given, commandsOf(program), mend));
}

} // namespace

Command::Command(std::shared_ptr<State> state)
    : m_state(std::move(state)) {}

TakenText& Command::note(const std::string& name, const std::string& help, Need need) {
    m_state->text.taken.push_back({.name = name,
                                   .value = valueOf(name, {}),
                                   .does = help,
                                   .isRequired = need == Need::Required,
                                   .isPath = isNameOfPath(name)});
    return m_state->text.taken.back();
}

void Command::file(const std::string& name, std::string& into, const std::string& help) {
    makeRequired(m_state->app->add_option(name, into, help)->required(), Need::NotEmpty);
    note(name, help, Need::Required);
}

void Command::paths(const std::string& name, std::vector<std::string>& into, const std::string& help) {
    m_state->app->add_option(name, into, help)->required();
    note(name, help, Need::Required).isRepeated = true;
}

void Command::flag(const std::string& name, bool& into, const std::string& help) {
    m_state->app->add_flag(name, into, help);
    note(name, help, Need::Optional).value.clear();
}

void Command::text(const std::string& name, std::string& into, const std::string& help, Need need) {
    makeRequired(m_state->app->add_option(name, into, help), need);
    note(name, help, need);
}

void Command::choice(const std::string& name, std::string& into, std::vector<std::string> allowed,
                     const std::string& help, Need need) {
    makeRequired(m_state->app->add_option(name, into, help)->check(CLI::IsMember(allowed)), need);
    note(name, help, need);
    offer(name, std::move(allowed));
}

void Command::repeated(const std::string& name, std::vector<std::string>& into, const std::string& help) {
    makeRequired(m_state->app->add_option(name, into, help)->allow_extra_args(false), Need::NotEmpty);
    note(name, help, Need::Optional);
}

void Command::several(const std::string& name, std::vector<std::string>& into, const std::string& help) {
    makeRequired(m_state->app->add_option(name, into, help), Need::NotEmpty);
    note(name, help, Need::Optional).isRepeated = true;
}

void Command::number(const std::string& name, double& into, double low, double high,
                     const std::string& help) {
    m_state->app->add_option(name, into, help)
        ->check(CLI::Range(low, high))
        ->check([](const std::string& given) { // a range lets through what is no number
            return given.find_first_not_of("0123456789.eE+-") == std::string::npos ? std::string()
                                                                                   : given + " is no number";
        });
    note(name, help, Need::Optional);
}

void Command::number(const std::string& name, int& into, int low, int high, const std::string& help) {
    m_state->app->add_option(name, into, help)->check(CLI::Range(low, high));
    note(name, help, Need::Optional);
}

void Command::number(const std::string& name, std::uint64_t& into, const std::string& help) {
    m_state->app->add_option(name, into, help);
    note(name, help, Need::Optional);
}

void Command::offer(const std::string& name, std::vector<std::string> values) {
    auto& all = m_state->text.taken;
    const auto taken =
        std::find_if(all.begin(), all.end(), [&](const TakenText& each) { return each.name == name; });
    if (taken == all.end()) throw std::logic_error("nothing is called " + name);
    taken->value = valueOf(name, values);
    taken->values = std::move(values);
}

void Command::more(const std::string& paragraph) {
    m_state->text.more = paragraph;
}

void Command::needsSomebody(const std::string& when) {
    m_state->text.needsSomebody = when;
}

void Command::notTogether(const std::string& one, const std::string& other) {
    m_state->app->get_option(one)->excludes(m_state->app->get_option(other));
}

void Command::atLeastOneOf(const std::string& one, const std::string& other) {
    m_state->atLeastOneOf.emplace_back(one, other);
}

CommandLine::CommandLine()
    : m_state(std::make_unique<State>()) {
    m_state->app.require_subcommand(1);
    m_state->app.set_version_flag("--version", std::string("tholepinctl ") + versionText());
}

CommandLine::~CommandLine() = default;

void CommandLine::section(const std::string& heading) {
    m_state->section = heading;
}

void CommandLine::addGroup(const std::string& name, const std::string& does) {
    m_state->app.add_subcommand(name, does)->require_subcommand(1);
    m_state->text.groups.push_back({name, does});
}

Command CommandLine::add(const std::string& name, const std::string& does, Run run) {
    auto state = std::make_shared<Command::State>();
    const auto blank = name.find(' ');
    CLI::App& parent =
        blank == std::string::npos ? m_state->app : *m_state->app.get_subcommand(name.substr(0, blank));
    state->app = parent.add_subcommand(blank == std::string::npos ? name : name.substr(blank + 1), does);
    state->run = std::move(run);
    state->text.name = name;
    state->text.section = m_state->section;
    state->text.does = does;
    state->app->add_flag("--quiet", state->isQuiet);
    state->app->callback([state, this] {
        for (const auto& [one, other] : state->atLeastOneOf)
            if (state->app->count(one) + state->app->count(other) == 0)
                throw CLI::RequiredError(std::string(one).append(" or ").append(other));
        const CLI::Option* json = state->app->get_option_no_throw("--json");
        if (state->isQuiet && json && json->count() > 0) throw CLI::ExcludesError("--quiet", "--json");
        if (state->isQuiet) sayNothing();
        m_state->chosen = state->run;
    });
    m_state->commands.push_back(state);
    return Command(state);
}

ProgramText CommandLine::text() const {
    ProgramText text = m_state->text;
    for (const auto& command : m_state->commands) {
        text.commands.push_back(command->text);
        text.commands.back().taken.push_back(
            {"--quiet", {}, "say nothing on standard output; the exit code tells"});
        text.commands.back().taken.push_back({"--help", {}, "say what it takes, and end"});
    }
    return text;
}

int CommandLine::run(int argc, char** argv) {
    prepareLastWords();
    try {
        m_state->app.parse(argc, argv);
    } catch (const CLI::CallForVersion& version) {
        say(std::string(version.what()) + '\n');
        return finishOutput(ExitFine);
    } catch (const CLI::ParseError& error) {
        return explain(text(), error, {argv + (argc > 0), argv + argc});
    }
    try {
        return finishOutput(m_state->chosen());
    } catch (const std::exception& thrown) { // a reader of the club file met a disk or a record that fails
        return fail(core::errorOf(thrown));
    }
}

} // namespace app
