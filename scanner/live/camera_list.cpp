#include "scanner/live/camera_list.h"

#include "scanner/live/distinct_cameras.h"

#include <QMediaDevices>
#include <QTimer>

#include <algorithm>
#include <chrono>

namespace scanner {
namespace {

/// The doubles come in the first rounds of the event loop.
constexpr auto doublesComeWithin = std::chrono::milliseconds(1000);

DistinctCameras& distinctCameras() {
    static DistinctCameras roll;
    return roll;
}

QByteArray kindOf(const QCameraDevice& device) {
    QByteArray kind;
    for (const QCameraFormat& format : device.videoFormats()) {
        kind += QByteArray::number(format.pixelFormat()) + ' ' +
                QByteArray::number(format.resolution().width()) + ' ' +
                QByteArray::number(format.resolution().height()) + ' ' +
                QByteArray::number(format.maxFrameRate()) + ';';
    }
    return kind;
}

QList<QCameraDevice> camerasOnce() {
    const QList<QCameraDevice> devices = QMediaDevices::videoInputs();
    std::vector<ListedCamera> listed;
    for (const QCameraDevice& device : devices)
        listed.push_back({device.id(), device.description(), kindOf(device)});
    QList<QCameraDevice> cameras;
    for (const ListedCamera& shown : distinctCameras().update(listed)) {
        const auto device = std::find_if(devices.begin(), devices.end(),
                                         [&](const QCameraDevice& each) { return each.id() == shown.id; });
        cameras.push_back(*device);
    }
    return cameras;
}

} // namespace

CameraList::CameraList()
    : m_cameras(camerasOnce()) {
    // Queued, and only after the list was asked for once: see the class.
    auto* devices = new QMediaDevices(this);
    connect(devices, &QMediaDevices::videoInputsChanged, this, &CameraList::refresh, Qt::QueuedConnection);
    QTimer::singleShot(0, this, [this] {
        QTimer::singleShot(doublesComeWithin, this, [] { distinctCameras().stopExpectingDoubles(); });
    });
}

void CameraList::refresh() {
    const QList<QCameraDevice> now = camerasOnce();
    if (now == m_cameras) return;
    m_cameras = now;
    emit changed();
}

} // namespace scanner
