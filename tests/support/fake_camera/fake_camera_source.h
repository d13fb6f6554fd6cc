#pragma once

#include <gst/base/gstpushsrc.h>

G_BEGIN_DECLS

/* A live source that behaves as v4l2src does: frames at the camera's pace, an error when the camera is pulled
 * out. Its one property, `card`, is the path of the .camera file. */
#define FAKE_TYPE_CAMERA_SOURCE (fake_camera_source_get_type())
G_DECLARE_FINAL_TYPE(FakeCameraSource, fake_camera_source, FAKE, CAMERA_SOURCE, GstPushSrc)

/* All modes of the camera as caps, the first one preferred. */
GstCaps* fake_camera_caps(const char* card_path);

G_END_DECLS
