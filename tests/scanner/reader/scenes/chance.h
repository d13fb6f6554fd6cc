#pragma once

#include <random>

namespace scenes {

inline double between(double low, double high, std::mt19937& random) {
    return std::uniform_real_distribution<double>(low, high)(random);
}

inline unsigned below(unsigned n, std::mt19937& random) {
    return static_cast<unsigned>(random() % n);
}

} // namespace scenes
