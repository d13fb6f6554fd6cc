#pragma once

#include "app/paper/check_list/check_list.h"

namespace app {

// What a check list asks, in a person's words.

/// "bow chamber, 17 to 21 kPa"; "horn, not required".
QString pointInWords(const core::BoatPoint& point);
/// "2 × paddle, or oar"; "life jacket, one for each on board".
QString lineInWords(const CheckList::Line& line);

} // namespace app
