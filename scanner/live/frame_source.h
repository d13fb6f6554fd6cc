#pragma once

#include "scanner/files/file_fault.h"

#include <QImage>
#include <QObject>
#include <QString>

#include <chrono>
#include <cstdint>

namespace scanner {

class FrameMailbox;

/// How it stands with the source of frames.
enum class SourceState : std::uint8_t {
    Stopped,  ///< none is asked for
    NoCamera, ///< the camera asked for is not there, or was pulled out; it starts by itself when it is
              ///< plugged in
    Starting, ///< opened, no frame has come yet
    Running,  ///< frames come
    Stalled,  ///< the camera is there and sends nothing; it is opened anew from time to time
    Ended,    ///< the recording has been read to its end
};

/// Where frames come from. It puts them into the mailbox and tells the rest by signals, which a recording
/// sends from a thread of its own. Made, started, stopped and deleted on the thread of the window.
class FrameSource : public QObject {
    Q_OBJECT

public:
    /// The mailbox outlives the source. `number` is written on each frame.
    FrameSource(FrameMailbox& mailbox, int number)
        : m_mailbox(mailbox)
        , m_number(number) {}

    virtual void start() = 0;

    /// Once this returns, no further frame comes.
    virtual void stop() = 0;

    /// The widest preview in pixels; 0: none. May be called while it runs.
    virtual void setPreviewWidth(int width) = 0;

signals:
    void stateChanged(scanner::SourceState state);
    void previewReady(const QImage& preview);

    /// Of a recording: how much of everything is done, 0 to 1; a file that could not be read.
    void progressed(double share);
    void fileFailed(const QString& path, const scanner::FileError& error);

protected:
    /// What a camera's frames are stamped with.
    static std::chrono::milliseconds now() {
        return std::chrono::duration_cast<std::chrono::milliseconds>(
            std::chrono::steady_clock::now().time_since_epoch());
    }
    static constexpr std::chrono::milliseconds silenceIsStall{1500};

    FrameMailbox& m_mailbox;
    const int m_number;
};

} // namespace scanner
