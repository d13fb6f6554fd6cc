#pragma once

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QTimer>

namespace app {

/// The clock of a timed point. It goes on while tags are scanned. One point at a time.
class PointClock : public QObject {
    Q_OBJECT

public:
    explicit PointClock(QObject* parent = nullptr);

    bool isRunning() const { return !m_point.isEmpty(); }
    const QString& point() const { return m_point; }
    void start(const QString& point); ///< stops the other point's first, without a record
    int stop();                       ///< whole seconds that it ran

signals:
    void ticked(const QString& point, int seconds);

private:
    int seconds() const { return static_cast<int>(m_elapsed.elapsed() / 1000); }

    QString m_point;
    QElapsedTimer m_elapsed;
    QTimer m_tick;
};

} // namespace app
