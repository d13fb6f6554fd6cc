#pragma once

#include "tests/scanner/reader/scenes/scene.h"

#include <functional>
#include <vector>

namespace scenes {

/// What is asked of a scene's light.
enum class Lighting { Day, Dark };

/// Makes the next label of a scene.
using LabelMaker = std::function<Label(std::mt19937&)>;

/// A scene with up to `most` labels where they have room, tilted, some bent, some soiled.
Scene makeScene(Lighting lighting, int width, int height, int most, const LabelMaker& next,
                std::mt19937& random);

/// How a hand holds a camera over the frames: it trembles by some pixels and drifts slowly.
std::vector<Pose> heldByHand(int frames, std::mt19937& random);

/// Tags of all kinds as a club has them, most of them QR, a third of them soiled. Each call of the maker
/// takes the next number.
LabelMaker clubLabels(unsigned firstNumber);
/// Joined labels of two tags, most of them QR.
LabelMaker joinedLabels(unsigned firstNumber);
LabelMaker destroyedLabels(unsigned firstNumber);

} // namespace scenes
