#pragma once

#include "core/exchange/club_sheet/club_sheet.h"
#include "core/exchange/sheet_file.h"

#include <set>
#include <string>
#include <unordered_set>
#include <vector>

namespace core {

/// The folded names of all rows of a sheet that is known by one.
std::unordered_set<std::string> foldedNames(const RegisterRows& current, SheetId id);

/// By what the meaning of a column is guessed.
struct KnownNames {
    const Sheet& sheet;
    const RegisterRows& current;
};

/// Gives columns without a meaning one that is still free, when at least four of five of their filled cells
/// say so: tag codes, kit types, boats and places, people of the register, GTINs, words of a choice. From row
/// `first` of the table on; columns in `chosen` stay.
void guessByContents(std::vector<TableColumn>& columns, const SheetTable& table, std::size_t first,
                     const std::set<int>& chosen, const KnownNames& known);

} // namespace core
