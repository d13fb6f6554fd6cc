#include "scanner/reader/qr/tag_word.h"

#include <string_view>

namespace scanner::reader {
namespace {

constexpr std::string_view alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
constexpr int pairs = 5, firstTextBit = 13, bitsOfPair = 11, firstEndBit = firstTextBit + pairs * bitsOfPair;
constexpr std::array<std::uint8_t, 2> head{0x20, 0x50}; // mode and length

} // namespace

std::optional<TagWord> TagWord::of(const std::string& text) {
    if (text.size() != 2 * pairs) return std::nullopt;
    TagWord word{{head[0], head[1]}};
    for (int pair = 0; pair < pairs; ++pair) {
        const std::size_t first = alphabet.find(text[2 * pair]), second = alphabet.find(text[2 * pair + 1]);
        if (first == std::string_view::npos || second == std::string_view::npos) return std::nullopt;
        const std::size_t value = first * alphabet.size() + second;
        for (int bit = 0; bit < bitsOfPair; ++bit)
            if (value >> (bitsOfPair - 1 - bit) & 1)
                setBit(word.values, firstTextBit + pair * bitsOfPair + bit);
    }
    ReedSolomon::forQr().complete(word.values, checks);
    return word;
}

std::optional<std::string> textOf(std::span<const std::uint8_t> word) {
    if (word[0] != head[0] || (word[1] & 0xF8) != head[1] || (word[8] & 0x0F) != 0) return std::nullopt;
    std::string text;
    for (int pair = 0; pair < pairs; ++pair) {
        int value = 0;
        for (int bit = firstTextBit + pair * bitsOfPair, end = bit + bitsOfPair; bit < end; ++bit)
            value = value << 1 | (isBitSet(word, bit) ? 1 : 0);
        if (value >= static_cast<int>(alphabet.size() * alphabet.size())) return std::nullopt;
        text += alphabet[value / alphabet.size()];
        text += alphabet[value % alphabet.size()];
    }
    return text;
}

const OrderedDecoder& tagWordDecoder() {
    static const OrderedDecoder decoder = orderedDecoderOf(
        ReedSolomon::forQr(), TagWord{{head[0], head[1]}}.values, TagWord::checks, firstTextBit, firstEndBit);
    return decoder;
}

TagWord tagWordOf(const OrderedDecoder::Bits& bits) {
    TagWord word;
    writeBits(bits, word.values);
    return word;
}

} // namespace scanner::reader
