#pragma once

namespace app {

/// Whether a person has asked that nothing comes and goes by itself: what has just changed then stays
/// underlined until the next change, and menus open at once. Kept in the settings. GUI thread.
bool isMotionReduced();
void reduceMotion(bool reduced);

} // namespace app
