#pragma once

#include "camera_card.h"

G_BEGIN_DECLS

/* Holds the bytes of the frame that a camera shows at the moment, made from the picture files once per
 * change. */
typedef struct {
    char* shown; /* name, size and time of the file that `bytes` were made from */
    GByteArray* bytes;
} PictureReel;

PictureReel* picture_reel_new(void);
void picture_reel_free(PictureReel* reel);

/* The bytes of frame number `frame` in this mode, owned by the reel until the next call. Without a picture
 * file a raw mode shows mid grey and MJPG nothing (NULL). */
const GByteArray* picture_reel_frame(PictureReel* reel, const CameraCard* card, const CameraMode* mode,
                                     guint64 frame);

G_END_DECLS
