#pragma once

#include "scanner/reader/ordered_decoder.h"
#include "scanner/reader/reed_solomon.h"

#include <cstdint>
#include <span>

namespace scanner::reader {

// The words of a Reed–Solomon code as rows of bits, for the ordered decoder: the codewords one after the
// other, each with its most significant bit first. At most OrderedDecoder::mostBits bits.

/// Whether bit `i` of all is set, and sets it; `i` is from 0 to 8 times the codewords less 1.
inline bool isBitSet(std::span<const std::uint8_t> word, int i) {
    return (word[i / 8] >> (7 - i % 8) & 1) != 0;
}
void setBit(std::span<std::uint8_t> word, int i);

/// The first 8 · word.size() of the bits, as codewords.
void writeBits(const OrderedDecoder::Bits& bits, std::span<std::uint8_t> word);

/// All words that have the data of `fixed` (with room for its `checks` last codewords) but for the data bits
/// from `firstFree` to before `endFree`, which `fixed` has as noughts.
OrderedDecoder orderedDecoderOf(const ReedSolomon& code, std::span<const std::uint8_t> fixed, int checks,
                                int firstFree, int endFree);

} // namespace scanner::reader
