#include "scanner/reader/data_matrix/matrix_agreement.h"

#include "scanner/reader/ordered_decoder.h"
#include "scanner/reader/reed_solomon_bits.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <vector>

namespace scanner::reader {
namespace {

/// Smaller symbols hold no ten characters but digits; of larger ones more than two of the most certain
/// modules may be wrong.
bool mayHoldTag(const MatrixSize& size) {
    return size.data == 8 || size.data == 12;
}

const OrderedDecoder& decoderFor(const MatrixSize& size) {
    static const auto decoders = [] {
        std::map<int, OrderedDecoder> all;
        for (const MatrixSize& each : matrixSizes()) {
            if (!mayHoldTag(each)) continue;
            const std::vector<std::uint8_t> noughts(static_cast<std::size_t>(each.data + each.checks));
            all.emplace(each.modules, orderedDecoderOf(ReedSolomon::forDataMatrix(), noughts, each.checks, 0,
                                                       8 * each.data));
        }
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
    std::vector<std::uint8_t> word(static_cast<std::size_t>(size.data + size.checks));
    writeBits(best.word, word);
    MatrixReading reading{drawnMatrix(word, size)};
    reading.checks = size.checks;
    reading.byAgreement = true;
    return reading;
}

} // namespace scanner::reader
