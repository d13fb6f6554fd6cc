#pragma once

#include <array>
#include <sodium.h>
#include <string>

namespace core {

/// Lower-case hex digits of the bytes, within core/record.
template <std::size_t Size>
std::string hexOf(const std::array<unsigned char, Size>& bytes) {
    std::array<char, Size * 2 + 1> hex{};
    sodium_bin2hex(hex.data(), hex.size(), bytes.data(), bytes.size());
    return hex.data();
}

} // namespace core
