#include "app/desk/check/point_clock.h"

namespace app {

PointClock::PointClock(QObject* parent)
    : QObject(parent) {
    m_tick.setInterval(250); // so that no second is skipped on the screen
    connect(&m_tick, &QTimer::timeout, this, [this] { emit ticked(m_point, seconds()); });
}

void PointClock::start(const QString& point) {
    m_point = point;
    m_elapsed.start();
    m_tick.start();
    emit ticked(point, 0);
}

int PointClock::stop() {
    m_tick.stop();
    m_point.clear();
    return seconds();
}

} // namespace app
