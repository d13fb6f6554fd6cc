#pragma once

#include "scanner/grey_picture.h"

#include <vector>

namespace scanner::reader {

/// A place of a picture, in its pixels, and the grey value that is looked for there, in any unit.
struct WantedValue {
    float x, y, value;
};

/// How far a picture is shifted, in its pixels, and how much it is like what was looked for: Pearson's
/// correlation, -1 to 1, 0 where all values are one.
struct LikelyShift {
    int x = 0, y = 0;
    float likeness = -1;
};

/// The likeliest of all shifts by whole pixels, up to `reach` (0 to 11) either way; none where no other is
/// likelier. Values lie between pixels, linear; outside the picture its nearest pixel counts. Places that are
/// no numbers or a million pixels away are left out. The picture is not empty.
LikelyShift likeliestShift(const GreyPicture& picture, const std::vector<WantedValue>& wanted, int reach);

} // namespace scanner::reader
