#pragma once

#include "scanner/reader/image/picture_levels.h"
#include "scanner/seen_code.h"

#include <optional>

namespace scanner::reader {

/// Where the matrix symbol lies on a label of this outline (pixels of the full picture): the largest field of
/// print that a gap parts from the rest, such as a line of text; right to about a module. Nothing when the
/// label bears no such field. Light or dark labels; corners in the label's order. Pure; any thread.
std::optional<Quad> symbolOnLabel(const PictureLevels& picture, const Quad& label);

} // namespace scanner::reader
