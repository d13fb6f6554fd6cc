#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/paper/check_list/check_list.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <memory>

namespace app {
namespace {

struct CheckListOptions : CommonOptions {
    std::string boat;
    std::string out;
    bool card = false;
};

int checkList(const CheckListOptions& options) {
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        const auto list = readCheckList(club, options.boat, moment.today);
        if (!list) return fail(list.error());
        const auto pages = [&] {
            const Painting painting;
            return options.card ? writeWallCard(options.out, *list) : writeCheckList(options.out, *list);
        }();
        if (!pages) return fail(pages.error());
        if (options.json)
            say(checkListJson(list->name, options.out, *pages));
        else
            sayLine(QStringLiteral("%1 of %2, %3: %4")
                        .arg(options.card ? QStringLiteral("Wall card") : QStringLiteral("Check list"),
                             text(list->name), counted(*pages, "%n page", "%n pages"), text(options.out)));
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addCheckList(CommandLine& line) {
    auto options = std::make_shared<CheckListOptions>();
    Command command = line.add("check-list", "a boat's check list on paper, to be ticked by hand",
                               [options] { return checkList(*options); });
    takeCommon(command, *options);
    command.more(
        "One page of A4 while it can be read there: in smaller type, then in two columns, only then more.");
    command.text("--boat", options->boat, "the boat", Need::Required);
    command.text("--out", options->out, "the PDF to write", Need::Required);
    command.flag("--card", options->card,
                 "the card for the wall of the shed instead: the whole round in large type");
}

} // namespace app
