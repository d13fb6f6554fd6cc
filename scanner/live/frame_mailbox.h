#pragma once

#include "scanner/grey_picture.h"

#include <chrono>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <stop_token>

namespace scanner {

/// One frame on its way to the reader.
struct Frame {
    GreyPicture grey;
    std::chrono::milliseconds at{}; ///< the source's own time; never falls within one source
    int source = 0;         ///< which start of a source it is of, so that late frames of the last can be told
    bool isEnd = false;     ///< an empty frame after the last one of a recording
    bool isPicture = false; ///< by itself: no other frame shows the same
};

/// The one place between a source and the reading thread. It holds one frame. A camera's newer frame replaces
/// the one that waits; a recording waits for its turn, so that no frame of it is lost. All functions may be
/// called from any thread.
class FrameMailbox {
public:
    /// `onArrival` is called, in the offering thread and without a lock held, each time the empty place is
    /// filled.
    explicit FrameMailbox(std::function<void()> onArrival = {});

    /// Newest wins. Does not wait.
    void offer(Frame frame);

    /// Waits until the place is empty. False, and the frame is dropped, if asked to stop meanwhile.
    bool put(Frame frame, const std::stop_token& stop);

    /// Empties the place. Does not wait.
    std::optional<Frame> take();

private:
    std::function<void()> m_onArrival;
    std::mutex m_lock;
    std::condition_variable_any m_emptied;
    std::optional<Frame> m_frame;
};

} // namespace scanner
