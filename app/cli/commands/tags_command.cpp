#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_kit.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/progress.h"
#include "app/cli/terminal/terminal.h"
#include "app/paper/tag_sheet.h"
#include "app/paper/whole_file.h"
#include "app/text/cautions.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <algorithm>
#include <memory>

namespace app {
namespace {

constexpr int mostMinted = 10'000;

struct TagsOptions : CommonOptions {
    std::vector<std::string> items;
    std::string out;
    double size = 30;
    int mint = 0;
    bool control = false;
    bool worn = false;
};

int print(const TagsOptions& options, const std::vector<core::TagLabel>& tags) {
    const Painting painting;
    const auto sheets = [&] {
        Progress progress(QStringLiteral("tags"));
        return writeTagSheets(options.out, tags, options.size, [&](double share) { progress.show(share); });
    }();
    if (!sheets) return fail(sheets.error());
    if (options.json) {
        say(tagsJson(options.out, *sheets, tags));
        return ExitFine;
    }
    sayLine(QStringLiteral("%1 on %2: %3")
                .arg(counted(static_cast<int>(tags.size()), "%n tag", "%n tags"),
                     counted(*sheets, "%n sheet", "%n sheets"), text(options.out)));
    sayLine(tagCaution());
    return ExitFine;
}

int mint(const TagsOptions& options, const core::Club& club) {
    const std::vector<std::string> codes = club.kit().mintCodes(options.mint);
    if (!options.out.empty()) {
        std::vector<core::TagLabel> tags;
        for (const std::string& code : codes)
            tags.push_back({code, {}, {}});
        return print(options, tags);
    }
    if (options.json) {
        say(codesJson(codes));
        return ExitFine;
    }
    for (const std::string& code : codes)
        sayLine(text(code));
    return ExitFine;
}

using Labels = core::Result<std::vector<core::TagLabel>>;

/// The weakest first.
void keepWorn(std::vector<core::TagLabel>& labels) {
    std::erase_if(labels, [](const core::TagLabel& each) { return wornTagInWords(each.print).isEmpty(); });
    std::stable_sort(labels.begin(), labels.end(),
                     [](const core::TagLabel& a, const core::TagLabel& b) { return *a.print < *b.print; });
}

Labels labelsOf(const core::Club& club, const TagsOptions& options, core::Moment moment) {
    Labels labels =
        options.items.empty() ? club.kit().allTagLabels(moment.today) : club.kit().tagLabels(options.items);
    if (labels && options.worn) keepWorn(*labels);
    return labels;
}

/// What is asked for by name and has no tag is given one.
core::Outcome giveMissingTags(const TagsOptions& options, core::Moment moment) {
    if (const core::Outcome room = canWriteWholeFile(options.out, Paper::Sheet); !room) return room;
    auto club = core::Club::open(options.file);
    if (!club) return club.error();
    if (const core::Outcome unlocked = unlockFor(*club, options); !unlocked) return unlocked;
    return club->kit().giveMissingTags(options.items, {}, moment);
}

int sayNoneWorn(const TagsOptions& options) {
    if (options.json)
        say(tagsJson({}, 0, {}));
    else
        sayLine(QStringLiteral("no tag is known to be wearing out"));
    return ExitFine;
}

int tags(const TagsOptions& options) {
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        if (options.mint > 0) return mint(options, club);
        Labels labels = labelsOf(club, options, moment);
        const bool isTagMissing =
            labels && std::any_of(labels->begin(), labels->end(),
                                  [](const core::TagLabel& each) { return each.code.empty(); });
        if (isTagMissing) {
            if (const core::Outcome given = giveMissingTags(options, moment); !given)
                return fail(given.error());
            labels = labelsOf(club, options, moment);
        }
        if (!labels) return fail(labels.error());
        if (options.control)
            for (core::TagLabel& each : controlTags())
                labels->push_back(std::move(each));
        if (labels->empty() && options.worn) return sayNoneWorn(options);
        if (labels->empty())
            return failWith("the club has no tags yet", options.file,
                            "import items first, or print unused ones with --mint");
        return print(options, *labels);
    });
}

} // namespace

void addTags(CommandLine& line) {
    auto options = std::make_shared<TagsOptions>();
    Command command =
        line.add("tags", "sheets of tags as PDF, or unused codes", [options] { return tags(*options); });
    takeCommon(command, *options);
    command.more(
        "Of all that has a tag and is here, or of what --items names. Written-off kit is never printed.");
    command.several("--items", options->items,
                    "only these: tag codes, and names of boats, people and places");
    command.text("--out", options->out, "the PDF to write", Need::NotEmpty);
    command.number("--size", options->size, smallestSymbolMm, biggestSymbolMm,
                   "width of a symbol in millimetres");
    command.number("--mint", options->mint, 1, mostMinted, "print so many unused codes; with --out, as tags");
    command.flag("--worn", options->worn, "only those that checks saw wearing out, the weakest first");
    command.flag("--control", options->control, "the control tags too");
    takeOfficer(command, *options, "the gear officer who gives tags to what has none");
    command.notTogether("--mint", "--items");
    command.notTogether("--mint", "--worn");
    command.atLeastOneOf("--out", "--mint");
}

} // namespace app
