#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

namespace scanner::reader {

/// Whether enough codewords were changed that a part of another label may be in the symbol: then what speaks
/// against the text is looked at. A sixth of the check codewords is a third of what the code can mend.
constexpr bool isMuchMended(int changed, int checks) {
    return 6 * changed > checks;
}

/// What the modules of a symbol say against a text that was mended out of them. Dirt makes modules dark,
/// glare and wear make them light, and where blur or a poor fit misleads, the modules are less sure than
/// elsewhere. Of two labels that were cut and joined dark and light modules both stand against the text, as
/// sure as those that stand for it, however often they are looked at, and all on one side of a line.
class Dissent {
public:
    /// `seen`: below 0 dark, the size says how certain. The place is that of the module, by column and row.
    void add(float seen, bool wantedDark, int column, int row) {
        const bool dark = seen < 0;
        Some& some = dark == wantedDark ? m_agreeing : dark ? m_dark : m_light;
        const float certainty = std::abs(seen);
        some.certainty += certainty;
        ++some.count;
        some.clear += certainty > clear;
        m_modules.push_back({static_cast<float>(column), static_cast<float>(row), std::min(certainty, 1.0f),
                             dark != wantedDark, dark});
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
    struct Module {
        float column, row, certainty;
        bool isAgainst, isDark;
    };
    /// What lies beyond the line that parts for from against best, in parts of all certainty.
    struct Beyond {
        float gain = 0, dark = 0, light = 0;
    };

    Beyond beyondTheLine() const;
    float sureness() const;

    Some m_agreeing, m_dark, m_light; ///< the last two against the text
    std::vector<Module> m_modules;
};

} // namespace scanner::reader
