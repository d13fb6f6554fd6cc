#include "scanner/files/network_video.h"

#include "scanner/files/gst_picture.h"
#include "scanner/files/network_address.h"

#include <gst/app/gstappsink.h>
#include <gst/gst.h>

#include <string>

namespace scanner {
namespace {

/// Over TCP, which passes every router; a fifth of a second may lie between the camera and the picture.
constexpr const char* rtspPipeline = "rtspsrc name=from protocols=tcp latency=200 tcp-timeout=4000000 "
                                     "from. ! application/x-rtp,media=video ! decodebin ";
constexpr const char* httpPipeline =
    "souphttpsrc name=from is-live=true do-timestamp=true timeout=4 retries=0 "
    "! multipartdemux single-stream=true ! image/jpeg ! jpegdec ";
constexpr const char* newestFrame =
    "! videoconvert ! appsink name=out sync=false max-buffers=1 drop=true enable-last-sample=false "
    "caps=video/x-raw,format=I420";

} // namespace

struct NetworkVideo::Pipeline : RunningPipeline {
    explicit Pipeline(const NetworkAddress& address) {
        if (!gst_init_check(nullptr, nullptr, nullptr)) return;
        const bool rtsp = address.way == NetworkAddress::Way::Rtsp;
        const std::string description = std::string(rtsp ? rtspPipeline : httpPipeline) + newestFrame;
        GError* failed = nullptr;
        top = gst_parse_launch(description.c_str(), &failed);
        if (failed != nullptr) {
            g_error_free(failed);
            return;
        }
        GstElement* from = gst_bin_get_by_name(GST_BIN(top), "from");
        const auto set = [&](const char* name, const QString& value) {
            if (!value.isEmpty()) g_object_set(from, name, value.toUtf8().constData(), nullptr);
        };
        set("location", address.address);
        set("user-id", address.user);
        set("user-pw", address.password);
        gst_object_unref(from);
        begin();
    }

    bool hasFailed() const {
        const Owned<GstBus> bus{gst_element_get_bus(top), [](GstBus* it) { gst_object_unref(it); }};
        const auto wanted = static_cast<GstMessageType>(GST_MESSAGE_ERROR | GST_MESSAGE_EOS);
        return owned(gst_bus_pop_filtered(bus.get(), wanted)) != nullptr ||
               gst_app_sink_is_eos(GST_APP_SINK(out));
    }
};

NetworkVideo::NetworkVideo(const NetworkAddress& address)
    : m_pipeline(std::make_unique<Pipeline>(address))
    , m_isLost(m_pipeline->out == nullptr) {}

NetworkVideo::~NetworkVideo() = default;

std::optional<VideoPicture> NetworkVideo::next(std::chrono::milliseconds patience, int previewWidth) {
    if (m_isLost) return std::nullopt;
    const std::chrono::nanoseconds wait = patience;
    const auto sample = owned(
        gst_app_sink_try_pull_sample(GST_APP_SINK(m_pipeline->out), static_cast<GstClockTime>(wait.count())));
    if (sample) return pictureOf(sample.get(), previewWidth);
    m_isLost = m_pipeline->hasFailed();
    return std::nullopt;
}

} // namespace scanner
