#pragma once

#include "core/base/calendar_day.h"
#include "core/base/result.h"
#include "core/club/club.h"
#include "core/exchange/csv_import.h"

namespace app {

core::Result<core::ImportPlan> importWithProgress(core::Club& club, const std::string& folder,
                                                  core::CalendarDay today, bool dryRun);

/// Says what was (or would be) imported, or each rejected row; the exit code.
int reportImport(const core::ImportPlan& plan, bool json, bool dryRun);

} // namespace app
