#include "app/cli/commands/check_input.h"
#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "app/cli/commands/reports.h"
#include "core/base/error_code.h"
#include "core/club/club_register.h"
#include "core/register/sheets.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"

#include <memory>

namespace app {
namespace {

struct RenameOptions : CommonOptions {
    std::string sheet;
    std::string from;
    std::string to;
};

/// By the file's name in the contract, without its ending; classes stand in boats.csv and have no file.
std::optional<core::Named> namedBy(const std::string& word) {
    if (word == "boat_classes") return core::Named::BoatClass;
    for (const auto named : {core::Named::Boat, core::Named::Place, core::Named::Person, core::Named::KitType,
                             core::Named::Size})
        if (core::sheet(*core::sheetOf(named)).name() == word) return named;
    return std::nullopt;
}

void sayRenamed(const RenameOptions& options, const std::string& from, const std::string& to,
                const std::vector<core::Error>& warnings) {
    sayLine(QStringLiteral("%1 is called %2 now. What was recorded keeps the old word and is found "
                           "under the new one.")
                .arg(text(from), text(to)));
    for (const core::Error& each : warnings)
        noteWarning(text(options.sheet) + QLatin1Char(' ') + text(to), each);
}

int rename(const RenameOptions& options) {
    const auto named = namedBy(options.sheet);
    if (!named)
        return failWith("nothing of this kind has a name to change", options.sheet,
                        "give boats, places, people, kit_types, sizes or boat_classes");
    std::string of, from = options.from, to = options.to;
    if (*named == core::Named::Size) {
        const auto slash = from.find('/');
        if (slash == std::string::npos)
            return failWith("a size is of a kit type", from, "write it like 'life jacket/M'");
        of = from.substr(0, slash);
        from.erase(0, slash + 1);
        if (to.starts_with(of + '/')) to.erase(0, slash + 1); // written like the old one
    }
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        const auto warnings = club.register_().warningsOfName(*named, from, to);
        const core::Outcome done = club.register_().rename(*named, from, to, of, *by);
        if (!done) return fail(done.error());
        if (options.json)
            say(renamedJson(options.sheet, options.from, options.to, warnings));
        else
            sayRenamed(options, from, to, warnings);
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addRename(CommandLine& line) {
    auto options = std::make_shared<RenameOptions>();
    Command command = line.add("rename", "gives a boat, place, person, kit type, size or class another name",
                               [options] { return rename(*options); });
    takeCommon(command, *options);
    command.more(
        "History, signed answers and evidence keep the old word; everything is found under the new one.");
    command.file("SHEET", options->sheet, "boats, places, people, kit_types, sizes or boat_classes");
    command.offer("SHEET", {"boats", "places", "people", "kit_types", "sizes", "boat_classes"});
    command.file("OLD", options->from, "its name now; of a size 'kit type/size'");
    command.file("NEW", options->to, "the name from now on");
    takeOfficer(command, *options, "who does it");
}

} // namespace app
