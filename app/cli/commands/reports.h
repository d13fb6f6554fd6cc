#pragma once

#include "app/cli/json/json_out.h"
#include "core/base/calendar_day.h"
#include "core/base/result.h"
#include "core/club/club.h"
#include "core/exchange/club_sheet/club_sheet.h"
#include "core/exchange/csv_import.h"
#include "core/register/boat.h"

#include <string>
#include <vector>

namespace app {

// What more than one command says to a person.

/// A check for a person to read: the outcome, what is still to find, what to look at, what was found, the
/// points, the log, the cautions.
void sayCheck(const CheckReport& report, const std::vector<std::string>& people);

/// A stocktake likewise: what was not seen, what belongs elsewhere, what is there.
void sayStocktake(const CheckReport& report);

core::Result<core::ImportPlan> importWithProgress(core::Club& club, const std::string& folder,
                                                  core::CalendarDay today, bool dryRun);

/// Says what was (or would be) imported, or each rejected row; the exit code.
int reportImport(const core::ImportPlan& plan, bool json, bool dryRun);

core::Result<core::ClubSheetPlan> importSheetWithProgress(core::Club& club, const core::Workbook& workbook,
                                                          const core::ClubSheetChoices& choices,
                                                          core::CalendarDay today, bool dryRun);
/// The same of a club's own spreadsheet, and how it was read.
int reportClubSheet(const core::ClubSheetPlan& read, bool json, bool dryRun);

/// On standard error: what is taken and may not be meant so, and what it is about.
void noteWarning(const QString& about, const core::Error& what);

/// One log entry as lines of text: what, about what, by whom, and what was done about it.
void sayEntry(const core::LogEntry& entry);

} // namespace app
