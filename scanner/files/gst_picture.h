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

/// A pipeline that gives its pictures at an element named "out", and ends with its owner.
struct RunningPipeline {
    GstElement* top = nullptr; ///< null: it could not be made
    GstElement* out = nullptr;

    RunningPipeline() = default;
    RunningPipeline(const RunningPipeline&) = delete;
    RunningPipeline& operator=(const RunningPipeline&) = delete;
    ~RunningPipeline() {
        if (out != nullptr) gst_object_unref(out);
        if (top == nullptr) return;
        gst_element_set_state(top, GST_STATE_NULL);
        gst_object_unref(top);
    }

    void begin() {
        out = gst_bin_get_by_name(GST_BIN(top), "out");
        gst_element_set_state(top, GST_STATE_PLAYING);
    }
};

/// The grey picture, and the preview if one is asked for, of a sample in planes whose first is the luma.
/// Empty when it cannot be read.
VideoPicture pictureOf(GstSample* sample, int previewWidth);

} // namespace scanner
