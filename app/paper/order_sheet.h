#pragma once

#include "core/base/instant.h"
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

/// The order-by days of what runs short, as an iCalendar text (RFC 5545) to take into any calendar: an event
/// of a whole day for each, a late one on the plan's own day. An event keeps its UID from plan to plan (RFC
/// 4122, version 5, of club, kit type and size), so that taking a newer plan in moves it. `madeAt`: when this
/// was written.
std::string orderCalendar(const std::string& club, const core::ReplacementPlan& plan, core::Instant madeAt);

} // namespace app
