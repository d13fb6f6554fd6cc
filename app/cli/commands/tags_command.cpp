#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_kit.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/progress.h"
#include "app/cli/terminal/terminal.h"
#include "app/paper/tag_sheet.h"
#include "app/text/cautions.h"
#include "app/text/text.h"
#include "app/text/words.h"

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

int tags(const TagsOptions& options) {
    return withClub(options, core::Club::Access::ReadOnly, [&](core::Club& club) {
        if (options.mint > 0) return mint(options, club);
        auto labels = club.kit().tagLabels(options.items);
        if (!labels) return fail(labels.error());
        if (options.control)
            for (core::TagLabel& each : controlTags())
                labels->push_back(std::move(each));
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
    command.several("--items", options->items, "only these codes");
    command.text("--out", options->out, "the PDF to write", Need::NotEmpty);
    command.number("--size", options->size, smallestSymbolMm, biggestSymbolMm,
                   "width of a symbol in millimetres");
    command.number("--mint", options->mint, 1, mostMinted, "print so many unused codes; with --out, as tags");
    command.flag("--control", options->control, "the control tags too");
    command.notTogether("--mint", "--items");
    command.atLeastOneOf("--out", "--mint");
}

} // namespace app
