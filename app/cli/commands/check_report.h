#pragma once

#include "app/cli/json/json_out.h"

namespace app {

/// A check for a person to read: the outcome, what is still to find, what to look at, what was found, the
/// points, the log, the cautions.
void sayCheck(const CheckReport& report, const std::vector<std::string>& people);

/// A stocktake likewise: what was not seen, what belongs elsewhere, what is there.
void sayStocktake(const CheckReport& report);

} // namespace app
