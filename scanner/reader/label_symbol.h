#pragma once

#include "scanner/reader/image/picture_levels.h"
#include "scanner/seen_code.h"

#include <optional>

namespace scanner::reader {

/// Where the matrix symbol lies on a label whose outline is seen as lighter than what is around it (darker, if
/// `negative`): the largest field of print that a light gap parts from the rest, such as a line of text.
/// Nothing when the label bears no such field. Clockwise like the label, in pixels of the full picture.
std::optional<Quad> symbolOnLabel(const PictureLevels& picture, const Quad& label);

} // namespace scanner::reader
