#pragma once

#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"
#include "core/register/sheets.h"

#include <string_view>

namespace core {

// Rows of the register as values. The cells are canonical and aligned with their sheet, as they are stored;
// anything else is a bug (assert). An empty cell reads as the contract's default.

KitType kitTypeFrom(const Cells& cells); ///< without its sizes and rules
Size sizeFrom(const Cells& cells);
LifeRule lifeRuleFrom(const Cells& cells);
Boat boatFrom(const Cells& cells);
ManifestLine manifestLineFrom(const Cells& cells);
BoatPoint pointFrom(const Cells& cells);
Person personFrom(const Cells& cells);
/// An empty state reads as serviceable; what the service records say about it is the caller's to add.
Item itemFrom(const Cells& cells); ///< with its first tag
Part partFrom(const Cells& cells);
/// Days given as a month or year are its first day (design: rules 1); the same for happenings and use.
ServiceRecord serviceFrom(const Cells& cells);
Happening happeningFrom(const Cells& cells);
Use useFrom(const Cells& cells);
LogEntry logEntryFrom(const Cells& cells); ///< without its id, its item with the first tag

/// The cell of that column, or the column's default when it is empty.
std::string_view cellOf(const Sheet& sheet, const Cells& cells, std::string_view column);

// Cells that hold more than one value; empty when the text is not in the contract's form.
std::optional<double> numberFrom(std::string_view text); ///< `-2.5`: digits, one full stop, no exponent
std::optional<std::vector<RuleStep>>
stepsFrom(std::string_view text);                              ///< `108:12;120:6`, by rising age, n above 0
std::optional<Tolerance> toleranceFrom(std::string_view text); ///< `none`, `end_of_month`, `14d`
std::vector<std::string> namesFrom(std::string_view text);     ///< `a;b`: outer blanks and empty parts off

/// As the register writes it, `from_made`.
std::string_view nameOf(RuleKind kind);
std::string_view nameOf(PointKind kind); ///< `measure`

} // namespace core
