#include "scanner/live/steady_advice.h"

namespace scanner {

bool SteadyAdvice::update(PictureAdvice advice, std::chrono::milliseconds at) {
    if (advice != m_last) {
        m_last = advice;
        m_since = at;
    }
    if (m_last == m_told || at - m_since < m_hold) return false;
    m_told = m_last;
    return true;
}

} // namespace scanner
