#pragma once

#include "scanner/live/picture_advice.h"
#include "scanner/reader/symbol_reader.h"

#include <QObject>

#include <chrono>
#include <optional>
#include <vector>

namespace scanner {

class FrameMailbox;

/// What the reader found in one frame.
struct FrameReading {
    std::vector<SeenCode> seen;
    int width = 0;
    int height = 0;
    std::chrono::milliseconds at{};
    int source = 0;
    bool isEnd = false;                  ///< nothing was read: the recording is at its end
    std::optional<PictureAdvice> advice; ///< some five times a second: it costs a few milliseconds
};

/// Takes frames from the mailbox and reads them. Lives on the reading thread, whose event loop wakes it.
class DecodeWorker : public QObject {
    Q_OBJECT

public:
    /// The mailbox outlives the worker. `ofPictures` reads what no other frame shows; empty: like the others.
    explicit DecodeWorker(FrameMailbox& mailbox, CodeReader ofFrames, CodeReader ofPictures = {});

public slots:
    /// Reads the frame that waits, if one does. To be called by a queued call for each arrival.
    void readWaiting();

signals:
    void frameRead(const scanner::FrameReading& reading);

private:
    FrameMailbox& m_mailbox;
    CodeReader m_ofFrames;
    CodeReader m_ofPictures;
    std::chrono::milliseconds m_nextAdvice{0};
    int m_source = -1; ///< whose time that is
};

} // namespace scanner
