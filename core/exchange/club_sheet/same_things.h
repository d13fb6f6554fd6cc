#pragma once

#include "core/exchange/club_sheet/club_sheet.h"
#include "core/exchange/sheet_file.h"

namespace core {

/// Gives rows of items without a tag the tag of the item that they are about, so that a second import makes
/// nothing twice. A row with a serial is the item of that kit type and serial. A row without one is an item
/// without a serial that agrees in kit type, size, home, days, maker, batch and note, as far as the table has
/// such columns: of equal ones the first row is the first item, those that agree in everything else before
/// others, written-off ones last. Rows that are left are new. The same kit type and serial twice in the table
/// is refused.
void findSameThings(SheetFile& items, const TableLayout& layout, const RegisterRows& current,
                    Rejections& rejections);

} // namespace core
