#include "scanner/reader/reed_solomon.h"

#include <algorithm>
#include <vector>

namespace scanner::reader {

ReedSolomon::ReedSolomon(int polynomial, int firstRoot)
    : m_firstRoot(firstRoot) {
    int value = 1;
    for (int i = 0; i < 255; ++i) {
        m_power[i] = m_power[i + 255] = static_cast<std::uint8_t>(value);
        m_log[value] = i;
        value <<= 1;
        if (value & 0x100) value ^= polynomial;
    }
}

const ReedSolomon& ReedSolomon::forQr() {
    static const ReedSolomon code(0x11D, 0);
    return code;
}

const ReedSolomon& ReedSolomon::forDataMatrix() {
    static const ReedSolomon code(0x12D, 1);
    return code;
}

std::uint8_t ReedSolomon::evaluate(const Polynomial& p, int degree, int logOfX) const {
    std::uint8_t sum = 0;
    for (int i = degree; i >= 0; --i)
        sum = static_cast<std::uint8_t>((sum ? m_power[m_log[sum] + logOfX] : 0) ^ p[i]);
    return sum;
}

/// False when all are zero: the word is a code word.
bool ReedSolomon::syndromes(std::span<const std::uint8_t> word, int checks, Polynomial& out) const {
    bool any = false;
    for (int i = 0; i < checks; ++i) {
        const int root = (m_firstRoot + i) % 255;
        std::uint8_t sum = 0;
        for (const std::uint8_t c : word)
            sum = static_cast<std::uint8_t>((sum ? m_power[m_log[sum] + root] : 0) ^ c);
        out[i] = sum;
        any |= sum != 0;
    }
    return any;
}

/// Berlekamp–Massey, begun with the erasure locator in `lambda` (of degree `erased`). Returns the degree of
/// the locator of all bad places.
int ReedSolomon::locator(const Polynomial& s, int checks, int erased, Polynomial& lambda) const {
    Polynomial previous = lambda;
    int length = erased;
    for (int step = erased; step < checks; ++step) {
        std::uint8_t discrepancy = 0;
        for (int i = 0; i <= step; ++i)
            discrepancy = static_cast<std::uint8_t>(discrepancy ^ times(lambda[i], s[step - i]));
        for (int i = checks; i > 0; --i) // times x
            previous[i] = previous[i - 1];
        previous[0] = 0;
        if (discrepancy == 0) continue;
        const Polynomial kept = lambda;
        for (int i = 0; i <= checks; ++i)
            lambda[i] = static_cast<std::uint8_t>(lambda[i] ^ times(discrepancy, previous[i]));
        if (2 * length <= step + erased) {
            length = step + 1 + erased - length;
            for (int i = 0; i <= checks; ++i)
                previous[i] = over(kept[i], discrepancy);
        }
    }
    return length;
}

int ReedSolomon::mend(std::span<std::uint8_t> word, int checks, std::span<const int> erasures) const {
    const int size = static_cast<int>(word.size());
    const int erased = static_cast<int>(erasures.size());
    if (size > 255 || checks <= 0 || checks >= size || erased > checks) return -1;
    Polynomial s{};
    if (!syndromes(word, checks, s)) return 0;

    Polynomial lambda{};
    lambda[0] = 1;
    for (int k = 0; k < erased; ++k) {
        const int place = m_log[m_power[size - 1 - erasures[k]]];
        for (int i = k + 1; i > 0; --i)
            lambda[i] = static_cast<std::uint8_t>(lambda[i] ^ times(lambda[i - 1], m_power[place]));
    }
    const int bad = locator(s, checks, erased, lambda);
    if (bad > checks || 2 * (bad - erased) + erased > checks) return -1;

    Polynomial omega{};
    for (int i = 0; i < checks; ++i)
        for (int j = 0; j <= std::min(i, bad); ++j)
            omega[i] = static_cast<std::uint8_t>(omega[i] ^ times(lambda[j], s[i - j]));

    // Forney's rule gives the value at each root of the locator; fewer roots than its degree: beyond mending.
    std::array<std::uint8_t, 256> mended{};
    std::copy(word.begin(), word.end(), mended.begin());
    int roots = 0, errors = 0;
    for (int position = 0; position < size; ++position) {
        const int log = size - 1 - position;
        const int inverse = (255 - log) % 255;
        if (evaluate(lambda, bad, inverse) != 0) continue;
        ++roots;
        std::uint8_t slope = 0;
        for (int i = 1; i <= bad; i += 2)
            slope = static_cast<std::uint8_t>(slope ^ times(lambda[i], m_power[inverse * (i - 1) % 255]));
        if (slope == 0) return -1;
        const int shift = (log * (1 - m_firstRoot) % 255 + 255) % 255;
        const std::uint8_t value = times(over(evaluate(omega, checks - 1, inverse), slope), m_power[shift]);
        mended[position] = static_cast<std::uint8_t>(mended[position] ^ value);
        if (std::find(erasures.begin(), erasures.end(), position) == erasures.end()) errors += value != 0;
    }
    if (roots != bad) return -1;
    Polynomial left{};
    if (syndromes({mended.data(), word.size()}, checks, left)) return -1;
    std::copy_n(mended.begin(), size, word.begin());
    return errors;
}

void ReedSolomon::complete(std::span<std::uint8_t> word, int checks) const {
    std::vector<int> places;
    for (int i = static_cast<int>(word.size()) - checks; i < static_cast<int>(word.size()); ++i)
        places.push_back(i);
    mend(word, checks, places);
}

} // namespace scanner::reader
