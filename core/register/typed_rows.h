#pragma once

#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"
#include "core/register/sheets.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core {

// Rows of the register as values. The cells are aligned with their sheet, as they are stored. An empty cell
// reads as the contract's default. All of these throw StoreFailure (FileDamaged, naming file, row and column)
// for a row with a cell that is not as its column's type wants it: an import refuses such a cell, so
// something else wrote it.

KitType kitTypeFrom(const Cells& cells); ///< without its sizes and rules
Size sizeFrom(const Cells& cells);
LifeRule lifeRuleFrom(const Cells& cells);
ClubPlace placeFrom(const Cells& cells);
Boat boatFrom(const Cells& cells);
ManifestLine manifestLineFrom(const Cells& cells);
PhasePoint pointFrom(const Cells& cells);
Person personFrom(const Cells& cells);
/// An empty state reads as serviceable; what the service records say about it is the caller's to add.
Item itemFrom(const Cells& cells); ///< with its first tag
Part partFrom(const Cells& cells);
/// Days given as a month or year are its first day (design: rules 1); the same for happenings and use.
ServiceRecord serviceFrom(const Cells& cells);
Happening happeningFrom(const Cells& cells);
Use useFrom(const Cells& cells);
LogEntry logEntryFrom(const Cells& cells); ///< without its id, its item with the first tag

/// A cell that is not as its column's type wants it, or an empty one without which the row says nothing.
struct CellFault {
    std::string_view column;
    std::string text;
};

/// Whether a cell is empty without which the row says nothing, like a life rule's kind.
bool lacksNeededCell(const Sheet& sheet, const Cells& cells);

/// The first of a row; empty: the row can be read.
std::optional<CellFault> faultOf(const Sheet& sheet, const Cells& cells);
void requireReadable(const Sheet& sheet, const Cells& cells); ///< throws like the readers

/// The cell of that column, or the column's default when it is empty.
std::string_view cellOf(const Sheet& sheet, const Cells& cells, std::string_view column);

/// Empty: no state of an item.
std::optional<ItemState> itemStateFrom(std::string_view text);

/// As the register writes it, `from_made`.
std::string_view nameOf(RuleKind kind);
std::string_view nameOf(PointKind kind); ///< `measure`

} // namespace core
