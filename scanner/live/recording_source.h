#pragma once

#include "scanner/live/frame_source.h"

#include <atomic>
#include <chrono>
#include <filesystem>
#include <stop_token>
#include <thread>
#include <vector>

namespace scanner {

/// Pictures, folders of them, and video files, one after the other, as fast as they are read. Works on a
/// thread of its own, so its signals come queued. The time of the frames is that of the videos; a picture
/// takes none, so that the tags of a row of pictures count as seen together.
class RecordingSource : public FrameSource {
    Q_OBJECT

public:
    RecordingSource(FrameMailbox& mailbox, int number, std::vector<std::filesystem::path> paths);
    ~RecordingSource() override;

    void start() override;
    void stop() override;
    void setPreviewWidth(int width) override { m_previewWidth = width; }

private:
    void run(const std::stop_token& stop);
    bool sendFile(const std::filesystem::path& path, const std::stop_token& stop);
    bool sendVideo(const std::filesystem::path& path, const std::stop_token& stop);
    void tellShare(double shareOfFile);
    void tellFailure(const std::filesystem::path& path, const FileError& error);

    const std::vector<std::filesystem::path> m_paths;
    std::atomic<int> m_previewWidth{0};
    std::chrono::milliseconds m_videoTime{0}; ///< of the videos before the one at work
    std::size_t m_done = 0;
    std::size_t m_total = 0;
    std::jthread m_thread;
};

} // namespace scanner
