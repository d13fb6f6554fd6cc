#pragma once

namespace app {

class GearOffice;
struct GearTools;

/// Adds all pages, in the order of the list. Each is made when it is first shown. `officer`, `showItem`,
/// `showPage` and `showBoard` of the pages' tools are the office's own.
void addGearPages(GearOffice& office, const GearTools& tools);

} // namespace app
