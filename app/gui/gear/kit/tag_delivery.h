#pragma once

#include "app/gui/gear/office/gear_pages.h"

#include <string>
#include <vector>

class QWidget;

namespace app {

class SaidLabel;

/// Asks where to, writes the tags of those items there as PDF and says what became of it. `page` and `said`
/// must belong together: nothing is said when the page is gone by then.
void saveTags(const GearTools& tools, QWidget& page, const std::vector<std::string>& codes, SaidLabel& said);

} // namespace app
