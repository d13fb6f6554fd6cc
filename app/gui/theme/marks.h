#pragma once

#include "app/paper/marks.h"

class QString;

namespace app {

struct Palette;

/// The word that says the mark aloud: "still to find", "look", "found", "not asked here".
QString wordOf(Mark mark);
QColor toneOf(Mark mark, const Palette& palette);

} // namespace app
