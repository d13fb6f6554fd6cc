#pragma once

#include "app/cli/commands/options.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/register/boat.h"

#include <fstream>
#include <functional>
#include <iosfwd>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace core {
class Pin;
}

namespace app {

/// By name, or by the person's tag. NotFound names the option; NoLongerHere for who is known and may not be
/// meant.
using MayBe = std::function<bool(const core::Person&)>;
core::Result<std::string> findPerson(const std::vector<core::Person>& people, const std::string& asked,
                                     const char* option, const MayBe& mayBe);
/// The same among those who are here on that day.
core::Result<std::string> findPersonHere(const core::Club& club, const std::string& asked, const char* option,
                                         core::CalendarDay day);

/// The name of --by as the register has it; nobody named stays nobody.
core::Result<std::string> byWhom(const core::Club& club, const std::string& by, core::CalendarDay day);

/// The PIN of whoever signs; `codes` may stand on standard input, too, and then the PIN does not.
core::Result<std::shared_ptr<const core::Pin>> signersPin(const std::string& file, const std::string& signer,
                                                          const std::string& codes);

/// Opens the file of codes, or standard input for `-`; `codes` stays null for an empty path.
core::Outcome openCodes(const std::string& path, std::ifstream& file, std::istream*& codes);
/// The next line, without its end, as it comes: a scanner may be typing. False at the end, and where a line
/// is longer than anything that a scanner types (4,096 bytes): then the stream is bad.
bool nextLine(std::istream& codes, std::string& line);
/// All of them, without blank ones. More than 100,000 make the stream bad.
std::vector<std::string> linesOf(std::istream& codes);

/// What a moment of this command is: a fixed instant stays fixed, else each step happens when it happens.
std::function<core::Moment()> clockOf(const CommonOptions& options, core::Moment given);

int exitOf(const core::CheckAnswer& answer);

} // namespace app
