#pragma once

#include "scanner/reader/reed_solomon_bits.h"

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string>

namespace scanner::reader {

/// The 26 codewords of a version 1-H symbol (ISO/IEC 18004) that holds ten alphanumeric characters: nine of
/// data, 17 of checks. Mode 0010, the length 10 in nine bits and the terminator are the same on every tag.
struct TagWord {
    static constexpr int codewords = 26, checks = 17, bits = 8 * codewords;

    std::array<std::uint8_t, codewords> values{};

    /// Most significant bit of the first codeword first; i is 0 to bits - 1.
    bool bit(int i) const { return isBitSet(values, i); }

    /// Nullopt for a text of another length or with other characters.
    static std::optional<TagWord> of(const std::string& text);
};

/// The ten characters of the data codewords, of which there are nine at least; nullopt when these hold
/// anything else.
std::optional<std::string> textOf(std::span<const std::uint8_t> word);

/// All words of ten alphanumeric characters as a code of 208 bits, of which 55 are free.
const OrderedDecoder& tagWordDecoder();
TagWord tagWordOf(const OrderedDecoder::Bits& bits);

} // namespace scanner::reader
