#pragma once

class QApplication;
class QString;

namespace app {

struct Palette;

/// Gives every widget of the program the tones, type and 3-pixel focus ring of that palette. May be called
/// again at any time to change the theme.
void dress(QApplication& application, const Palette& palette);

/// The palette that the program wears now.
const Palette& currentPalette();

/// The style sheet that `dress` sets. Widgets are marked for it by the property `role`: "usual" for the
/// button of the usual way, "panel" and "foot" for grounds, "quiet", "heading", "boatName", "outcome",
/// "remark" for labels.
QString styleSheetOf(const Palette& palette);

/// Whether a person has asked that nothing comes and goes by itself: what has just changed then stays
/// underlined until the next change, and menus open at once. Kept in the settings. GUI thread.
bool isMotionReduced();
void reduceMotion(bool reduced);

} // namespace app
