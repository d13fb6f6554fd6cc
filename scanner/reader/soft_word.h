#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <span>
#include <vector>

namespace scanner::reader {

/// The codewords of a matrix symbol as its modules tell them, with how certain each is.
struct SoftWord {
    std::vector<std::uint8_t> values;
    std::vector<float> certainty; ///< of the least certain bits; the unit is that of the modules

    /// How many codewords are others in the mended word.
    int changedIn(std::span<const std::uint8_t> mended) const;
    /// Indices of the codewords: those to give up first.
    std::vector<int> leastCertainFirst() const;
};

/// `evidence(codeword, bit)`, most significant bit first: above 0 for a one, below for a nought, the further
/// from 0 the more certain.
template <class Evidence>
SoftWord softWordOf(int codewords, const Evidence& evidence) {
    SoftWord word{std::vector<std::uint8_t>(static_cast<std::size_t>(codewords)),
                  std::vector<float>(static_cast<std::size_t>(codewords))};
    for (int i = 0; i < codewords; ++i) {
        float least = 9, second = 9;
        for (int bit = 0; bit < 8; ++bit) {
            const float value = evidence(i, bit), size = std::abs(value);
            word.values[i] = static_cast<std::uint8_t>(word.values[i] << 1 | (value > 0));
            second = std::min(second, std::max(least, size));
            least = std::min(least, size);
        }
        word.certainty[i] = least + 0.3f * second;
    }
    return word;
}

} // namespace scanner::reader
