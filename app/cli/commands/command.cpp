#include "app/cli/commands/command.h"

#include "app/cli/terminal/last_words.h"
#include "app/cli/terminal/terminal.h"
#include "core/base/store_failure.h"

#include <CLI/CLI.hpp>

namespace app {

struct Command::State {
    CLI::App* app = nullptr;
    Run run;
    std::vector<std::pair<std::string, std::string>> atLeastOneOf;
};

struct CommandLine::State {
    CLI::App app{"Tholepin on the command line: the kit of a rescue-boat club, its checks and its record.",
                 "tholepinctl"};
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

bool isCommand(const CLI::App& app, const std::string& name) {
    return !app.get_subcommands([&](const CLI::App* command) { return command->get_name() == name; }).empty();
}

int explain(const CLI::App& app, const CLI::ParseError& error, const std::string& first) {
    if (dynamic_cast<const CLI::CallForHelp*>(&error) != nullptr) {
        say(app.help());
        return finishOutput(ExitFine);
    }
    if (isCommand(app, first))
        return failWith(error.what(), first, "tholepinctl " + first + " --help says what it takes");
    const std::string mend = "tholepinctl --help lists the commands";
    if (first.empty() || first.starts_with('-')) return failWith(error.what(), first, mend);
    return failWith("there is no command '" + first + "'", {}, mend);
}

} // namespace

Command::Command(std::shared_ptr<State> state)
    : m_state(std::move(state)) {}

void Command::file(const std::string& name, std::string& into, const std::string& help) {
    makeRequired(m_state->app->add_option(name, into, help)->required(), Need::NotEmpty);
}

void Command::paths(const std::string& name, std::vector<std::string>& into, const std::string& help) {
    m_state->app->add_option(name, into, help)->required();
}

void Command::flag(const std::string& name, bool& into, const std::string& help) {
    m_state->app->add_flag(name, into, help);
}

void Command::text(const std::string& name, std::string& into, const std::string& help, Need need) {
    makeRequired(m_state->app->add_option(name, into, help)->capture_default_str(), need);
}

void Command::choice(const std::string& name, std::string& into, std::vector<std::string> allowed,
                     const std::string& help, Need need) {
    makeRequired(m_state->app->add_option(name, into, help)->check(CLI::IsMember(std::move(allowed))), need);
}

void Command::repeated(const std::string& name, std::vector<std::string>& into, const std::string& help) {
    m_state->app->add_option(name, into, help)->allow_extra_args(false);
}

void Command::several(const std::string& name, std::vector<std::string>& into, const std::string& help) {
    m_state->app->add_option(name, into, help);
}

void Command::number(const std::string& name, double& into, double low, double high,
                     const std::string& help) {
    m_state->app->add_option(name, into, help)
        ->check(CLI::Range(low, high))
        ->check([](const std::string& given) { // a range lets through what is no number
            return given.find_first_not_of("0123456789.eE+-") == std::string::npos ? std::string()
                                                                                   : given + " is no number";
        })
        ->capture_default_str();
}

void Command::number(const std::string& name, int& into, int low, int high, const std::string& help) {
    m_state->app->add_option(name, into, help)->check(CLI::Range(low, high));
}

void Command::number(const std::string& name, std::uint64_t& into, const std::string& help) {
    m_state->app->add_option(name, into, help)->capture_default_str();
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
}

CommandLine::~CommandLine() = default;

Command CommandLine::add(const std::string& name, const std::string& does, Run run) {
    auto state = std::make_shared<Command::State>();
    const auto blank = name.find(' ');
    CLI::App& parent =
        blank == std::string::npos ? m_state->app : *m_state->app.get_subcommand(name.substr(0, blank));
    state->app = parent.add_subcommand(blank == std::string::npos ? name : name.substr(blank + 1), does);
    state->run = std::move(run);
    state->app->callback([state, this] {
        for (const auto& [one, other] : state->atLeastOneOf)
            if (state->app->count(one) + state->app->count(other) == 0)
                throw CLI::RequiredError(std::string(one).append(" or ").append(other));
        m_state->chosen = state->run;
    });
    return Command(state);
}

void CommandLine::addGroup(const std::string& name, const std::string& does) {
    m_state->app.add_subcommand(name, does)->require_subcommand(1);
}

int CommandLine::run(int argc, char** argv) {
    prepareLastWords();
    try {
        m_state->app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return explain(m_state->app, error, argc > 1 ? argv[1] : "");
    }
    try {
        return finishOutput(m_state->chosen());
    } catch (const std::exception& thrown) { // a reader of the club file met a disk or a record that fails
        return fail(core::errorOf(thrown));
    }
}

} // namespace app
