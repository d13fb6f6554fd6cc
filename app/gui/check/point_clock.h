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
    /// Starts that point's clock, or stops it. Another point's, which runs, is stopped first.
    void press(const QString& point);
    void drop(); ///< nothing comes of what runs

signals:
    void ticked(const QString& point, int seconds);
    void stopped(const QString& point, int seconds); ///< whole seconds that it ran

private:
    void stop();
    int seconds() const { return static_cast<int>(m_elapsed.elapsed() / 1000); }

    QString m_point;
    QElapsedTimer m_elapsed;
    QTimer m_tick;
};

} // namespace app
