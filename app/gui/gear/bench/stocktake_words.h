#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/check/boat_check.h"

#include <QString>

#include <vector>

namespace app {

/// The lists of a stocktake: still to find, to look at, found; item by item, for each has a code of its own.
std::vector<ListRow> stocktakeRowsOf(const core::CheckAnswer& answer);
/// How many are not seen yet.
int stillToFindIn(const core::CheckAnswer& answer);
/// Nothing was shown yet, and something should be there.
bool isNothingSeenIn(const core::CheckAnswer& answer);
/// "Gear store: 3 still to find, 12 found, 1 to look at."
QString stocktakeInWords(const core::CheckAnswer& answer);

} // namespace app
