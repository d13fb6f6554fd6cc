#include "app/cli/commands/kit_options.h"

#include "app/cli/terminal/terminal.h"
#include "app/paper/tag_sheet.h"
#include "app/paper/whole_file.h"
#include "core/base/error_code.h"
#include "core/base/store_failure.h"
#include "core/club/club_kit.h"

namespace app {
namespace {

core::Outcome printTags(const core::Club& club, const KitOptions& options,
                        const std::vector<std::string>& codes) {
    const auto labels = club.kit().tagLabels(codes);
    if (!labels) return labels.error();
    const Painting painting;
    const auto sheets = writeTagSheets(options.out, *labels, options.size);
    if (!sheets) return sheets.error();
    return core::Done{};
}

} // namespace

core::Outcome canPrintTags(const KitOptions& options) {
    return options.out.empty() ? core::Outcome(core::Done{}) : canWriteWholeFile(options.out, Paper::Sheet);
}

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

void takeSheet(Command& command, KitOptions& options) {
    command.text("--out", options.out, "the PDF of the new tags", Need::NotEmpty);
    command.number("--size", options.size, smallestSymbolMm, biggestSymbolMm,
                   "width of a symbol in millimetres");
}

} // namespace app
