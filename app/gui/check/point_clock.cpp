#include "app/gui/check/point_clock.h"

#include <utility>

namespace app {

PointClock::PointClock(QObject* parent)
    : QObject(parent) {
    m_tick.setInterval(250); // so that no second is skipped on the screen
    connect(&m_tick, &QTimer::timeout, this, [this] { emit ticked(m_point, seconds()); });
}

void PointClock::press(const QString& point) {
    const bool isItsOwn = isRunning() && m_point == point;
    const QString next = point; // a copy: it may be the clock's own, which stopping clears
    if (isRunning()) stop();
    if (isItsOwn) return;
    m_point = next;
    m_elapsed.start();
    m_tick.start();
    emit ticked(m_point, 0);
}

void PointClock::stop() {
    const QString point = std::exchange(m_point, QString());
    m_tick.stop();
    emit stopped(point, seconds());
}

void PointClock::drop() {
    m_tick.stop();
    m_point.clear();
}

} // namespace app
