#pragma once

#include "core/exchange/club_sheet/club_sheet.h"
#include "core/exchange/sheet_file.h"

#include <vector>

namespace core {

/// Rows of kit types, sizes, places and people that the rows of `file` name and nobody has yet, for those
/// sheets in `make`; each once, by the number of the first row that names it. In the contract's order.
std::vector<SheetFile> missingNames(const SheetFile& file, const std::set<SheetId>& make,
                                    const RegisterRows& current);

} // namespace core
