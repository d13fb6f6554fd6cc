#pragma once

#include "core/club/club.h"

namespace app {

core::Result<core::ImportPlan> importWithProgress(core::Club& club, const std::string& folder,
                                                  core::CalendarDay today, bool dryRun);

/// Says what was (or would be) imported, or each rejected row; the exit code.
int reportImport(const core::ImportPlan& plan, bool json, bool dryRun);

} // namespace app
