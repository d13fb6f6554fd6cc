#pragma once

#include <cmath>

namespace scanner::reader {

/// Whether enough codewords were changed that a part of another label may be in the symbol: then what speaks
/// against the text is looked at. A sixth of the check codewords is a third of what the code can mend.
constexpr bool isMuchMended(int changed, int checks) {
    return 6 * changed > checks;
}

/// What the modules of a symbol say against a text that was mended out of them. Dirt makes modules dark,
/// glare and wear make them light, and where blur or a poor fit misleads, the modules are less sure than
/// elsewhere. Of two labels that were cut and joined dark and light modules both stand against the text, as
/// sure as those that stand for it, however often they are looked at.
class Dissent {
public:
    /// `seen`: below 0 dark, the size says how certain.
    void add(float seen, bool wantedDark) {
        const bool dark = seen < 0;
        Some& some = dark == wantedDark ? m_agreeing : dark ? m_dark : m_light;
        const float certainty = std::abs(seen);
        some.certainty += certainty;
        ++some.count;
        some.clear += certainty > clear;
    }

    /// Whether the text is not to be told.
    bool refuses() const;
    /// Two fifths of all speak against it: the modules are not of this text's symbol at all, of which half
    /// would agree by chance.
    bool isAnotherSymbol() const;

private:
    static constexpr float clear = 0.5f;
    struct Some {
        int count = 0, clear = 0;
        float certainty = 0;
    };

    Some m_agreeing, m_dark, m_light; ///< the last two against the text
};

} // namespace scanner::reader
