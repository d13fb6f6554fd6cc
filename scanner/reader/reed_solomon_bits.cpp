#include "scanner/reader/reed_solomon_bits.h"

#include <utility>
#include <vector>

namespace scanner::reader {
namespace {

using Word = std::vector<std::uint8_t>;

OrderedDecoder::Bits bitsOf(const Word& word) {
    OrderedDecoder::Bits bits{};
    for (int i = 0; i < 8 * static_cast<int>(word.size()); ++i)
        if (isBitSet(word, i)) bits[i / 64] |= std::uint64_t{1} << (i % 64);
    return bits;
}

} // namespace

void setBit(std::span<std::uint8_t> word, int i) {
    word[i / 8] |= static_cast<std::uint8_t>(0x80 >> i % 8);
}

void writeBits(const OrderedDecoder::Bits& bits, std::span<std::uint8_t> word) {
    for (std::uint8_t& codeword : word)
        codeword = 0;
    for (int i = 0; i < 8 * static_cast<int>(word.size()); ++i)
        if (bits[i / 64] >> (i % 64) & 1) setBit(word, i);
}

OrderedDecoder orderedDecoderOf(const ReedSolomon& code, std::span<const std::uint8_t> fixed, int checks,
                                int firstFree, int endFree) {
    const auto completed = [&](Word word) {
        code.complete(word, checks);
        return bitsOf(word);
    };
    std::vector<OrderedDecoder::Bits> generators;
    for (int i = firstFree; i < endFree; ++i) {
        Word word(fixed.size());
        setBit(word, i);
        generators.push_back(completed(std::move(word)));
    }
    return OrderedDecoder(8 * static_cast<int>(fixed.size()), completed(Word(fixed.begin(), fixed.end())),
                          std::move(generators));
}

} // namespace scanner::reader
