#include "scanner/reader/dissent.h"

#include <algorithm>
#include <numbers>
#include <utility>

namespace scanner::reader {

bool Dissent::isAnotherSymbol() const {
    return 3 * (m_dark.certainty + m_light.certainty) > 2 * m_agreeing.certainty;
}

/// Of the other label about half the modules stand against the text, of this one's own hardly any: the line
/// is sought beyond which most stand against it, a module that agrees counting a third.
Dissent::Beyond Dissent::beyondTheLine() const {
    constexpr int directions = 16;
    Beyond best;
    std::vector<std::pair<float, int>> sorted;
    float all = 0;
    for (const Module& module : m_modules)
        all += module.certainty;
    for (int i = 0; i < directions && all > 0; ++i) {
        const double angle = 2 * std::numbers::pi * i / directions;
        const auto x = static_cast<float>(std::cos(angle)), y = static_cast<float>(std::sin(angle));
        sorted.clear();
        for (const Module& module : m_modules)
            sorted.emplace_back(x * module.column + y * module.row, static_cast<int>(sorted.size()));
        std::sort(sorted.begin(), sorted.end());
        Beyond so;
        for (const auto& [off, which] : sorted) {
            const Module& module = m_modules[which];
            const float part = module.certainty / all;
            so.gain += module.isAgainst ? part : -part / 3;
            if (module.isAgainst) (module.isDark ? so.dark : so.light) += part;
            if (so.gain > best.gain) best = so;
        }
    }
    return best;
}

/// How sure the modules against the text are, in parts of how sure the others are.
float Dissent::sureness() const {
    const int against = m_dark.count + m_light.count;
    if (against == 0 || m_agreeing.count == 0) return 0;
    return (m_dark.certainty + m_light.certainty) / static_cast<float>(against) /
           (m_agreeing.certainty / static_cast<float>(m_agreeing.count));
}

// Measured on joined labels that decode, and on sound ones that were mended as much: what speaks against
// these is mostly less sure, or goes one way, or lies scattered. Of ten sound ones about one is refused.
bool Dissent::refuses() const {
    constexpr float share = 0.025f; // of all certainty
    if (m_agreeing.count == 0) return true;
    const float sure = sureness();
    if (sure <= 0.54f) return false;
    const int clearEachWay = std::min(m_dark.clear, m_light.clear);
    if (clearEachWay >= 5) return true;
    if (sure <= 0.6f) return false;
    const float all = m_dark.certainty + m_light.certainty + m_agreeing.certainty;
    const bool bothWays = clearEachWay >= 4 || std::min(m_dark.certainty, m_light.certainty) >= share * all;
    if ((bothWays && sure > 0.7f) || (clearEachWay >= 3 && sure > 0.8f)) return true;
    const Beyond beyond = beyondTheLine();
    const float eachWay = std::min(beyond.dark, beyond.light);
    if (beyond.gain > 0.03f && eachWay > 0.012f) return true;
    const float least = sure > 0.95f ? 0.003f : 0.008f; // one module where nothing is blurred
    return sure > 0.76f && beyond.gain > 0.018f && eachWay > least;
}

} // namespace scanner::reader
