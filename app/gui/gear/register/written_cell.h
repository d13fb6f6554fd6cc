#pragma once

#include "core/exchange/club_sheet/club_sheet.h"
#include "core/register/sheets.h"

#include <QString>

#include <string>
#include <string_view>

namespace app {

/// What a person typed into a cell, as the register's sheets spell it: days in any common order, numbers with
/// comma or point, tolerances in this language. What is not understood stays as it was typed, so that whoever
/// judges the row says why not.
QString asInSheet(const core::Column& column, const QString& typed);
std::string asInSheet(core::SheetId sheet, std::string_view column, const QString& typed);
/// The other way, for a field: numbers with this language's mark, tolerances in its words; all else as it is
/// stored.
QString asTyped(const core::Column& column, const std::string& stored);
/// "is 14 March 2026", "is March 2026": the day that was understood;
/// empty for what is none.
QString understoodDay(const QString& typed);
/// What comes first where day and month are numbers, by this machine's own short dates.
core::DayOrder dayOrderHere();

} // namespace app
