#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/starters/starters.h"
#include "app/text/cautions.h"

#include <memory>

namespace app {
namespace {

int list(const CommonOptions& options) {
    std::vector<std::pair<std::string, std::string>> all;
    for (const Starter& each : starters())
        all.emplace_back(each.name.toStdString(), each.title.toStdString());
    if (options.json) {
        say(startersJson(all));
        return ExitFine;
    }
    std::vector<QStringList> rows;
    for (const Starter& each : starters())
        rows.push_back({each.name, each.title});
    sayText(tableOf({"starter", "for"}, rows));
    sayLine(QStringLiteral(
        "Rules, sizes, manifest and points of a starter are examples: put your maker's and your "
        "club's in their place."));
    return ExitFine;
}

} // namespace

void addStarters(CommandLine& line) {
    auto options = std::make_shared<CommonOptions>();
    Command command = line.add("starters", "example registers that a new club may begin with",
                               [options] { return list(*options); });
    takeCommon(command, *options, Takes::NoFile);
    command.more("What they say are examples, and each rule says so in its source.");
}

} // namespace app
