#include "app/ctl/command.h"
#include "app/ctl/commands.h"
#include "app/ctl/options.h"

#include "app/common/json_out.h"
#include "app/common/sentences.h"
#include "app/common/words.h"
#include "app/ctl/terminal.h"

#include <memory>

namespace app {
namespace {

struct Options : CommonOptions {};

void sayMissing(const std::vector<core::MissingItem>& items, core::CalendarDay today) {
    if (items.empty()) return sayLine(QStringLiteral("Nothing is missing."));
    sayLine(counted(static_cast<int>(items.size()), "%n item is missing.", "%n items are missing."));
    for (const core::MissingItem& item : items) {
        const QString since = item.since ? QStringLiteral(", since %1").arg(inWords(*item.since)) : QString();
        const QString boat =
            item.boat.empty() ? QString() : QStringLiteral(", of %1").arg(QString::fromStdString(item.boat));
        sayLine(QStringLiteral("  ◯ %1 %2%3%4")
                    .arg(QString::fromStdString(item.kitType), codeInWords(item.code), boat, since));
        for (const core::ChainLink& link : item.chain)
            sayLine(QStringLiteral("      %1").arg(linkInWords(link, today)));
    }
    sayLine(QStringLiteral("A tag that is seen anywhere, in any check, takes its item off this list."));
}

int missing(const Options& options) {
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        const auto items = club.missingItems();
        if (options.json)
            say(missingJson(items));
        else
            sayMissing(items, moment.today);
        return static_cast<int>(items.empty() ? ExitFine : ExitNeedsSomebody);
    });
}

} // namespace

void addMissing(CommandLine& line) {
    auto options = std::make_shared<Options>();
    Command command = line.add("missing", "what is missing, and where it was last seen",
                               [options] { return missing(*options); });
    takeCommon(command, *options);
}

} // namespace app
