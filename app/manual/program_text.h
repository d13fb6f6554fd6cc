#pragma once

#include <string>
#include <vector>

namespace app {

/// What a program or a command takes: an option (`--boat`) or a value that is known by its place (`FILE`).
struct TakenText {
    std::string name;
    std::string value; ///< the word that stands for an option's value; empty: a flag, or known by its place
    std::string does;
    std::vector<std::string> values = {}; ///< those that may be given; empty: any
    bool isRequired = false;
    bool isRepeated = false; ///< one or more values
    bool isPath = false;     ///< a file or folder, which a shell completes

    bool isOption() const { return name.starts_with("--"); }
    bool isFlag() const { return isOption() && value.empty(); }
};

/// What a command's --help, its page of the manual and the shells' completions are made of.
struct CommandText {
    std::string name;          ///< "check", or of a group "hub join"
    std::string section;       ///< the heading that it stands under
    std::string does;          ///< a line
    std::string more;          ///< a paragraph; may be empty
    std::string needsSomebody; ///< what exit code 1 means; empty: it never ends with 1
    std::vector<TakenText> taken;
};

/// Commands of two words, of which the first is the same.
struct GroupText {
    std::string name;
    std::string does;
};

/// A program. One without commands takes `taken` itself.
struct ProgramText {
    std::string name;
    std::string does; ///< a line
    std::string more; ///< a paragraph
    std::vector<TakenText> taken;
    std::vector<CommandText> commands;
    std::vector<GroupText> groups = {};

    /// "check" or "hub join" of what was given; empty: no command is called so.
    std::string commandOf(const std::vector<std::string>& words) const;
    const CommandText* command(const std::string& called) const; ///< null: there is none
    bool isGroup(const std::string& word) const;
};

/// Of a command of a group its second word, else empty.
std::string wordInGroup(const CommandText& command, const std::string& group);

/// "0.1.0", of both programs.
const char* versionText();

/// The window's program: what it takes. Texts in English; `main` translates `does` (context "main").
const ProgramText& windowText();

/// Whether a value of that name is a file or folder: `FILE`, `--out` ….
bool isNameOfPath(const std::string& name);

/// The words with that between them.
std::string joined(const std::vector<std::string>& words, const char* between = " ");

/// Those of `known` that are one slip away from what was given, or begin with it; three at most. Options are
/// told with their hyphens.
std::vector<std::string> meant(const std::string& given, const std::vector<std::string>& known);

} // namespace app
