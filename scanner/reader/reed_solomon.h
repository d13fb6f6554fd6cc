#pragma once

#include <array>
#include <cstdint>
#include <span>

namespace scanner::reader {

/// Reed–Solomon codes over GF(256) as matrix symbols use them: errors and erasures, any length up to 255.
/// Sources: ISO/IEC 18004 (QR: polynomial 0x11D, first root a^0), ISO/IEC 16022 (Data Matrix: 0x12D, a^1).
class ReedSolomon {
public:
    ReedSolomon(int polynomial, int firstRoot);

    static const ReedSolomon& forQr();
    static const ReedSolomon& forDataMatrix();

    /// Mends `word` (data first, then `checks` check codewords) in place. `erasures` are positions in `word`
    /// that are not to be trusted. Returns the number of codewords changed at positions not erased, or -1 and
    /// leaves `word` as it was when no word lies within 2·errors + erasures ≤ checks.
    int mend(std::span<std::uint8_t> word, int checks, std::span<const int> erasures = {}) const;

    /// Fills the last `checks` places of `word` so that it is a code word.
    void complete(std::span<std::uint8_t> word, int checks) const;

private:
    using Polynomial = std::array<std::uint8_t, 256>; // lowest power first

    std::uint8_t times(int a, int b) const { return a && b ? m_power[m_log[a] + m_log[b]] : std::uint8_t{0}; }
    std::uint8_t over(int a, int b) const { return a ? m_power[m_log[a] + 255 - m_log[b]] : std::uint8_t{0}; }
    std::uint8_t evaluate(const Polynomial& p, int degree, int logOfX) const;
    bool syndromes(std::span<const std::uint8_t> word, int checks, Polynomial& out) const;
    int locator(const Polynomial& syndromes, int checks, int erased, Polynomial& lambda) const;

    std::array<std::uint8_t, 512> m_power{};
    std::array<int, 256> m_log{};
    int m_firstRoot;
};

} // namespace scanner::reader
