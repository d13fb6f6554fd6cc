#pragma once

#include "app/gui/widgets/gear_page.h"

#include <string>
#include <vector>

namespace app {

/// Asks where to, writes the tags of those items there as PDF on the club's thread, and tells `then` what to
/// say of it; nothing when no file was chosen, or when `page` is gone by then.
void saveTags(const GearTools& tools, QWidget& page, const std::vector<std::string>& codes,
              const std::function<void(const core::Result<QString>&)>& then);

} // namespace app
