#pragma once

#include "app/gui/gear/manifests/manifest_words.h"
#include "app/gui/widgets/list_row.h"

namespace app {

/// Newest first; the key of a line is its version's stamp.
std::vector<ListRow> versionLines(const ManifestAnswer& answer);
/// From when to when it held, who made it, and which checks were signed by it.
QString aboutVersion(const ManifestAnswer& answer, const core::ManifestVersion& version,
                     core::CalendarDay today);

} // namespace app
