#pragma once

#include "tests/scanner/reader/reading_score.h"

namespace scanner {
struct GreyView;
}

/// General-purpose decoders as a program would use them that takes them as they come. QR, Data Matrix and
/// Code 128 are asked for, as far as the library knows them.
namespace bench {

/// ZXing-cpp with its default options. It ends the process on some pictures.
scored::Texts readByZxing(scanner::GreyView picture);

/// ZBar with its default options; it knows no Data Matrix.
scored::Texts readByZbar(scanner::GreyView picture);

} // namespace bench
