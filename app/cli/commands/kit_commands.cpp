#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "core/base/error_code.h"
#include "core/base/store_failure.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/record_json.h"
#include "app/cli/terminal/progress.h"
#include "app/cli/terminal/terminal.h"
#include "app/paper/tag_sheet.h"
#include "app/paper/whole_file.h"
#include "app/text/cautions.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/answers/set_up.h"
#include "core/register/new_kit.h"

#include <memory>

namespace app {
namespace {

struct KitOptions : CommonOptions {
    core::NewKit kit;
    std::string code;
    std::string why;
    std::string labels;
    std::string out;
    double size = 30;
    bool dryRun = false;
};

/// A tag is minted once: what cannot be printed is refused before.
core::Outcome canPrintTags(const KitOptions& options) {
    return options.out.empty() ? core::Outcome(core::Done{}) : canWriteWholeFile(options.out, Paper::Sheet);
}

core::Outcome printTags(const core::Club& club, const KitOptions& options,
                        const std::vector<std::string>& codes) {
    const auto labels = club.kit().tagLabels(codes);
    if (!labels) return labels.error();
    const Painting painting;
    const auto sheets = writeTagSheets(options.out, *labels, options.size);
    if (!sheets) return sheets.error();
    return core::Done{};
}

/// Tags of the codes, when a sheet is asked for; the exit code. They are recorded already, and said: whatever
/// happens to the sheet, nobody has to record them twice.
int finishWithSheet(const core::Club& club, const KitOptions& options,
                    const std::vector<std::string>& codes) {
    if (options.out.empty()) return ExitFine;
    flushOutput();
    const auto withoutSheet = [&](const core::Error& why) {
        return fail({core::ErrorCode::RecordedWithoutSheet, {options.file}, {}, {why}});
    };
    try {
        const core::Outcome printed = printTags(club, options, codes);
        return printed ? static_cast<int>(ExitFine) : withoutSheet(printed.error());
    } catch (const std::exception& thrown) { // memory is short, or the club file failed
        return withoutSheet(core::errorOf(thrown));
    }
}

int receive(const KitOptions& options) {
    if (options.labels == "-" && options.pinFile == "-")
        return fail({core::ErrorCode::PinFileWithCodes, {}, "--pin-file"});
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        core::NewKit kit = options.kit;
        std::ifstream file;
        std::istream* labels = nullptr;
        if (const core::Outcome opened = openCodes(options.labels, file, labels); !opened)
            return fail(opened.error());
        if (labels != nullptr) {
            kit.labels = linesOf(*labels);
            if (labels->bad()) return fail({core::ErrorCode::CodesUnreadable, {}, options.labels});
            if (kit.labels.empty())
                return failWith("there is no label in it", options.labels, "give one label a line");
        }
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        if (const core::Outcome room = canPrintTags(options); !room) return fail(room.error());
        const auto items = club.kit().registerKit(kit, *by, moment);
        if (!items) return fail(items.error());
        std::vector<std::string> codes;
        for (const core::Item& item : *items)
            codes.push_back(item.tag);
        if (options.json)
            say(newKitJson(*items, options.out));
        else {
            sayLine(counted(static_cast<int>(items->size()), "%n item registered.", "%n items registered."));
            for (const core::Item& item : *items)
                sayLine(QStringLiteral("  %1  %2  %3")
                            .arg(codeInWords(item.tag), text(item.kitType), text(item.serial)));
        }
        return finishWithSheet(club, options, codes);
    });
}

void sayFitOut(const core::BoatFitOut& boat, const FittedOut& fitted) {
    if (boat.lines.empty()) sayLine(QStringLiteral("Nothing is asked of %1 yet.").arg(text(boat.boat)));
    for (std::size_t i = 0; i < boat.lines.size(); ++i) {
        sayLine(QStringLiteral("%1: there %2, new %3")
                    .arg(text(boat.lines[i].line.kitType))
                    .arg(boat.lines[i].there)
                    .arg(boat.lines[i].lacking()));
        for (const core::Item& item : fitted[i])
            sayLine(QStringLiteral("  %1").arg(codeInWords(item.tag)));
    }
}

/// What the manifest lacks, without size and dates: nobody can guess them.
std::vector<core::NewKit> kitLacking(const core::BoatFitOut& boat) {
    std::vector<core::NewKit> kinds;
    for (const core::FitOutLine& each : boat.lines) {
        core::NewKit& kit = kinds.emplace_back();
        kit.kitType = each.line.kitType;
        kit.boat = boat.boat;
        kit.count = each.lacking();
    }
    return kinds;
}

