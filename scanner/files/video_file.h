#pragma once

#include "scanner/files/file_fault.h"
#include "scanner/grey_picture.h"

#include <QImage>

#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>
#include <stop_token>

namespace scanner {

/// One frame of a video, upright as the file's orientation tag says.
struct VideoPicture {
    GreyPicture grey;
    QImage preview; ///< in colour, at most as wide as was asked for; null if none was asked for
    std::chrono::milliseconds at{}; ///< from the start of the video
    double share = 0; ///< of the video done with this frame, 0 to 1; 0 while the length is unknown
};

struct VideoOptions {
    double framesPerSecond = 0;        ///< evenly spaced frames of a second to give at most; 0: all
    int previewWidth = 0;              ///< pixels; 0: no preview
    std::stop_token stop;              ///< asked to stop, the frames end without an error
    std::chrono::seconds patience{10}; ///< a file that gives no frame for so long is taken for damaged
};

/// The frames of a video file, one after the other, as fast as they are asked for: none is dropped because
/// the reader is slow, and none waits for a clock. Sound is not decoded. Decoding is GStreamer's, which Qt
/// Multimedia stands on here; Qt's own player gives frames by the clock only. Use it from one thread at a
/// time; it needs no event loop.
class VideoFile {
public:
    explicit VideoFile(const std::filesystem::path& path, const VideoOptions& options = {});
    ~VideoFile();
    VideoFile(const VideoFile&) = delete;
    VideoFile& operator=(const VideoFile&) = delete;

    /// Waits for the next frame. Nothing at the end and after an error.
    std::optional<VideoPicture> next();

    /// Why the frames ended before the end, or never began.
    const std::optional<FileError>& error() const { return m_error; }

private:
    struct Pipeline;

    std::unique_ptr<Pipeline> m_pipeline;
    VideoOptions m_options;
    std::optional<FileError> m_error;
    std::chrono::nanoseconds m_nextDue{0};
    bool m_begun = false;
};

} // namespace scanner
