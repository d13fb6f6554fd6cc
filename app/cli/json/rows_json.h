#pragma once

#include "core/club/register_edit.h"

#include <string>
#include <vector>

namespace app {

/// Rows that were written, or would be.
struct RowReport {
    std::vector<std::string> rows; ///< their names, as the command line takes them
    core::OutlookChange effects;
    bool isDryRun = false;
};

/// Which of them a warning is about.
const std::string& rowWarned(const core::RejectedRow& warning, const std::vector<std::string>& rows);

std::string rowsJson(core::SheetId sheet, const core::EditPlan& plan, const RowReport& report);

} // namespace app
