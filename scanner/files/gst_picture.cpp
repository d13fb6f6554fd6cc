#include "scanner/files/gst_picture.h"

#include "scanner/files/preview_image.h"

#include <gst/video/video.h>

namespace scanner {
namespace {

YuvView viewOf(const GstVideoFrame& frame) {
    const auto channel = [&](unsigned part) {
        return Channel{static_cast<const std::uint8_t*>(GST_VIDEO_FRAME_COMP_DATA(&frame, part)),
                       GST_VIDEO_FRAME_COMP_STRIDE(&frame, part), GST_VIDEO_FRAME_COMP_PSTRIDE(&frame, part)};
    };
    return {GST_VIDEO_FRAME_WIDTH(&frame),
            GST_VIDEO_FRAME_HEIGHT(&frame),
            channel(0),
            channel(1),
            channel(2),
            false};
}

GreyView lumaPlaneOf(const YuvView& view) {
    return {view.luma.data, view.width, view.height, view.luma.stride, view.luma.step};
}

} // namespace

VideoPicture pictureOf(GstSample* sample, int previewWidth) {
    VideoPicture picture;
    GstVideoInfo info;
    GstVideoFrame frame;
    if (!gst_video_info_from_caps(&info, gst_sample_get_caps(sample)) ||
        !gst_video_frame_map(&frame, &info, gst_sample_get_buffer(sample), GST_MAP_READ))
        return picture;
    const YuvView view = viewOf(frame);
    picture.grey = copyOf(lumaPlaneOf(view));
    if (previewWidth > 0) picture.preview = previewOf(view, previewWidth);
    gst_video_frame_unmap(&frame);
    return picture;
}

} // namespace scanner
