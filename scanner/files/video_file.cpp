#include "scanner/files/video_file.h"

#include "scanner/files/folder.h"
#include "scanner/files/gst_picture.h"

#include <gst/app/gstappsink.h>
#include <gst/gst.h>

#include <algorithm>
#include <string>
#include <utility>

namespace scanner {
namespace {

/// Only pictures are decoded, only into planes whose first is the luma, turned upright, and without a clock.
constexpr const char* pipelineDescription =
    "filesrc name=file ! decodebin expose-all-streams=false caps=video/x-raw "
    "! videoflip video-direction=auto ! videoconvert ! "
    "appsink name=out sync=false max-buffers=2 drop=false enable-last-sample=false "
    "caps=video/x-raw,format=I420";

FileFault faultOf(const GError& error) {
    if (error.domain == GST_RESOURCE_ERROR) return FileFault::NotReadable;
    const bool unknownKind =
        (error.domain == GST_CORE_ERROR && error.code == GST_CORE_ERROR_MISSING_PLUGIN) ||
        (error.domain == GST_STREAM_ERROR &&
         (error.code == GST_STREAM_ERROR_TYPE_NOT_FOUND || error.code == GST_STREAM_ERROR_WRONG_TYPE ||
          error.code == GST_STREAM_ERROR_CODEC_NOT_FOUND));
    return unknownKind ? FileFault::NotAPicture : FileFault::Damaged;
}

} // namespace

struct VideoFile::Pipeline : RunningPipeline {
    Pipeline(const std::filesystem::path& path, GError** failed) {
        if (!gst_init_check(nullptr, nullptr, failed)) return;
        top = gst_parse_launch(pipelineDescription, failed);
        if (*failed != nullptr) return;
        GstElement* file = gst_bin_get_by_name(GST_BIN(top), "file");
        g_object_set(file, "location", path.c_str(), nullptr);
        gst_object_unref(file);
        begin();
    }

    std::optional<FileError> error() const {
        Owned<GstBus> bus{gst_element_get_bus(top), [](GstBus* it) { gst_object_unref(it); }};
        const auto message = owned(gst_bus_pop_filtered(bus.get(), GST_MESSAGE_ERROR));
        if (!message) return std::nullopt;
        GError* said = nullptr;
        gst_message_parse_error(message.get(), &said, nullptr);
        const auto error = owned(said);
        return FileError{faultOf(*error), error->message};
    }

    /// The next sample; nothing at the end, when asked to stop, after an error, or when patience has run out:
    /// then `failed` says so.
    Owned<GstSample> pull(const VideoOptions& options, std::optional<FileError>& failed) const {
        constexpr std::chrono::nanoseconds glance = std::chrono::milliseconds(50);
        for (std::chrono::nanoseconds waited{0}; waited < options.patience; waited += glance) {
            if (options.stop.stop_requested()) return owned(noSample);
            if (auto sample = owned(gst_app_sink_try_pull_sample(GST_APP_SINK(out), glance.count())))
                return sample;
            if ((failed = error())) return owned(noSample);
            if (gst_app_sink_is_eos(GST_APP_SINK(out))) return owned(noSample);
        }
        failed = FileError{FileFault::Damaged, "no frame came in time"};
        return owned(noSample);
    }

    double share(std::chrono::nanoseconds at) const {
        gint64 length = 0;
        if (!gst_element_query_duration(top, GST_FORMAT_TIME, &length) || length <= 0) return 0;
        return std::clamp(static_cast<double>(at.count()) / static_cast<double>(length), 0.0, 1.0);
    }

    static constexpr GstSample* noSample = nullptr;
};

VideoFile::VideoFile(const std::filesystem::path& path, const VideoOptions& options)
    : m_options(options)
    , m_error(faultOfFile(path)) {
    if (m_error) return;
    GError* failed = nullptr;
    m_pipeline = std::make_unique<Pipeline>(path, &failed);
    if (failed == nullptr) return;
    m_error = FileError{FileFault::NotAPicture, failed->message};
    g_error_free(failed);
    m_pipeline.reset();
}

VideoFile::~VideoFile() = default;

std::optional<VideoPicture> VideoFile::next() {
    while (m_pipeline && !m_error) {
        const auto sample = m_pipeline->pull(m_options, m_error);
        if (!sample) break;
        m_begun = true;
        const auto stamp = GST_BUFFER_PTS(gst_sample_get_buffer(sample.get()));
        const bool timed = stamp != GST_CLOCK_TIME_NONE;
        const std::chrono::nanoseconds at{timed ? static_cast<std::int64_t>(stamp) : 0};
        if (timed && at < m_nextDue) continue;
        if (m_options.framesPerSecond > 0)
            m_nextDue =
                at + std::chrono::nanoseconds(static_cast<std::int64_t>(0.98e9 / m_options.framesPerSecond));
        VideoPicture picture = pictureOf(sample.get(), m_options.previewWidth);
        picture.at = std::chrono::duration_cast<std::chrono::milliseconds>(at);
        picture.share = m_pipeline->share(at);
        return picture;
    }
    if (!m_begun && !m_error && !m_options.stop.stop_requested())
        m_error = FileError{FileFault::Damaged, "no frame"};
    return std::nullopt;
}

} // namespace scanner
