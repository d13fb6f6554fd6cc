#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"

#include "app/cli/terminal/terminal.h"
#include "app/manual/completion.h"
#include "app/manual/help_text.h"
#include "app/manual/program_text.h"
#include "app/paper/whole_file.h"

#include <filesystem>
#include <memory>

namespace app {
namespace {

struct ShellOptions {
    std::string shell;
    bool ofWindow = false;
};

int completion(const ProgramText& program, const std::string& shell) {
    if (shell == "bash")
        say(bashCompletion(program));
    else
        say(shell == "zsh" ? zshCompletion(program) : fishCompletion(program));
    return ExitFine;
}

/// Every page, or the error line of the first that cannot be written.
int manual(const ProgramText& program, const std::string& folder) {
    std::vector<std::pair<std::string, std::string>> pages{{program.name, manPageOf(program)},
                                                           {windowText().name, manPageOf(windowText())}};
    for (const CommandText& command : program.commands)
        pages.emplace_back(pageNameOf(program, command), manPageOf(program, command));
    std::error_code ignored; // the first file tells
    std::filesystem::create_directories(folder, ignored);
    noteMade();
    for (const auto& [name, page] : pages)
        if (const core::Outcome written = writeWholeFile(std::filesystem::path(folder) / (name + ".1"),
                                                         QByteArray::fromStdString(page));
            !written)
            return fail(written.error());
    sayLine(QStringLiteral("%1 pages are in %2.").arg(pages.size()).arg(QString::fromStdString(folder)));
    return ExitFine;
}

} // namespace

void addCompletion(CommandLine& line) {
    auto options = std::make_shared<ShellOptions>();
    Command command =
        line.add("completion", "what makes a shell complete commands, options and files", [options, &line] {
            return completion(options->ofWindow ? windowText() : line.text(), options->shell);
        });
    command.more("Printed to be sourced: source <(tholepinctl completion bash).");
    command.choice("SHELL", options->shell, {"bash", "zsh", "fish"}, "bash, zsh or fish", Need::Required);
    command.flag("--window", options->ofWindow, "of tholepin, the window, instead");
}

void addManual(CommandLine& line) {
    auto folder = std::make_shared<std::string>();
    Command command = line.add("manual", "write the pages of the manual, for man",
                               [folder, &line] { return manual(line.text(), *folder); });
    command.more(
        "A page of each command, of this program and of the window, made of the same text as --help.");
    command.file("DIR", *folder, "folder for the pages");
}

} // namespace app
