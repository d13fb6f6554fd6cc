#pragma once

#include "scanner/files/file_fault.h"
#include "scanner/live/frame_source.h"
#include "scanner/live/steady_advice.h"
#include "scanner/live/tracker.h"
#include "scanner/reader/symbol_reader.h"

#include <QByteArray>
#include <QImage>
#include <QObject>
#include <QSize>
#include <QString>
#include <QThread>

#include <filesystem>
#include <memory>
#include <vector>

namespace scanner {

class CameraList;
class DecodeWorker;
class FrameMailbox;
struct FrameReading;
struct NetworkAddress;

struct CameraChoice {
    QByteArray id; ///< good until the camera is pulled out; remember the name, not this
    QString name;  ///< two cameras of a make have the same
};

/// Codes from a camera, a video, pictures: the face of the scanner for a window. All functions are for the
/// thread of the window, and all signals come there, one after the other; so slots may touch widgets and the
/// club. Reading happens on a thread of its own.
///
///     const auto reader = std::make_shared<LiveReader>(isTag);
///     auto* live = new LiveScanner([=](GreyView frame) { return reader->read(frame); }, this);
///     connect(live, &LiveScanner::codeFound, this, &Page::act);               // once per tag shown
///     connect(live, &LiveScanner::previewChanged, panel, &Panel::setPicture); // paint it, scaled
///     connect(live, &LiveScanner::outlinesChanged, panel, &Panel::setOutlines);
///     live->setPreviewWidth(panel->width());
///     live->useCamera();
///
/// An outline is drawn at its corners times the picture's size on the screen by the frame's size; it lags by
/// what the reader takes for a frame. Only the reading thread calls the reader. Needs the event loop.
class LiveScanner : public QObject {
    Q_OBJECT

public:
    explicit LiveScanner(CodeReader reader, QObject* parent = nullptr);
    /// A picture of a recording is looked at once, so it is read by a reader that takes its time.
    LiveScanner(CodeReader ofFrames, CodeReader ofPictures, QObject* parent = nullptr);
    ~LiveScanner() override;

    /// The cameras that are plugged in, each once. Looking for them starts at the first call of this or
    /// useCamera, which takes some 100 ms.
    std::vector<CameraChoice> cameras();

    /// Reads from a camera until told otherwise. With an id from cameras() that camera, and when it is pulled
    /// out and plugged in again, that again; without one whichever is there.
    void useCamera(const QByteArray& id = {});

    /// Reads from a camera of the network until told otherwise, and when it is lost and comes back, from that
    /// again.
    void useNetwork(const NetworkAddress& address);

    /// Reads pictures, videos and folders of them once, every frame in its turn; ends with
    /// SourceState::Ended.
    void useRecording(const std::vector<std::filesystem::path>& paths);

    /// Lets the camera go. The last signals of the source have come before this returns.
    void stop();

    /// How wide a preview may be, in pixels of the screen: the width of the panel; 0, as at the start: none
    /// is made. A preview is the frame with every n-th pixel taken, so often narrower.
    void setPreviewWidth(int width);

    SourceState state() const { return m_state; }

signals:
    /// A code to act upon: once when it comes into view and, if it was away for two seconds, once more.
    /// Guesses come here only after a second frame said the same. Corners are in pixels of the frame.
    void codeFound(const scanner::SeenCode& code);

    /// It has been out of view for two seconds.
    void codeGone(const std::string& text);

    /// All codes in view, after each frame read. Corners are in pixels of a frame of `frameSize`.
    void outlinesChanged(const std::vector<scanner::TrackedCode>& codes, QSize frameSize);

    /// What would help to read more, when that has held for most of a second; None when it no longer does or
    /// the source has stopped.
    void adviceChanged(scanner::PictureAdvice advice);

    void previewChanged(const QImage& preview);
    void stateChanged(scanner::SourceState state);
    void camerasChanged();

    /// Of a recording: how much is done, 0 to 1; a file that could not be read, or not to its end.
    void progressed(double share);
    void fileFailed(const QString& path, const scanner::FileError& error);

private:
    CameraList& cameraList();
    void use(std::unique_ptr<FrameSource> source);
    void take(const FrameReading& reading);
    void setState(SourceState state);

    std::unique_ptr<FrameMailbox> m_mailbox;
    std::unique_ptr<DecodeWorker> m_worker;
    std::unique_ptr<CameraList> m_cameras;
    std::unique_ptr<FrameSource> m_source;
    QThread m_thread;
    Tracker m_tracker;
    SteadyAdvice m_advice;
    SourceState m_state = SourceState::Stopped;
    int m_sourceNumber = 0; ///< words of earlier sources, still on their way, are passed over
    int m_previewWidth = 0;
};

} // namespace scanner
