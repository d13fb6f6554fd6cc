#pragma once

#include <QApplication>
#include <QDeadlineTimer>

namespace app {

/// What cannot be taken back lightly is asked once more, in the page: the first press asks, the second one is
/// meant. A double click is one press. A plain value.
class SecondPress {
public:
    bool isAsked() const { return m_isAsked; }
    /// A press. True: it is the second one, and meant.
    bool press() {
        if (m_isAsked) return m_notBefore.hasExpired();
        m_isAsked = true;
        m_notBefore.setRemainingTime(QApplication::doubleClickInterval());
        return false;
    }
    void clear() { m_isAsked = false; }

private:
    bool m_isAsked = false;
    QDeadlineTimer m_notBefore;
};

} // namespace app
