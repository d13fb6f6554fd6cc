#pragma once

#include "app/cli/commands/options.h"
#include "core/base/result.h"
#include "core/register/new_kit.h"

#include <string>
#include <vector>

namespace core {
class Club;
}

namespace app {

/// What the commands take that register kit, mint tags or give an item a state.
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
core::Outcome canPrintTags(const KitOptions& options);

/// Tags of the codes, when a sheet is asked for; the exit code. They are recorded already, and said: whatever
/// happens to the sheet, nobody has to record them twice.
int finishWithSheet(const core::Club& club, const KitOptions& options, const std::vector<std::string>& codes);

/// `--out` and `--size`.
void takeSheet(Command& command, KitOptions& options);

} // namespace app
