#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* What one pretended webcam is: read from a key file `NAME.camera` in the folder that THOLEPIN_FAKE_CAMERAS
 * names.
 *
 *     [camera]
 *     name=Shed webcam
 *     modes=YUY2,1280,720,30;MJPG,1280,720,30
 *     pictures=/folder/with/pictures
 *     hold=10
 *
 * The file's being there is the camera's being plugged in. While `NAME.stall` lies beside it, the camera is
 * there and sends nothing. `pictures` holds .ppm (P6) files for YUY2 and NV12 and .jpg files for MJPG; they
 * are shown in the order of their names, each for `hold` frames, again and again; the folder is looked at
 * anew for each frame. */
typedef struct {
    char format[8];
    int width;
    int height;
    int frames_per_second;
} CameraMode;

#define MOST_MODES 8

typedef struct {
    char* path;
    char* name;
    char* pictures;
    int hold;
    int mode_count;
    CameraMode modes[MOST_MODES];
} CameraCard;

/* NULL when the file is gone or makes no sense. Free with camera_card_free. */
CameraCard* camera_card_read(const char* path);
void camera_card_free(CameraCard* card);

gboolean camera_is_plugged_in(const char* path);
gboolean camera_is_stalled(const char* path);

/* The paths of all .camera files, sorted; free with g_list_free_full(list, g_free). */
GList* camera_cards_in(const char* folder);

G_END_DECLS
