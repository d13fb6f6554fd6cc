#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QTimer>

namespace app {

/// Shows how long a timed point's clock has run; it goes on while tags are scanned. One point at a time. What
/// is recorded is the time that CheckFlow takes.
class PointClock : public QObject {
    Q_OBJECT

public:
    explicit PointClock(QObject* parent = nullptr);

    bool isRunning() const { return !m_point.isEmpty(); }
    void start(const QString& point);
    void stop();

signals:
    void ticked(const QString& point, int seconds);
    void stopped(const QString& point);

private:
    int seconds() const { return static_cast<int>(m_elapsed.elapsed() / 1000); }

    QString m_point;
    QElapsedTimer m_elapsed;
    QTimer m_tick;
};

} // namespace app
