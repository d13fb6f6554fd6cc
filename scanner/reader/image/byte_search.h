#pragma once

#include <bit>
#include <cstdint>
#include <cstring>

namespace scanner::reader {

/// The first place from `x` on whose byte differs from `value` in one of `bits`, or `n`; eight at a time.
inline int firstUnlike(const std::uint8_t* row, int x, int n, std::uint8_t value, std::uint8_t bits) {
    constexpr std::uint64_t each = 0x0101010101010101U;
    for (std::uint64_t eight = 0; x + 8 <= n; x += 8) {
        std::memcpy(&eight, row + x, 8);
        const std::uint64_t unlike = (eight ^ each * value) & each * bits;
        if (unlike == 0) continue;
        if constexpr (std::endian::native == std::endian::little) return x + std::countr_zero(unlike) / 8;
        break;
    }
    while (x < n && ((row[x] ^ value) & bits) == 0)
        ++x;
    return x;
}

} // namespace scanner::reader
