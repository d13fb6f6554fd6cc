#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/kit_options.h"
#include "app/cli/commands/options.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/record_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/cautions.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"

#include <memory>

namespace app {
namespace {

int retag(const KitOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        if (const core::Outcome room = canPrintTags(options); !room) return fail(room.error());
        const auto tag = club.kit().replaceTag(options.code, *by, moment);
        if (!tag) return fail(tag.error());
        const auto item = club.kit().item(*tag);
        const auto labels = club.kit().tagLabels({*tag});
        if (!labels) return fail(labels.error());
        const std::string& name = item ? item->id : labels->front().name;
        if (options.json)
            say(newTagJson(*tag, name, options.out));
        else
            sayLine(QStringLiteral("%1 has the new tag %2; its old tag no longer works.")
                        .arg(item ? text(item->kitType) + ' ' + codeInWords(item->id) : text(name),
                             codeInWords(*tag)));
        return finishWithSheet(club, options, {*tag});
    });
}

int sayState(const core::Club& club, const KitOptions& options, const core::Outcome& done, const char* now,
             const QString& caution = {}) {
    if (!done) return fail(done.error());
    const auto item = club.kit().item(options.code);
    if (options.json)
        say(stateJson(*item));
    else
        sayLine(QStringLiteral("%1 %2 is %3.")
                    .arg(text(item->kitType), codeInWords(item->tag), QLatin1String(now)));
    if (!options.json && !caution.isEmpty()) sayLine(caution);
    return ExitFine;
}

int writeOff(const KitOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        return sayState(club, options, club.kit().writeOff(options.code, options.why, *by, moment),
                        "written off", writeOffCaution());
    });
}

int release(const KitOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        return sayState(club, options, club.kit().release(options.code, *by, moment), "serviceable",
                        serviceCaution());
    });
}

int reinstate(const KitOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        const core::Outcome done = club.kit().reinstate(options.code, options.why, *by, moment);
        const auto item = done ? club.kit().item(options.code) : std::nullopt;
        const bool isWithdrawn = item && item->state != core::ItemState::Serviceable;
        return sayState(club, options, done,
                        isWithdrawn ? "unserviceable, as it was before it was written off" : "serviceable",
                        reinstatedCaution());
    });
}

} // namespace

void addRetag(CommandLine& line) {
    auto options = std::make_shared<KitOptions>();
    Command command = line.add("retag", "a new tag for kit, a boat, person or place; its history stays",
                               [options] { return retag(*options); });
    takeCommon(command, *options);
    command.more(
        "The old tag no longer works. A name that a boat and a person have is refused: give its tag.");
    command.file("CODE", options->code, "its tag code; of a boat, person or place the name, too");
    takeOfficer(command, *options, "who fixes it");
    takeSheet(command, *options);
}

void addWriteOff(CommandLine& line) {
    auto options = std::make_shared<KitOptions>();
    Command command = line.add("write-off", "an item that is out of use for good",
                               [options] { return writeOff(*options); });
    takeCommon(command, *options);
    command.more("It counts nowhere from then on; its history stays. See reinstate.");
    command.file("CODE", options->code, "the item's tag code");
    const auto reasons = core::sheet(core::SheetId::Items).column("why").choices;
    command.choice("--why", options->why, {reasons.begin(), reasons.end()},
                   "why; mistake: it was registered by mistake, and is no loss", Need::Required);
    takeOfficer(command, *options, "who writes it off");
}

void addReinstate(CommandLine& line) {
    auto options = std::make_shared<KitOptions>();
    Command command = line.add("reinstate", "takes the writing off of an item back",
                               [options] { return reinstate(*options); });
    takeCommon(command, *options);
    command.more("The item is what it was before.");
    command.file("CODE", options->code, "the item's tag code");
    command.text("--why", options->why, "why, in words", Need::Required);
    takeOfficer(command, *options, "who reinstates it");
}

void addRelease(CommandLine& line) {
    auto options = std::make_shared<KitOptions>();
    Command command = line.add("release", "an unserviceable item that was put right",
                               [options] { return release(*options); });
    takeCommon(command, *options);
    command.file("CODE", options->code, "the item's tag code");
    takeOfficer(command, *options, "who releases it");
}

} // namespace app
