#include "scanner/reader/data_matrix/matrix_agreement.h"

#include "scanner/reader/ordered_decoder.h"
#include "scanner/reader/reed_solomon.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <utility>
#include <vector>

namespace scanner::reader {
namespace {

using Word = std::vector<std::uint8_t>;
/// Smaller symbols hold no ten characters but digits; of larger ones more than two of the most certain
/// modules may be wrong.
bool mayHoldTag(const MatrixSize& size) {
    return size.data == 8 || size.data == 12;
}

Word wordOf(const OrderedDecoder::Bits& bits, int codewords) {
    Word word(static_cast<std::size_t>(codewords));
    for (int i = 0; i < codewords * 8; ++i)
        if (bits[i / 64] >> (i % 64) & 1) word[i / 8] |= static_cast<std::uint8_t>(0x80 >> i % 8);
    return word;
}

OrderedDecoder makeDecoder(const MatrixSize& size) {
    std::vector<OrderedDecoder::Bits> generators;
    const int codewords = size.data + size.checks;
    for (int bit = 0; bit < size.data * 8; ++bit) {
        Word word(static_cast<std::size_t>(codewords));
        word[bit / 8] = static_cast<std::uint8_t>(0x80 >> bit % 8);
        ReedSolomon::forDataMatrix().complete(word, size.checks);
        OrderedDecoder::Bits row{};
        for (int i = 0; i < codewords * 8; ++i)
            if (word[i / 8] >> (7 - i % 8) & 1) row[i / 64] |= std::uint64_t{1} << (i % 64);
        generators.push_back(row);
    }
    return OrderedDecoder(codewords * 8, {}, std::move(generators));
}

const OrderedDecoder& decoderFor(const MatrixSize& size) {
    static const auto decoders = [] {
        std::map<int, OrderedDecoder> all;
        for (const MatrixSize& each : matrixSizes())
            if (mayHoldTag(each)) all.emplace(each.modules, makeDecoder(each));
        return all;
    }();
    return decoders.at(size.modules);
}

} // namespace

std::optional<MatrixReading> mendByAgreement(const GridSamples& soft, const MatrixSize& size) {
    constexpr float mostAgainst = 0.1f, leastAhead = 0.04f; // as of a QR tag, of a weaker code
    if (!mayHoldTag(size)) return std::nullopt;
    std::vector<float> seen = matrixEvidence(soft, size);
    for (float& value : seen)
        value = std::clamp(value, -1.0f, 1.0f);
    const auto best = decoderFor(size).decode(seen);
    if (best.against > mostAgainst || best.nextAgainst < best.against + leastAhead) return std::nullopt;
    MatrixReading reading{drawnMatrix(wordOf(best.word, size.data + size.checks), size)};
    reading.checks = size.checks;
    reading.byAgreement = true;
    return reading;
}

} // namespace scanner::reader
