#pragma once

#include <array>
#include <cstdint>
#include <span>
#include <vector>

namespace scanner::reader {

/// Finds the words of a binary block code that agree best with what was seen, also where more is wrong than
/// the code's distance mends: the most certain bits that determine a word are taken as seen, then with each
/// one and each two of them turned. Source: Fossorier and Lin, "Soft-decision decoding of linear block codes
/// based on ordered statistics", IEEE Transactions on Information Theory 41 (1995), order 2.
class OrderedDecoder { // not changed by use: any thread
public:
    static constexpr int mostBits = 256;

    /// Bit i of a word is bit i % 64 of number i / 64.
    using Bits = std::array<std::uint64_t, mostBits / 64>;

    /// The word that agrees best; what speaks against it and against the next best is the certainty of the
    /// bits that were seen otherwise, in parts of all certainty, 0 to 1.
    struct Best {
        Bits word{};
        float against = 1, nextAgainst = 1;
    };

    /// The words of the code are `fixed` with any of `generators` added (exclusive or). `length` is 1 to
    /// mostBits, and no bit beyond it is set.
    OrderedDecoder(int length, const Bits& fixed, std::vector<Bits> generators);

    /// `seen`: finite; above 0 for a one, below for a nought, the further from 0 the more certain; as many as
    /// the code is long. Of another number of them, or of noughts only, nothing is known: all is against
    /// every word.
    Best decode(std::span<const float> seen) const;

private:
    int m_length;
    Bits m_fixed;
    std::vector<Bits> m_generators;
};

} // namespace scanner::reader
