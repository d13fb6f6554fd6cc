#pragma once

#include "scanner/files/video_file.h"

#include <chrono>
#include <memory>
#include <optional>

namespace scanner {

struct NetworkAddress;

/// The frames of a camera of the network, the newest each time: what was not asked for in time is passed
/// over. One connection: when it is lost, make another. What GStreamer says of an address is told nowhere,
/// because a password may be in it. Use it from one thread at a time; it needs no event loop.
class NetworkVideo {
public:
    explicit NetworkVideo(const NetworkAddress& address);
    ~NetworkVideo();
    NetworkVideo(const NetworkVideo&) = delete;
    NetworkVideo& operator=(const NetworkVideo&) = delete;

    /// Waits so long for a frame. Nothing when none has come, or when the camera is lost.
    std::optional<VideoPicture> next(std::chrono::milliseconds patience, int previewWidth);

    /// The camera cannot be reached, refuses, has ended, or sends what is no picture.
    bool isLost() const { return m_isLost; }

private:
    struct Pipeline;

    std::unique_ptr<Pipeline> m_pipeline;
    bool m_isLost = false;
};

} // namespace scanner
