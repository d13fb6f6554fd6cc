#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_answers.h"
#include "core/club/club_events.h"

#include "app/cli/json/record_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <memory>

namespace app {
namespace {

struct MissingOptions : CommonOptions {
    std::string event;
};

QString peopleIn(const std::vector<std::string>& people) {
    return people.empty() ? QString() : QStringLiteral(" by %1").arg(listed(people));
}

void sayBoat(const core::BoatTally& boat, core::CalendarDay today) {
    QString row = QStringLiteral("  %1: %2 went out").arg(text(boat.boat)).arg(boat.out.size());
    if (boat.launchedAt)
        row += QStringLiteral(" %1%2").arg(inWords(*boat.launchedAt, today), peopleIn(boat.launchedBy));
    row += boat.returnedAt ? QStringLiteral("; %1 came back on it %2, signed by %3")
                                 .arg(boat.back.size())
                                 .arg(inWords(*boat.returnedAt, today), text(boat.returnSignedBy))
                           : QStringLiteral("; still out");
    if (!boat.notReturned.empty()) row += QStringLiteral("; %1 not seen since").arg(boat.notReturned.size());
    sayLine(row);
}

void saySwap(const core::Swap& swap) {
    const QString kit = text(swap.kitType);
    const QString out = text(swap.wentOutOn), back = text(swap.cameBackOn);
    if (swap.against.id.empty())
        sayLine(QStringLiteral("  ▲ %1 %2 went out on %3 and came back on %4: put it back on %3.")
                    .arg(kit, codeInWords(swap.item.tag), out, back));
    else
        sayLine(QStringLiteral("  ▲ the %1s %2 of %4 and %3 of %5 were swapped: put %2 on %4 and %3 on %5.")
                    .arg(kit, codeInWords(swap.item.tag), codeInWords(swap.against.tag), out, back));
}

void sayTally(const core::EventTally& tally, core::CalendarDay today) {
    sayLine(text(tally.event));
    for (const core::BoatTally& boat : tally.boats)
        sayBoat(boat, today);
    for (const core::Swap& swap : tally.swaps)
        saySwap(swap);
}

/// The boat that it went out on, which need not be its home; else its home.
QString boatOf(const core::MissingItem& item) {
    const bool wentOut = !item.chain.empty() && item.chain.front().what == core::ChainLink::What::Launched;
    return (wentOut ? QStringLiteral(", last out on %1") : QStringLiteral(", of %1")).arg(text(item.boat));
}

void sayMissing(const std::vector<core::MissingItem>& items, core::CalendarDay today) {
    if (items.empty()) return sayLine(QStringLiteral("Nothing is missing."));
    sayLine(counted(static_cast<int>(items.size()), "%n item is missing.", "%n items are missing."));
    for (const core::MissingItem& item : items) {
        const QString since = item.since ? QStringLiteral(", since %1").arg(inWords(*item.since)) : QString();
        const QString boat = item.boat.empty() ? QString() : boatOf(item);
        sayLine(
            QStringLiteral("  ◯ %1 %2%3%4").arg(text(item.kitType), codeInWords(item.item.tag), boat, since));
        for (const core::ChainLink& link : item.chain)
            sayLine(QStringLiteral("      %1").arg(linkInWords(link, today)));
    }
    sayLine(QStringLiteral("A tag that is seen anywhere, in any check, takes its item off this list."));
}

int ofEvent(const core::Club& club, const MissingOptions& options, core::CalendarDay today) {
    const auto tally = club.events().tally(options.event);
    if (!tally) return fail(tally.error());
    if (options.json) {
        say(tallyJson(*tally));
    } else {
        sayTally(*tally, today);
        sayMissing(tally->missing, today);
    }
    return tally->missing.empty() ? ExitFine : ExitNeedsSomebody;
}

int missing(const MissingOptions& options) {
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        if (!options.event.empty()) return ofEvent(club, options, moment.today);
        const auto items = club.answers().missingItems();
        if (options.json)
            say(missingJson(items));
        else
            sayMissing(items, moment.today);
        return static_cast<int>(items.empty() ? ExitFine : ExitNeedsSomebody);
    });
}

} // namespace

void addMissing(CommandLine& line) {
    auto options = std::make_shared<MissingOptions>();
    Command command = line.add("missing", "what is missing, and where it was last seen",
                               [options] { return missing(*options); });
    takeCommon(command, *options);
    command.needsSomebody("an item is missing");
    command.text("--event", options->event, "only of what went out in an event, or on a day, with its tally",
                 Need::NotEmpty);
}

} // namespace app
