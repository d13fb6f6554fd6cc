#include "scanner/live/recording_source.h"

#include "scanner/files/folder.h"
#include "scanner/files/picture_file.h"
#include "scanner/files/preview_image.h"
#include "scanner/files/video_file.h"
#include "scanner/live/frame_mailbox.h"

#include <QFile>

#include <algorithm>
#include <utility>

namespace scanner {
namespace {

/// Frames of a second to read at most: a tag carried past a camera is in view for longer than a tenth of a
/// second.
constexpr double videoFramesPerSecond = 10;

} // namespace

RecordingSource::RecordingSource(FrameMailbox& mailbox, int number, std::vector<std::filesystem::path> paths)
    : FrameSource(mailbox, number)
    , m_paths(std::move(paths)) {}

RecordingSource::~RecordingSource() {
    stop();
}

void RecordingSource::start() {
    stop();
    m_thread = std::jthread([this](const std::stop_token& stop) { run(stop); });
}

void RecordingSource::stop() {
    m_thread.request_stop();
    if (m_thread.joinable()) m_thread.join();
}

void RecordingSource::run(const std::stop_token& stop) {
    std::vector<std::filesystem::path> files;
    for (const auto& path : m_paths) {
        const auto further = filesToRead(path);
        if (further.empty()) tellFailure(path, {FileFault::Empty, {}});
        files.insert(files.end(), further.begin(), further.end());
    }
    m_done = 0;
    m_total = files.size();
    emit stateChanged(SourceState::Running);
    for (const auto& file : files) {
        tellShare(0);
        if (!sendFile(file, stop)) return;
        ++m_done;
    }
    Frame end;
    end.source = m_number;
    end.isEnd = true;
    end.at = m_videoTime;
    m_mailbox.put(std::move(end), stop);
}

bool RecordingSource::sendFile(const std::filesystem::path& path, const std::stop_token& stop) {
    LoadedPicture picture = loadPicture(path);
    if (picture.error && picture.error->fault == FileFault::NotAPicture) return sendVideo(path, stop);
    if (picture.error) {
        tellFailure(path, *picture.error);
        return !stop.stop_requested();
    }
    const int width = m_previewWidth;
    const QImage preview = width > 0 ? previewOf(picture.grey, width) : QImage();
    if (!m_mailbox.put({std::move(picture.grey), m_videoTime, m_number, false, true}, stop)) return false;
    if (!preview.isNull()) emit previewReady(preview);
    return true;
}

bool RecordingSource::sendVideo(const std::filesystem::path& path, const std::stop_token& stop) {
    VideoOptions options;
    options.framesPerSecond = videoFramesPerSecond;
    options.previewWidth = m_previewWidth;
    options.stop = stop;
    VideoFile video(path, options);
    const std::chrono::milliseconds before = m_videoTime;
    while (auto frame = video.next()) {
        m_videoTime = std::max(m_videoTime, before + frame->at);
        if (!m_mailbox.put({std::move(frame->grey), m_videoTime, m_number, false}, stop)) return false;
        if (!frame->preview.isNull()) emit previewReady(frame->preview);
        tellShare(frame->share);
    }
    if (video.error()) tellFailure(path, *video.error());
    return !stop.stop_requested();
}

void RecordingSource::tellShare(double shareOfFile) {
    emit progressed((static_cast<double>(m_done) + shareOfFile) / static_cast<double>(m_total));
}

void RecordingSource::tellFailure(const std::filesystem::path& path, const FileError& error) {
    emit fileFailed(QFile::decodeName(path.c_str()), error);
}

} // namespace scanner
