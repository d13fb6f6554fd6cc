#pragma once

#include <algorithm>
#include <optional>

namespace core {

/// The smallest whole number from `low` to `most` that is enough; empty when `most` is not. `isEnough` must
/// stay true once it is. It is asked about twice the logarithm of the answer, never far beyond it.
template <class IsEnough>
std::optional<int> smallestNumber(int low, int most, IsEnough isEnough) {
    int below = low - 1, width = 1;
    while (below < most && !isEnough(std::min(below + width, most))) {
        below = std::min(below + width, most);
        width = std::min(2 * width, most - below);
    }
    if (below >= most) return std::nullopt;
    int enough = std::min(below + width, most);
    while (enough - below > 1) {
        const int middle = below + (enough - below) / 2;
        (isEnough(middle) ? enough : below) = middle;
    }
    return enough;
}

} // namespace core
