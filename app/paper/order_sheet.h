#pragma once

#include "core/base/result.h"
#include "core/plan/replacement/replacement_plan.h"

#include <filesystem>
#include <string>

namespace app {

/// What runs short, as CSV for a shop or a treasurer (RFC 4180, CRLF, UTF-8, numbers with a full stop). Text
/// that a spreadsheet would run as a formula gets a leading `'`, as in the register's files.
std::string orderCsv(const core::ReplacementPlan& plan);

/// The same as A4 sheets to print, black on white, with room for a hand to note what was ordered. Needs a
/// QGuiApplication (any platform). The file is whole or as it was: DiskFailed. Returns the number of sheets.
core::Result<int> writeOrderSheet(const std::filesystem::path& file, const std::string& club,
                                  const core::ReplacementPlan& plan);

} // namespace app
