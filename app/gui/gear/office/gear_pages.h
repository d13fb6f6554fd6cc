#pragma once

#include "app/gui/choosers.h"
#include "app/gui/club/club_thread.h"

#include <functional>

namespace app {

class ClubThread;
class GearOffice;
class Sounds;

/// What a page of the gear officer's works with.
struct GearTools {
    ClubThread& club;
    TimeSource time;
    Sounds& sounds;
    Choosers choosers;
    std::function<bool()> isCameraWanted;           ///< whether a page may start the camera by itself
    std::function<QString()> officer{};             ///< who is at work; empty: nobody was chosen yet
    std::function<void(const QString&)> showItem{}; ///< goes to that item's page
    std::function<void(const QString&)> showPage{}; ///< goes to the page of that id
};

/// Adds all pages, in the order of the list. Each is made when it is first shown. `officer`, `showItem` and
/// `showPage` of the pages' tools are the office's own.
void addGearPages(GearOffice& office, const GearTools& tools);

} // namespace app
