#pragma once

#include "scanner/grey_picture.h"
#include "scanner/seen_code.h"

#include <functional>
#include <vector>

namespace scanner {

/// Reads the symbols of one frame: readSymbols with its options bound, or a reader that remembers the frame
/// before. Called by one thread at a time. A video's and a camera's frames come in their order.
using CodeReader = std::function<std::vector<SeenCode>(GreyView)>;

} // namespace scanner
