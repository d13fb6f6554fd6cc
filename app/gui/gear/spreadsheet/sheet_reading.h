#pragma once

#include "core/base/calendar_day.h"
#include "core/exchange/club_sheet/club_sheet.h"

#include <optional>
#include <vector>

namespace core {
class Club;
}

namespace app {

// What is asked of the club's thread about a spreadsheet, before anything is imported.

const std::vector<core::SheetId>& kindsOfRows(); ///< what a row may be, the usual first
const std::vector<core::SheetId>& madeOnTheWay();
/// Whether rows of that kind name such things, so that those may be missing.
bool mayLack(core::SheetId kind, core::SheetId other);

/// The kind of rows of which the most columns are known, and that says what each row is about.
core::SheetId likelyKind(const core::Club& club, const core::Workbook& book);

/// What the rows would become, as far as that can be said.
struct PlannedSheet {
    std::optional<core::TableLayout> layout;
    std::optional<core::ClubSheetPlan> plan;
    std::optional<core::Error> error; ///< why there is no plan
    core::WordMeanings told;          ///< what the club was told before
};
PlannedSheet plannedSheet(core::Club& club, const core::Workbook& book, const core::ClubSheetChoices& choices,
                          core::CalendarDay today);

/// Words of cells that were refused because nobody knows what they mean, with their column; each once.
std::vector<std::pair<std::string, std::string>> unknownWords(const core::ClubSheetPlan& plan,
                                                              const core::Workbook& book);

} // namespace app
