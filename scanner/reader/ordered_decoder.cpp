#include "scanner/reader/ordered_decoder.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <numeric>
#include <utility>

namespace scanner::reader {
namespace {

using Bits = OrderedDecoder::Bits;
constexpr int mostBytes = OrderedDecoder::mostBits / 8;

bool bitOf(const Bits& bits, int i) {
    return bits[i / 64] >> (i % 64) & 1;
}

void addTo(Bits& bits, const Bits& other) {
    for (std::size_t i = 0; i < bits.size(); ++i)
        bits[i] ^= other[i];
}

/// The certainty of each byte's bits that differ, by the byte.
class Against {
public:
    Against(std::span<const float> seen, const Bits& hard)
        : m_hard(hard)
        , m_bytes((seen.size() + 7) / 8) {
        for (std::size_t byte = 0; byte < m_bytes; ++byte) {
            m_sums[byte][0] = 0;
            for (int value = 1; value < 256; ++value) {
                const int lowest = std::countr_zero(static_cast<unsigned>(value));
                const std::size_t i = byte * 8 + lowest;
                m_sums[byte][value] =
                    m_sums[byte][value & (value - 1)] + (i < seen.size() ? std::abs(seen[i]) : 0);
            }
        }
    }

    float of(const Bits& word) const {
        float sum = 0;
        for (std::size_t byte = 0; byte < m_bytes; ++byte)
            sum += m_sums[byte][(word[byte / 8] ^ m_hard[byte / 8]) >> (byte % 8 * 8) & 0xFF];
        return sum;
    }

private:
    Bits m_hard;
    std::size_t m_bytes;
    std::array<std::array<float, 256>, mostBytes> m_sums;
};

Bits hardBitsOf(std::span<const float> seen) {
    Bits hard{};
    for (std::size_t i = 0; i < seen.size(); ++i)
        if (seen[i] > 0) hard[i / 64] |= std::uint64_t{1} << (i % 64);
    return hard;
}

std::vector<int> mostCertainFirst(std::span<const float> seen) {
    std::vector<int> order(seen.size());
    std::iota(order.begin(), order.end(), 0);
    std::stable_sort(order.begin(), order.end(),
                     [&](int a, int b) { return std::abs(seen[a]) > std::abs(seen[b]); });
    return order;
}

/// Brings the rows to a form in which each alone has one of the most certain bits; returns these bits.
std::vector<int> reduce(std::vector<Bits>& rows, std::span<const int> order) {
    std::vector<int> pivots;
    for (const int bit : order) {
        const std::size_t rank = pivots.size();
        if (rank == rows.size()) break;
        const auto row = std::find_if(rows.begin() + static_cast<std::ptrdiff_t>(rank), rows.end(),
                                      [&](const Bits& each) { return bitOf(each, bit); });
        if (row == rows.end()) continue;
        std::iter_swap(rows.begin() + static_cast<std::ptrdiff_t>(rank), row);
        for (std::size_t i = 0; i < rows.size(); ++i)
            if (i != rank && bitOf(rows[i], bit)) addTo(rows[i], rows[rank]);
        pivots.push_back(bit);
    }
    return pivots;
}

} // namespace

OrderedDecoder::OrderedDecoder(int length, const Bits& fixed, std::vector<Bits> generators)
    : m_length(length)
    , m_fixed(fixed)
    , m_generators(std::move(generators)) {}

std::vector<OrderedDecoder::Candidate> OrderedDecoder::decode(std::span<const float> seen, float mostAgainst,
                                                              std::size_t most) const {
    std::vector<Candidate> found;
    if (static_cast<int>(seen.size()) != m_length) return found;
    float all = 0;
    for (const float value : seen)
        all += std::abs(value);
    if (!(all > 0)) return found;

    const Bits hard = hardBitsOf(seen);
    const Against against(seen, hard);
    std::vector<Bits> rows = m_generators;
    const std::vector<int> pivots = reduce(rows, mostCertainFirst(seen));
    Bits start = m_fixed;
    for (std::size_t i = 0; i < pivots.size(); ++i)
        if (bitOf(start, pivots[i]) != bitOf(hard, pivots[i])) addTo(start, rows[i]);

    const auto consider = [&](const Bits& word) {
        const float part = against.of(word) / all;
        if (part <= mostAgainst) found.push_back({word, part});
    };
    consider(start);
    for (std::size_t i = 0; i < pivots.size(); ++i) {
        Bits one = start;
        addTo(one, rows[i]);
        consider(one);
        for (std::size_t k = i + 1; k < pivots.size(); ++k) {
            Bits two = one;
            addTo(two, rows[k]);
            consider(two);
        }
    }
    std::stable_sort(found.begin(), found.end(),
                     [](const Candidate& a, const Candidate& b) { return a.against < b.against; });
    if (found.size() > most) found.resize(most);
    return found;
}

} // namespace scanner::reader