/// Registered in one; the items by line, as there are none for some.
core::Result<FittedOut> registerLacking(core::Club& club, const core::BoatFitOut& boat, const std::string& by,
                                        core::Moment moment) {
    std::vector<core::NewKit> kinds = kitLacking(boat);
    std::erase_if(kinds, [](const core::NewKit& kit) { return kit.count == 0; });
    auto items =
        kinds.empty() ? core::Result<FittedOut>(FittedOut()) : club.kit().registerAll(kinds, by, moment);
    if (!items) return items.error();
    FittedOut fitted(boat.lines.size());
    auto next = items->begin();
    for (std::size_t i = 0; i < boat.lines.size(); ++i)
        if (boat.lines[i].lacking() > 0) fitted[i] = std::move(*next++);
    return fitted;
}

int fitOut(const KitOptions& options) {
    const auto access = options.dryRun ? core::Club::Access::ReadOnly : core::Club::Access::ReadWrite;
    return withClubOn(options, access, [&](core::Club& club, core::Moment moment) {
        const auto boat = club.kit().fitOutOf(options.kit.boat);
        if (!boat) return fail(boat.error());
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        if (const core::Outcome room = canPrintTags(options); !room) return fail(room.error());
        const auto fitted = options.dryRun ? core::Result<FittedOut>(FittedOut(boat->lines.size()))
                                           : registerLacking(club, *boat, *by, moment);
        if (!fitted) return fail(fitted.error());
        std::vector<std::string> codes;
        for (const auto& items : *fitted)
            for (const core::Item& item : items)
                codes.push_back(item.tag);
        if (options.json)
            say(fitOutJson(*boat, *fitted, codes.empty() ? std::string() : options.out));
        else
            sayFitOut(*boat, *fitted);
        return codes.empty() ? static_cast<int>(ExitFine) : finishWithSheet(club, options, codes);
    });
}

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

void takeSheet(Command& command, KitOptions& options) {
    command.text("--out", options.out, "the PDF of the new tags", Need::NotEmpty);
    command.number("--size", options.size, smallestSymbolMm, biggestSymbolMm,
                   "width of a symbol in millimetres");
}

} // namespace

void addReceive(CommandLine& line) {
    auto options = std::make_shared<KitOptions>();
    Command command = line.add("receive", "register kit that arrived and mint its tags",
                               [options] { return receive(*options); });
    takeCommon(command, *options);
    command.more("One item for each of --count, or for each maker's label; serial, batch and days come from "
                 "the labels.");
    command.text("--kit-type", options->kit.kitType, "what it is", Need::Required);
    command.text("--size", options->kit.size, "its size");
    command.text("--boat", options->kit.boat, "its home boat");
    command.text("--place", options->kit.place, "its home place");
    command.notTogether("--boat", "--place");
    command.text("--person", options->kit.person, "whose it is, for a personal kit type");
    command.text("--made", options->kit.made, "day, month or year of manufacture");
    command.text("--first-use", options->kit.firstUse, "day of its first use");
    command.text("--stamped", options->kit.stamped, "the expiry printed on it");
    command.text("--maker", options->kit.maker, "who made it");
    command.text("--note", options->kit.note, "a remark");
    command.number("--count", options->kit.count, 1, 1000, "how many alike");
    command.text("--labels", options->labels,
                 "file of makers' labels (GS1), one a line, or - : one item each");
    command.notTogether("--count", "--labels");
    takeOfficer(command, *options, "who registers it");
    command.text("--out", options->out, "the PDF of the new tags", Need::NotEmpty);
    command.number("--tag-size", options->size, smallestSymbolMm, biggestSymbolMm,
                   "width of a symbol in millimetres");
}

void addFitOut(CommandLine& line) {
    auto options = std::make_shared<KitOptions>();
    Command command = line.add("fit-out", "register what a boat's manifest lacks, and mint its tags",
                               [options] { return fitOut(*options); });
    takeCommon(command, *options);
    command.more("What the boat's manifest lacks becomes items at home on the boat, without size and days.");
    command.text("--boat", options->kit.boat, "the boat", Need::Required);
    command.flag("--dry-run", options->dryRun, "only say what would be registered");
    takeOfficer(command, *options, "who registers it");
    takeSheet(command, *options);
    command.notTogether("--dry-run", "--out");
}

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
    command.choice("--why", options->why, {"lost", "damaged", "worn", "expired"}, "why", Need::Required);
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
