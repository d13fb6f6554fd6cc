#include "app/gui/check/point_clock.h"

#include <utility>

namespace app {

PointClock::PointClock(QObject* parent)
    : QObject(parent) {
    m_tick.setInterval(250); // so that no second is skipped on the screen
    connect(&m_tick, &QTimer::timeout, this, [this] { emit ticked(m_point, seconds()); });
}

void PointClock::start(const QString& point) {
    stop();
    m_point = point;
    m_elapsed.start();
    m_tick.start();
    emit ticked(m_point, 0);
}

void PointClock::stop() {
    if (!isRunning()) return;
    m_tick.stop();
    emit stopped(std::exchange(m_point, QString()));
}

} // namespace app
