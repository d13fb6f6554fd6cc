#pragma once

#include <cstdint>
#include <functional>
#include <initializer_list>
#include <memory>
#include <string>
#include <vector>

namespace app {

struct ProgramText;
struct TakenText;

/// The command that was asked for; it is run after the whole line was understood. Returns the exit code.
using Run = std::function<int()>;

/// NotEmpty: may be left out. Of neither of the last two blanks are a value.
enum class Need { Optional, NotEmpty, Required };

/// One command and what it takes: from this come what it reads, its --help, its page of the manual and what
/// the shells complete. Each value lands in a variable that must outlive the reading of the line. Hides the
/// library that reads the line, which is slow to compile.
class Command {
public:
    void file(const std::string& name, std::string& into, const std::string& help);
    void paths(const std::string& name, std::vector<std::string>& into, const std::string& help);
    void flag(const std::string& name, bool& into, const std::string& help);
    /// Never an empty value: in a script it is a variable that was not set.
    void text(const std::string& name, std::string& into, const std::string& help,
              Need need = Need::NotEmpty);
    void choice(const std::string& name, std::string& into, std::vector<std::string> allowed,
                const std::string& help, Need need = Need::Optional);
    /// One value each time that the option is given, which may be often.
    void repeated(const std::string& name, std::vector<std::string>& into, const std::string& help);
    /// One or more values after the option.
    void several(const std::string& name, std::vector<std::string>& into, const std::string& help);
    void number(const std::string& name, double& into, double low, double high, const std::string& help);
    void number(const std::string& name, int& into, int low, int high, const std::string& help);
    void number(const std::string& name, std::uint64_t& into, const std::string& help);

    /// What a value may be, where the command itself says of another one what is wrong; for help and shells.
    void offer(const std::string& name, std::vector<std::string> values);

    /// A paragraph for its help and its page: what a line and the options do not tell.
    void more(const std::string& paragraph);
    /// What it means that it ends with ExitNeedsSomebody: "a boat is not ready".
    void needsSomebody(const std::string& when);

    void notTogether(const std::string& one, const std::string& other);
    void atLeastOneOf(const std::string& one, const std::string& other);

private:
    friend class CommandLine;
    struct State;
    explicit Command(std::shared_ptr<State> state);
    TakenText& note(const std::string& name, const std::string& help, Need need);
    std::shared_ptr<State> m_state;
};

/// All commands of the program.
class CommandLine {
public:
    CommandLine();
    ~CommandLine();
    /// The heading of the commands that are added from now on.
    void section(const std::string& heading);
    /// A name of two words, "hub join", is a command of a group, which was named before.
    void addGroup(const std::string& name, const std::string& does);
    /// Every command takes --help and --quiet, too.
    Command add(const std::string& name, const std::string& does, Run run);
    /// Reads the line, runs the command that it asks for, and returns its exit code; explains a line that it
    /// does not understand on standard error and returns ExitBadInput.
    int run(int argc, char** argv);
    /// All that was added so far.
    ProgramText text() const;

private:
    struct State;
    std::unique_ptr<State> m_state;
};

} // namespace app
