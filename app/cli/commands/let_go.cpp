#include "app/cli/commands/let_go.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/plain_text.h"
#include "core/club/club_checks.h"

namespace app {

int letGo(core::Club& club, const LetGo& asked, core::Moment moment) {
    const auto open = club.checks().unfinishedOf(asked.where, asked.phase);
    if (!open) return fail(open.error());
    if (const core::Outcome done = club.checks().discard(open->check, asked.reason, moment); !done) {
        core::Error error = done.error();
        error.where = "--discard";
        return fail(error);
    }
    if (asked.json)
        say(discardedJson(*open, std::string(core::withoutOuterBlanks(asked.reason))));
    else
        sayLine(QStringLiteral("%1 of %2, opened %3, is closed without a signature.")
                    .arg(withCapital(nameInWords(asked.phase)), text(open->location.name),
                         inWords(open->openedAt, moment.today)));
    return ExitFine;
}

} // namespace app
