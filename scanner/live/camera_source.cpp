#include "scanner/live/camera_source.h"

#include "scanner/live/camera_frame.h"
#include "scanner/live/camera_light.h"
#include "scanner/live/camera_list.h"
#include "scanner/live/frame_mailbox.h"

#include <QCamera>
#include <QCameraDevice>
#include <QCameraFormat>
#include <QMediaCaptureSession>
#include <QVideoFrame>
#include <QVideoFrameFormat>
#include <QVideoSink>

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

namespace scanner {
namespace {

using namespace std::chrono_literals;

constexpr auto firstFrameWithin = 4000ms; // a webcam warms up
constexpr auto firstRetry = 2000ms;
constexpr auto longestRetry = 16000ms;

/// Smaller is better. Sizes are compared by their ratio: half is as far from the mark as double.
auto distanceOf(const QCameraFormat& format) {
    const double pixels = std::max(1, format.resolution().width() * format.resolution().height());
    const bool compressed = format.pixelFormat() == QVideoFrameFormat::Format_Jpeg;
    return std::tuple(std::abs(std::log(pixels / (1280.0 * 720.0))), std::abs(format.maxFrameRate() - 30.0F),
                      compressed);
}

} // namespace

struct CameraSource::Session {
    QByteArray id;
    QVideoSink sink;
    QCamera camera;
    QMediaCaptureSession capture;
    CameraLight light;

    explicit Session(const QCameraDevice& device)
        : id(device.id())
        , camera(device)
        , light(lightControlsOf(camera)) {
        const QCameraFormat format = chooseFormat(device.videoFormats());
        if (!format.isNull()) camera.setCameraFormat(format);
        capture.setVideoSink(&sink);
        capture.setCamera(&camera);
    }

    ~Session() {
        sink.disconnect();
        camera.stop();
        capture.setCamera(nullptr); // stopping alone leaves the pipeline running
        capture.setVideoSink(nullptr);
    }

    Session(const Session&) = delete;
    Session& operator=(const Session&) = delete;
};

CameraSource::CameraSource(FrameMailbox& mailbox, int number, const CameraList& list, const QByteArray& id)
    : FrameSource(mailbox, number)
    , m_list(list)
    , m_id(id)
    , m_retryAfter(firstRetry) {
    m_watchdog.setSingleShot(true);
    m_retry.setSingleShot(true);
    connect(&m_watchdog, &QTimer::timeout, this, &CameraSource::noticeSilence);
    connect(&m_retry, &QTimer::timeout, this, &CameraSource::openAnew);
}

CameraSource::~CameraSource() {
    close();
}

void CameraSource::start() {
    connect(&m_list, &CameraList::changed, this, &CameraSource::followList, Qt::UniqueConnection);
    m_retryAfter = firstRetry;
    open();
}

void CameraSource::stop() {
    disconnect(&m_list, nullptr, this, nullptr);
    close();
    setState(SourceState::Stopped);
}

const QCameraDevice* CameraSource::wantedDevice() const {
    const QList<QCameraDevice>& cameras = m_list.cameras();
    const auto find = [&](auto&& isWanted) {
        const auto found = std::find_if(cameras.begin(), cameras.end(), isWanted);
        return found == cameras.end() ? nullptr : &*found;
    };
    if (m_id.isEmpty() && m_awaitedName.isEmpty()) {
        const QCameraDevice* usual = find([](const QCameraDevice& each) { return each.isDefault(); });
        return usual != nullptr || cameras.isEmpty() ? usual : &cameras.front();
    }
    if (const QCameraDevice* same = find([&](const QCameraDevice& each) { return each.id() == m_id; }))
        return same;
    return find([&](const QCameraDevice& each) { return each.description() == m_awaitedName; });
}

void CameraSource::followList() {
    const QList<QCameraDevice>& cameras = m_list.cameras();
    const bool there =
        m_session && std::any_of(cameras.begin(), cameras.end(),
                                 [&](const QCameraDevice& each) { return each.id() == m_session->id; });
    if (!there) open();
}

void CameraSource::open() {
    close();
    const QCameraDevice* device = wantedDevice();
    if (device == nullptr) {
        setState(SourceState::NoCamera);
        return;
    }
    if (!m_id.isEmpty()) {
        m_id = device->id();
        m_awaitedName = device->description();
    }
    setState(SourceState::Starting);
    m_session = std::make_unique<Session>(*device);
    connect(&m_session->sink, &QVideoSink::videoFrameChanged, this, &CameraSource::receive);
    m_watchdog.start(firstFrameWithin);
    m_session->camera.start();
}

void CameraSource::openAnew() {
    m_retryAfter = std::min<std::chrono::milliseconds>(2 * m_retryAfter, longestRetry);
    open();
}

void CameraSource::close() {
    m_watchdog.stop();
    m_retry.stop();
    m_session.reset();
}

void CameraSource::receive(const QVideoFrame& frame) {
    GreyPicture grey = greyOf(frame);
    if (grey.view().isEmpty()) return; // the pipeline sends an empty frame when it starts or ends
    m_watchdog.start(silenceIsStall);
    m_retry.stop();
    m_retryAfter = firstRetry;
    setState(SourceState::Running);
    const auto at = now();
    if (m_session) m_session->light.look(grey.view(), at);
    m_mailbox.offer({std::move(grey), at, m_number, false});
    if (m_previewWidth > 0) emit previewReady(previewOf(frame, m_previewWidth));
}

void CameraSource::noticeSilence() {
    setState(SourceState::Stalled);
    m_retry.start(m_retryAfter);
}

void CameraSource::setState(SourceState state) {
    if (std::exchange(m_state, state) != state) emit stateChanged(state);
}

QCameraFormat chooseFormat(const QList<QCameraFormat>& formats) {
    const auto best = std::min_element(formats.begin(), formats.end(), [](const auto& a, const auto& b) {
        return distanceOf(a) < distanceOf(b);
    });
    return best == formats.end() ? QCameraFormat() : *best;
}

} // namespace scanner
