#pragma once

#include "scanner/live/frame_source.h"

#include <QByteArray>
#include <QList>
#include <QTimer>

#include <chrono>
#include <memory>

class QCameraDevice;
class QCameraFormat;
class QVideoFrame;

namespace scanner {

class CameraList;

/// A camera, watched over. Qt says nothing when a camera is pulled out or stops sending, so a watchdog does:
/// no frame for 1.5 s is a stall. A capture session whose camera failed does not recover; so it is built anew
/// when the camera comes back, and from time to time while it stalls. Everything happens on the thread of the
/// window.
class CameraSource : public FrameSource {
    Q_OBJECT

public:
    /// The list outlives the source. `id` as in the list; empty: whichever camera is there. A camera asked
    /// for by its id is awaited, when pulled out, under its name, because its id is another then.
    CameraSource(FrameMailbox& mailbox, int number, const CameraList& list, const QByteArray& id);
    ~CameraSource() override;

    void start() override;
    void stop() override;
    void setPreviewWidth(int width) override { m_previewWidth = width; }

private:
    struct Session;

    void followList();
    void open();
    void openAnew();
    void close();
    void receive(const QVideoFrame& frame);
    void noticeSilence();
    void setState(SourceState state);
    const QCameraDevice* wantedDevice() const;

    const CameraList& m_list;
    QByteArray m_id;
    QString m_awaitedName; ///< empty: any camera will do
    std::unique_ptr<Session> m_session;
    QTimer m_watchdog;
    QTimer m_retry;
    std::chrono::milliseconds m_retryAfter;
    SourceState m_state = SourceState::Stopped;
    int m_previewWidth = 0;
};

/// The format to ask a camera for: nearest to 1280 × 720 in pixels, then nearest to 30 frames a second, then
/// one that needs no decoding. Null if there is none: the camera chooses then.
QCameraFormat chooseFormat(const QList<QCameraFormat>& formats);

} // namespace scanner
