#pragma once

#include "core/base/instant.h"

#include <filesystem>
#include <string>
#include <vector>

namespace app {

// The names of the copies that go to a folder after each signed check: "sandmouth 3fa9c1d2
// 2026-03-14T064000.123Z.tholepin", the club file's own name, a short name of the club's record, and when.

inline constexpr int copiesKept = 30;

/// Of a record by what it begins with (core/club/club_record.h).
std::string copyName(const std::filesystem::path& clubFile, const std::string& origin, core::Instant at);

/// Whether a name is that of such a copy, of whatever record.
bool isCopyName(const std::string& name);

/// Those of `names` that are copies of that record and older than the newest thirty. Of another record, or
/// named in any other way: never.
std::vector<std::string> copiesToRemove(const std::vector<std::string>& names, const std::string& origin);

} // namespace app
