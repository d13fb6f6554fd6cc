#include "scanner/live/live_scanner.h"

#include "scanner/live/camera_list.h"
#include "scanner/live/camera_source.h"
#include "scanner/live/decode_worker.h"
#include "scanner/live/frame_mailbox.h"
#include "scanner/live/network_source.h"
#include "scanner/live/recording_source.h"

#include <QMetaObject>

#include <utility>

namespace scanner {

LiveScanner::LiveScanner(CodeReader reader, QObject* parent)
    : LiveScanner(std::move(reader), {}, parent) {}

LiveScanner::LiveScanner(CodeReader ofFrames, CodeReader ofPictures, QObject* parent)
    : QObject(parent) {
    m_mailbox = std::make_unique<FrameMailbox>([this] {
        QMetaObject::invokeMethod(m_worker.get(), &DecodeWorker::readWaiting, Qt::QueuedConnection);
    });
    m_worker = std::make_unique<DecodeWorker>(*m_mailbox, std::move(ofFrames), std::move(ofPictures));
    m_worker->moveToThread(&m_thread);
    connect(m_worker.get(), &DecodeWorker::frameRead, this, &LiveScanner::take);
    m_thread.setObjectName("reading");
    m_thread.start();
}

LiveScanner::~LiveScanner() {
    m_source.reset();
    m_thread.quit();
    m_thread.wait();
}

CameraList& LiveScanner::cameraList() {
    if (!m_cameras) {
        m_cameras = std::make_unique<CameraList>();
        connect(m_cameras.get(), &CameraList::changed, this, &LiveScanner::camerasChanged);
    }
    return *m_cameras;
}

std::vector<CameraChoice> LiveScanner::cameras() {
    std::vector<CameraChoice> choices;
    for (const QCameraDevice& device : cameraList().cameras())
        choices.push_back({device.id(), device.description()});
    return choices;
}

void LiveScanner::useCamera(const QByteArray& id) {
    stop();
    use(std::make_unique<CameraSource>(*m_mailbox, m_sourceNumber, cameraList(), id));
}

void LiveScanner::useNetwork(const NetworkAddress& address) {
    stop();
    use(std::make_unique<NetworkSource>(*m_mailbox, m_sourceNumber, address));
}

void LiveScanner::useRecording(const std::vector<std::filesystem::path>& paths) {
    stop();
    use(std::make_unique<RecordingSource>(*m_mailbox, m_sourceNumber, paths));
}

void LiveScanner::use(std::unique_ptr<FrameSource> source) {
    m_source = std::move(source);
    const auto ofThisSource = [this, number = m_sourceNumber](auto&& act) {
        return [this, number, act](const auto&... values) {
            if (number == m_sourceNumber) act(values...);
        };
    };
    // Queued, so that no slot of the window ever runs inside a source that it may stop.
    const auto follow = [&](auto signal, auto act) {
        connect(m_source.get(), signal, this, ofThisSource(act), Qt::QueuedConnection);
    };
    follow(&FrameSource::stateChanged, [this](SourceState state) { setState(state); });
    follow(&FrameSource::previewReady, [this](const QImage& preview) { emit previewChanged(preview); });
    follow(&FrameSource::progressed, [this](double share) { emit progressed(share); });
    follow(&FrameSource::fileFailed,
           [this](const QString& path, const FileError& error) { emit fileFailed(path, error); });
    m_tracker = Tracker();
    m_source->setPreviewWidth(m_previewWidth);
    setState(SourceState::Starting);
    m_source->start();
}

void LiveScanner::stop() {
    if (m_source) m_source->stop();
    ++m_sourceNumber;
    m_source.reset();
    m_mailbox->take();
    setState(SourceState::Stopped);
}

void LiveScanner::setPreviewWidth(int width) {
    m_previewWidth = width;
    if (m_source) m_source->setPreviewWidth(width);
}

void LiveScanner::take(const FrameReading& reading) {
    if (reading.source != m_sourceNumber) return;
    if (reading.isEnd) {
        emit progressed(1);
        setState(SourceState::Ended);
        return;
    }
    const Tracker::Change change = m_tracker.update(reading.seen, reading.at);
    emit outlinesChanged(m_tracker.outlines(), QSize(reading.width, reading.height));
    if (reading.advice && m_advice.update(*reading.advice, reading.at)) emit adviceChanged(m_advice.told());
    for (const std::string& text : change.gone)
        emit codeGone(text);
    for (const SeenCode& code : change.fresh)
        emit codeFound(code);
}

void LiveScanner::setState(SourceState state) {
    if (std::exchange(m_state, state) == state) return;
    if (state != SourceState::Running) {
        emit outlinesChanged({}, QSize());
        if (std::exchange(m_advice, SteadyAdvice()).told() != PictureAdvice::None)
            emit adviceChanged(PictureAdvice::None);
    }
    emit stateChanged(state);
}

} // namespace scanner
