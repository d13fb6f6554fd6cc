#pragma once

#include "tests/scanner/reader/scenes/scene_label.h"

namespace scenes {

/// Two labels of a kind cut along a line and joined: clean to look at, and further from both texts than the
/// error correction reaches, as the general decoder shows on a clean drawing. No text may be told of it. The
/// label has another number where none is as wide as that number's.
Label makeJoined(Kind kind, unsigned number, std::mt19937& random);

/// A label of which too much is gone to be read by what is left: modules exchanged by chance, mud, or a part
/// torn off. No text may be told of it but the one that was printed.
Label makeDestroyed(Kind kind, unsigned number, std::mt19937& random);

} // namespace scenes
