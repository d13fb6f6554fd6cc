#pragma once

#include "app/cli/commands/command.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace app {

/// What nearly every command takes.
struct CommonOptions {
    std::string file; ///< the club file
    std::string today;
    std::string at;
    std::string by;             ///< who does it
    std::string pinFile;        ///< of the PIN of `by`; "-": standard input
    bool isPinOfOfficer = true; ///< it unlocks a gear officer's acts
    bool json = false;
};

/// Adds --json and --today, and the club file before everything else unless the command has none.
enum class Takes { ClubFile, NoFile };
void takeCommon(Command& command, CommonOptions& options, Takes takes = Takes::ClubFile);

/// Adds --by, and --pin-file for its PIN, to a command that is a gear officer's.
void takeOfficer(Command& command, CommonOptions& options, const std::string& byHelp,
                 Need need = Need::NotEmpty);
/// Unlocks a gear officer's acts, where a PIN is given.
core::Outcome unlockFor(core::Club& club, const CommonOptions& options);
/// The same words wherever a PIN is taken.
constexpr const char* pinFileHelp =
    "the PIN: a file of one line that is yours alone, or - for standard input";
/// The register's files without .csv, as SHEET and --as take them.
std::vector<std::string> sheetNames();

/// --at if given, else --today at the present time of day, else now. BadInput for a day or instant that is
/// none.
core::Result<core::Moment> momentOf(const CommonOptions& options);

/// `90d` or `90`; no more than the calendar holds. Empty: no number of days, of which failOfDays tells.
std::optional<int> daysWithin(std::string_view text);
int failOfDays(const std::string& text);

/// Opens the club file and goes on with it; else the error's exit code.
int withClub(const CommonOptions& options, core::Club::Access access,
             const std::function<int(core::Club&)>& goOn);
/// The same for commands that go by a day.
int withClubOn(const CommonOptions& options, core::Club::Access access,
               const std::function<int(core::Club&, core::Moment)>& goOn);

} // namespace app
