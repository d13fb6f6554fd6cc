#pragma once

#include <QByteArray>
#include <QCameraDevice>
#include <QList>
#include <QObject>

namespace scanner {

/// The cameras that are plugged in, each once, and word of every change. All lists of a process share one
/// memory of what was there at the start, as Qt's own list is one. Only on the thread of the window. Nothing
/// else in the program may connect to QMediaDevices before a list was made: Qt 6.4.2 locks up when its first
/// answer is waited for in a signal of its own.
class CameraList : public QObject {
    Q_OBJECT

public:
    CameraList();

    const QList<QCameraDevice>& cameras() const { return m_cameras; }

signals:
    void changed();

private:
    void refresh();

    QList<QCameraDevice> m_cameras;
};

} // namespace scanner
