#include "scanner/reader/dissent.h"

#include <algorithm>

namespace scanner::reader {

bool Dissent::isAnotherSymbol() const {
    return 3 * (m_dark.certainty + m_light.certainty) > 2 * m_agreeing.certainty;
}

bool Dissent::refuses() const {
    constexpr int many = 4;
    constexpr float share = 0.025f; // of all certainty
    constexpr float asSure = 0.82f; // of joined labels measured 0.86 and more, of sound ones nearly all less
    const float against = m_dark.certainty + m_light.certainty, all = against + m_agreeing.certainty;
    const bool bothWays = std::min(m_dark.clear, m_light.clear) >= many ||
                          std::min(m_dark.certainty, m_light.certainty) >= share * all;
    if (!bothWays || m_agreeing.count == 0) return bothWays;
    const float mean = against / static_cast<float>(m_dark.count + m_light.count);
    return mean > asSure * m_agreeing.certainty / static_cast<float>(m_agreeing.count);
}

} // namespace scanner::reader
