#pragma once

#include "core/base/instant.h"
#include "core/club/club.h"
#include "tests/support/small_club_files.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <iosfwd>
#include <set>
#include <string>
#include <vector>

namespace small_club {

/// What is shown in a launch check of Teal, and what stands in the club file afterwards, whichever program it
/// was shown to. The contract is docs/register-csv.md, "Codes for a check without a camera".
struct ControlTagCase {
    std::string name;
    std::vector<std::string> shown;
    std::set<std::string> seen;      ///< kit whose sighting stands
    std::set<std::string> withdrawn; ///< by the tag for damaged kit
    std::string signedBy;            ///< empty: the check stays open
    bool isTimed = false;            ///< the engine's run is recorded
};

const std::vector<ControlTagCase>& controlTagCases();
std::string nameOfCase(const testing::TestParamInfo<ControlTagCase>& info); ///< for the suites that use them
void PrintTo(const ControlTagCase& shown, std::ostream* out);

/// 14 March 2026, 06:40 UTC.
core::Moment now();

/// A club file in which Teal's launch check was begun: Ada drives, Bo is crew, every point but the engine's
/// run is done. Returns the check's id. Throws when it cannot be made.
std::string beginTealsLaunch(const std::filesystem::path& file);

/// Compares what stands in the file with what the case says.
void expectCame(const core::Club& club, const std::string& check, const ControlTagCase& shown);

} // namespace small_club
