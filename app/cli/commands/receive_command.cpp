#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/kit_options.h"
#include "app/cli/commands/options.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/record_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/paper/tag_sheet.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"
#include "core/club/club_kit.h"

#include <memory>

namespace app {
namespace {

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

} // namespace app
