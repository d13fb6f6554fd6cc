#include "tests/support/video_writer.h"

#include <gst/app/gstappsrc.h>
#include <gst/gst.h>

#include <array>
#include <cstdint>
#include <fstream>
#include <iterator>
#include <memory>
#include <stdexcept>

namespace support {
namespace {

std::string encoderOf(VideoKind kind) {
    switch (kind) {
    case VideoKind::Vp8InMatroska:
        return "vp8enc deadline=1 target-bitrate=4000000 ! matroskamux";
    case VideoKind::MjpegInAvi:
        return "jpegenc ! avimux";
    case VideoKind::MjpegInMovTurned:
        return "jpegenc ! qtmux";
    }
    throw std::invalid_argument("no such kind of video");
}

std::string capsOf(const QImage& first, int framesPerSecond) {
    return "video/x-raw,format=BGRx,width=" + std::to_string(first.width()) +
           ",height=" + std::to_string(first.height()) + ",framerate=" + std::to_string(framesPerSecond) +
           "/1";
}

void push(GstElement* source, const QImage& picture, GstClockTime at, GstClockTime length) {
    const QImage packed =
        picture.convertToFormat(QImage::Format_RGB32); // 4 bytes a pixel: rows have no padding
    const auto size = static_cast<gsize>(packed.sizeInBytes());
    GstBuffer* buffer = gst_buffer_new_allocate(nullptr, size, nullptr);
    gst_buffer_fill(buffer, 0, packed.constBits(), size);
    GST_BUFFER_PTS(buffer) = at;
    GST_BUFFER_DURATION(buffer) = length;
    if (gst_app_src_push_buffer(GST_APP_SRC(source), buffer) != GST_FLOW_OK)
        throw std::runtime_error("the video writer takes no more pictures");
}

void waitForTheEnd(GstElement* pipeline) {
    GstBus* bus = gst_element_get_bus(pipeline);
    const auto wanted = static_cast<GstMessageType>(GST_MESSAGE_EOS | GST_MESSAGE_ERROR);
    GstMessage* message = gst_bus_timed_pop_filtered(bus, 60 * GST_SECOND, wanted);
    const bool ended = message != nullptr && GST_MESSAGE_TYPE(message) == GST_MESSAGE_EOS;
    if (message != nullptr) gst_message_unref(message);
    gst_object_unref(bus);
    if (!ended) throw std::runtime_error("the video could not be written");
}

/// Sets the matrix of the track header (QuickTime File Format, "Track header atoms"): 40 bytes of other
/// fields after the name, then {a b u, c d v, x y w} as big-endian fixed point; a quarter clockwise has b =
/// 1, c = -1, x = height.
void turnQuarterClockwise(const std::filesystem::path& path, int height) {
    std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(file), {}};
    const std::size_t name = bytes.find("tkhd");
    if (name == std::string::npos) throw std::runtime_error("no track header");
    const std::array<std::uint32_t, 9> matrix{
        0, 0x10000, 0, 0xffff0000, 0, 0, static_cast<std::uint32_t>(height) << 16, 0, 0x40000000};
    file.clear();
    file.seekp(static_cast<std::streamoff>(name + 4 + 40));
    for (const std::uint32_t value : matrix)
        for (int shift = 24; shift >= 0; shift -= 8)
            file.put(static_cast<char>(value >> shift));
}

void stop(GstElement* pipeline) {
    gst_element_set_state(pipeline, GST_STATE_NULL);
    gst_object_unref(pipeline);
}

} // namespace

void writeVideo(const std::filesystem::path& path, const std::vector<QImage>& pictures, int framesPerSecond,
                VideoKind kind) {
    gst_init(nullptr, nullptr);
    const std::string chain = "appsrc name=in format=time block=true caps=\"" +
                              capsOf(pictures.at(0), framesPerSecond) + "\" ! videoconvert ! " +
                              encoderOf(kind) + " ! filesink location=\"" + path.string() + "\"";
    const std::unique_ptr<GstElement, void (*)(GstElement*)> pipeline(
        gst_parse_launch(chain.c_str(), nullptr), stop);
    if (!pipeline) throw std::runtime_error("no such video writer: " + chain);
    const std::unique_ptr<GstElement, void (*)(void*)> source(
        gst_bin_get_by_name(GST_BIN(pipeline.get()), "in"), gst_object_unref);
    gst_element_set_state(pipeline.get(), GST_STATE_PLAYING);
    const GstClockTime length = GST_SECOND / static_cast<GstClockTime>(framesPerSecond);
    for (std::size_t i = 0; i < pictures.size(); ++i)
        push(source.get(), pictures[i], i * length, length);
    gst_app_src_end_of_stream(GST_APP_SRC(source.get()));
    waitForTheEnd(pipeline.get());
    if (kind == VideoKind::MjpegInMovTurned) turnQuarterClockwise(path, pictures.at(0).height());
}

} // namespace support
