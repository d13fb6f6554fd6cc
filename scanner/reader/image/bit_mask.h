#pragma once

#include "scanner/reader/image/local_contrast.h"

#include <bit>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace scanner::reader {

/// A picture of one bit a pixel, so that a processor's word holds 64 neighbours: pixel x of a row is bit x %
/// 64 of its word x / 64. The bits beyond the width are 0.
class BitMask {
public:
    BitMask(int width, int height);

    int width() const { return m_width; }
    int height() const { return m_height; }
    /// Words in a row.
    int words() const { return m_words; }
    std::uint64_t* row(int y) { return m_bits.data() + static_cast<std::ptrdiff_t>(y) * m_stride + 1; }
    const std::uint64_t* row(int y) const {
        return m_bits.data() + static_cast<std::ptrdiff_t>(y) * m_stride + 1;
    }

    /// Joins what gaps of up to 2·reach pixels part, and fills holes as wide. `reach`: 0 to 63.
    void close(int reach);

private:
    void widen(int reach);
    void invert();
    /// The bits of a row's last word that are pixels.
    std::uint64_t pixelsOfLastWord() const { return ~std::uint64_t{0} >> (64 * m_words - m_width); }

    int m_width, m_height, m_words;
    int m_stride; ///< words from row to row: one before and one behind each is always 0
    std::vector<std::uint64_t> m_bits;
};

/// Set where the map is below −`least`, or above it; `least` is from 0 to 127.
BitMask darkPixels(const ContrastMap& map, int least);
BitMask lightPixels(const ContrastMap& map, int least);

/// The first set bit of a row from pixel `x` on, or 64·words.
inline int firstSet(const std::uint64_t* row, int words, int x) {
    int i = x / 64;
    if (i >= words) return 64 * words;
    std::uint64_t word = row[i] & ~std::uint64_t{0} << x % 64;
    while (word == 0) {
        if (++i == words) return 64 * words;
        word = row[i];
    }
    return 64 * i + std::countr_zero(word);
}

/// Hands the stretches of set bits of a row, left to right, to `take(from, to)`.
template <class Take>
void forEachRun(const std::uint64_t* row, int words, const Take& take) {
    int from = -1;
    std::uint64_t before = 0; // the last pixel of the word before
    for (int i = 0; i < words; ++i) {
        // Each change along the row: every second one ends a stretch.
        for (std::uint64_t changes = row[i] ^ (row[i] << 1 | before); changes != 0; changes &= changes - 1) {
            const int x = 64 * i + std::countr_zero(changes);
            if (from >= 0) take(from, x);
            from = from < 0 ? x : -1;
        }
        before = row[i] >> 63;
    }
    if (from >= 0) take(from, 64 * words);
}

} // namespace scanner::reader
