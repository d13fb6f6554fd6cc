#include "scanner/reader/ordered_decoder.h"

#include "scanner/reader/image/vectorised.h"

#include <algorithm>
#include <bit>
#include <cassert>
#include <cmath>
#include <cstring>
#include <numeric>
#include <utility>

namespace scanner::reader {
namespace {

using Bits = OrderedDecoder::Bits;
constexpr int mostBits = OrderedDecoder::mostBits;

bool bitOf(const Bits& bits, int i) {
    return bits[i / 64] >> (i % 64) & 1;
}

void addTo(Bits& bits, const Bits& other) {
    for (std::size_t i = 0; i < bits.size(); ++i)
        bits[i] ^= other[i];
}

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

template <class Each>
void eachBitOf(const Bits& bits, const Each& each) {
    for (std::size_t i = 0; i < bits.size(); ++i)
        for (std::uint64_t rest = bits[i]; rest != 0; rest &= rest - 1)
            each(i * 64 + static_cast<std::size_t>(std::countr_zero(rest)));
}

/// Which rows have a bit, for each bit: 1 or 0 a row, in whole groups of eight.
class RowsByBit {
public:
    explicit RowsByBit(const std::vector<Bits>& rows)
        : m_width((rows.size() + 7) / 8 * 8)
        , m_has(m_width * mostBits, 0.0f) {
        for (std::size_t row = 0; row < rows.size(); ++row)
            eachBitOf(rows[row], [&](std::size_t bit) { m_has[bit * m_width + row] = 1; });
    }

    std::size_t width() const { return m_width; }
    const float* at(std::size_t bit) const { return m_has.data() + bit * m_width; }

private:
    std::size_t m_width;
    std::vector<float> m_has;
};

/// A bit, and what turning it adds to what speaks against a word.
struct Turn {
    const float* rows; ///< that have this bit
    float change;
};

/// For each row from `first` on (a multiple of eight): the sum of the changes by the turns that it has a part
/// in.
SCANNER_VECTORISED void sumUp(const Turn* turns, std::size_t count, std::size_t first, std::size_t width,
                              float* sums) {
    for (std::size_t group = first; group < width; group += 8) {
        EightFloats sum{};
        for (std::size_t i = 0; i < count; ++i) {
            EightFloats has;
            std::memcpy(&has, turns[i].rows + group, sizeof has);
            sum += turns[i].change * has;
        }
        std::memcpy(sums + group, &sum, sizeof sum);
    }
}

/// The best two of a word with none, one or two rows added.
class BestOfTurned {
public:
    BestOfTurned(const Bits& start, float against, float all)
        : m_best{start, against, all} {}

    void consider(float now, const Bits* one, const Bits* two) {
        if (now >= m_best.nextAgainst) return;
        m_best.nextAgainst = std::max(now, m_best.against);
        if (now >= m_best.against) return;
        m_best.against = now;
        m_added = {one, two};
    }

    OrderedDecoder::Best inPartsOf(float all) const {
        OrderedDecoder::Best best = m_best;
        for (const Bits* row : m_added)
            if (row) addTo(best.word, *row);
        best.against /= all;
        best.nextAgainst /= all;
        return best;
    }

private:
    OrderedDecoder::Best m_best;
    std::array<const Bits*, 2> m_added{};
};

/// What a row adds to what speaks against the word is a sum over its bits; of two rows, the bits that both
/// have are turned twice, so back.
OrderedDecoder::Best bestOfTurned(const Bits& start, const std::vector<Bits>& rows,
                                  std::span<const float> seen, const Bits& hard) {
    float against = 0, all = 0;
    std::array<float, mostBits> change{}; // by turning a bit of the word
    for (std::size_t i = 0; i < seen.size(); ++i) {
        const bool agrees = bitOf(start, static_cast<int>(i)) == bitOf(hard, static_cast<int>(i));
        const float certainty = std::abs(seen[i]);
        change[i] = agrees ? certainty : -certainty;
        all += certainty;
        if (!agrees) against += certainty;
    }
    const RowsByBit byBit(rows);
    std::vector<Turn> turns;
    std::vector<float> alone(byBit.width()), both(byBit.width());
    for (std::size_t bit = 0; bit < seen.size(); ++bit)
        turns.push_back({byBit.at(bit), change[bit]});
    sumUp(turns.data(), turns.size(), 0, byBit.width(), alone.data());
    BestOfTurned best(start, against, all);
    for (std::size_t one = 0; one < rows.size(); ++one) {
        best.consider(against + alone[one], &rows[one], nullptr);
        turns.clear();
        eachBitOf(rows[one], [&](std::size_t bit) { turns.push_back({byBit.at(bit), 2 * change[bit]}); });
        sumUp(turns.data(), turns.size(), (one + 1) / 8 * 8, byBit.width(), both.data());
        for (std::size_t two = one + 1; two < rows.size(); ++two)
            best.consider(against + alone[one] + alone[two] - both[two], &rows[one], &rows[two]);
    }
    return best.inPartsOf(all);
}

} // namespace

OrderedDecoder::OrderedDecoder(int length, const Bits& fixed, std::vector<Bits> generators)
    : m_length(length)
    , m_fixed(fixed)
    , m_generators(std::move(generators)) {
    assert(length > 0 && length <= mostBits);
}

OrderedDecoder::Best OrderedDecoder::decode(std::span<const float> seen) const {
    const bool isBlank = std::all_of(seen.begin(), seen.end(), [](float value) { return value == 0; });
    if (static_cast<int>(seen.size()) != m_length || isBlank) return {};
    std::vector<Bits> rows = m_generators;
    const std::vector<int> pivots = reduce(rows, mostCertainFirst(seen));
    rows.resize(pivots.size());
    const Bits hard = hardBitsOf(seen);
    Bits start = m_fixed;
    for (std::size_t i = 0; i < pivots.size(); ++i)
        if (bitOf(start, pivots[i]) != bitOf(hard, pivots[i])) addTo(start, rows[i]);
    return bestOfTurned(start, rows, seen, hard);
}

} // namespace scanner::reader
