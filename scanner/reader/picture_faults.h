#pragma once

#include "scanner/grey_picture.h"
#include "scanner/seen_code.h"

#include <vector>

/// Faults of a picture that keep symbols from being read, each measured on a part of its pixels. The limits
/// are where the reader begins to fail on pictures made for that
/// (tests/scanner/live/picture_advice_test.cpp); no source.
namespace scanner::reader {

/// Hardly anything is lighter than a dark grey.
bool isTooDark(GreyView picture);

/// A white patch without detail that fades into what is printed around it. White paper ends sharply instead.
/// What lies on a symbol that was read does no harm.
bool showsGlare(GreyView picture, const std::vector<SeenCode>& read);

/// There are edges, and none is steep, in rows and columns alike.
bool isOutOfFocus(GreyView picture);

/// In the middle of the picture lies a QR symbol of a tag's size, not among those read, whose modules are too
/// small to be told apart.
bool showsSmallTag(GreyView picture, const std::vector<SeenCode>& read);

} // namespace scanner::reader
