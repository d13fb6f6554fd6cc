#include "scanner/reader/image/bit_mask.h"

#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <bit>
#include <cstring>

namespace scanner::reader {
namespace {

/// Of each pixel of a row 1 where it lies below a level, else 0.
SCANNER_VECTORISED void markBelow(const std::int8_t* row, int n, std::int8_t level, std::uint8_t* marks) {
    for (int x = 0; x < n; ++x)
        marks[x] = row[x] < level ? 1 : 0;
}

SCANNER_VECTORISED void markAbove(const std::int8_t* row, int n, std::int8_t level, std::uint8_t* marks) {
    for (int x = 0; x < n; ++x)
        marks[x] = row[x] > level ? 1 : 0;
}

/// 64 marks as the bits of a word, eight at a time: the factor moves each to its place in the top byte.
std::uint64_t packed(const std::uint8_t* marks) {
    std::uint64_t word = 0;
    for (int i = 0; i < 64; i += 8) {
        std::uint64_t eight = 0;
        std::memcpy(&eight, marks + i, 8);
        if constexpr (std::endian::native == std::endian::big) eight = __builtin_bswap64(eight);
        word |= (eight * 0x0102040810204080U >> 56) << i;
    }
    return word;
}

/// Marks the pixels of each row by their level and packs the marks.
BitMask marked(const ContrastMap& map, decltype(&markBelow) mark, std::int8_t level) {
    BitMask mask(map.width, map.height);
    std::vector<std::uint8_t> marks(static_cast<std::size_t>(64) * mask.words());
    for (int y = 0; y < map.height; ++y) {
        mark(map.row(y), map.width, level, marks.data());
        for (int i = 0; i < mask.words(); ++i)
            mask.row(y)[i] = packed(marks.data() + static_cast<std::ptrdiff_t>(64) * i);
    }
    return mask;
}

SCANNER_VECTORISED void orInto(std::uint64_t* to, const std::uint64_t* from, int words) {
    for (int i = 0; i < words; ++i)
        to[i] |= from[i];
}

/// The neighbours `by` (1 to 63) pixels to both sides.
SCANNER_VECTORISED void orNeighbours(std::uint64_t* to, const std::uint64_t* from, int words, int by) {
    for (int i = 0; i < words; ++i)
        to[i] |= from[i] << by | from[i - 1] >> (64 - by) | from[i] >> by | from[i + 1] << (64 - by);
}

} // namespace

BitMask::BitMask(int width, int height)
    : m_width(width)
    , m_height(height)
    , m_words((width + 63) / 64)
    , m_stride(m_words + 2)
    , m_bits(static_cast<std::size_t>(m_stride) * height) {}

void BitMask::widen(int reach) {
    BitMask across = *this;
    for (int y = 0; y < m_height; ++y) {
        for (int k = 1; k <= reach; ++k)
            orNeighbours(across.row(y), row(y), m_words, k);
        across.row(y)[m_words - 1] &= pixelsOfLastWord();
    }
    *this = across;
    for (int y = 0; y < m_height; ++y)
        for (int other = std::max(0, y - reach); other <= std::min(m_height - 1, y + reach); ++other)
            if (other != y) orInto(row(y), across.row(other), m_words);
}

void BitMask::invert() {
    for (int y = 0; y < m_height; ++y) {
        std::transform(row(y), row(y) + m_words, row(y), [](std::uint64_t word) { return ~word; });
        row(y)[m_words - 1] &= pixelsOfLastWord();
    }
}

void BitMask::close(int reach) {
    if (m_width == 0) return;
    widen(reach);
    invert();
    widen(reach); // what is light: the dark is narrowed
    invert();
}

BitMask darkPixels(const ContrastMap& map, int least) {
    return marked(map, markBelow, static_cast<std::int8_t>(-least));
}

BitMask lightPixels(const ContrastMap& map, int least) {
    return marked(map, markAbove, static_cast<std::int8_t>(least));
}

} // namespace scanner::reader
