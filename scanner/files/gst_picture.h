#pragma once

#include "scanner/files/video_file.h"

#include <gst/gst.h>

#include <memory>

namespace scanner {

template <class T>
using Owned = std::unique_ptr<T, void (*)(T*)>;

inline Owned<GstSample> owned(GstSample* sample) {
    return {sample, [](GstSample* it) { gst_sample_unref(it); }};
}
inline Owned<GstMessage> owned(GstMessage* message) {
    return {message, [](GstMessage* it) { gst_message_unref(it); }};
}
inline Owned<GError> owned(GError* error) {
    return {error, g_error_free};
}

/// The grey picture, and the preview if one is asked for, of a sample in planes whose first is the luma.
/// Empty when it cannot be read.
VideoPicture pictureOf(GstSample* sample, int previewWidth);

} // namespace scanner
