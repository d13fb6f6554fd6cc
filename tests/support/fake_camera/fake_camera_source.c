#include "fake_camera_source.h"

#include "picture_reel.h"

#include <string.h>

struct _FakeCameraSource {
    GstPushSrc parent;
    char* path;
    CameraCard* card;
    CameraMode mode;
    PictureReel* reel;
    guint64 frame;
    gint64 due; /* monotonic time of the next frame, microseconds */
    GMutex lock;
    GCond woken;
    gboolean flushing;
};

G_DEFINE_TYPE(FakeCameraSource, fake_camera_source, GST_TYPE_PUSH_SRC)

enum { PROPERTY_CARD = 1 };

static GstStaticPadTemplate source_template =
    GST_STATIC_PAD_TEMPLATE("src", GST_PAD_SRC, GST_PAD_ALWAYS, GST_STATIC_CAPS("video/x-raw; image/jpeg"));

static GstStructure* structure_of(const CameraMode* mode) {
    const gboolean jpeg = strcmp(mode->format, "MJPG") == 0;
    GstStructure* structure = gst_structure_new(jpeg ? "image/jpeg" : "video/x-raw", "width", G_TYPE_INT,
                                                mode->width, "height", G_TYPE_INT, mode->height, "framerate",
                                                GST_TYPE_FRACTION, mode->frames_per_second, 1, NULL);
    if (!jpeg) gst_structure_set(structure, "format", G_TYPE_STRING, mode->format, NULL);
    return structure;
}

GstCaps* fake_camera_caps(const char* card_path) {
    GstCaps* caps = gst_caps_new_empty();
    CameraCard* card = camera_card_read(card_path);
    for (int i = 0; card != NULL && i < card->mode_count; ++i)
        gst_caps_append_structure(caps, structure_of(&card->modes[i]));
    camera_card_free(card);
    return caps;
}

static GstCaps* get_caps(GstBaseSrc* base, GstCaps* filter) {
    GstCaps* caps = fake_camera_caps(FAKE_CAMERA_SOURCE(base)->path);
    if (filter == NULL) return caps;
    GstCaps* both = gst_caps_intersect_full(filter, caps, GST_CAPS_INTERSECT_FIRST);
    gst_caps_unref(caps);
    return both;
}

static gboolean set_caps(GstBaseSrc* base, GstCaps* caps) {
    FakeCameraSource* self = FAKE_CAMERA_SOURCE(base);
    for (int i = 0; self->card != NULL && i < self->card->mode_count; ++i) {
        GstCaps* offered = gst_caps_new_full(structure_of(&self->card->modes[i]), NULL);
        const gboolean chosen = gst_caps_can_intersect(offered, caps);
        gst_caps_unref(offered);
        if (!chosen) continue;
        self->mode = self->card->modes[i];
        return TRUE;
    }
    return FALSE;
}

static gboolean start(GstBaseSrc* base) {
    FakeCameraSource* self = FAKE_CAMERA_SOURCE(base);
    self->card = camera_card_read(self->path);
    self->reel = picture_reel_new();
    self->frame = 0;
    self->due = g_get_monotonic_time();
    if (self->card != NULL) return TRUE;
    GST_ELEMENT_ERROR(self, RESOURCE, NOT_FOUND, ("Cannot open the camera."), ("%s", self->path));
    return FALSE;
}

static gboolean stop(GstBaseSrc* base) {
    FakeCameraSource* self = FAKE_CAMERA_SOURCE(base);
    g_clear_pointer(&self->card, camera_card_free);
    g_clear_pointer(&self->reel, picture_reel_free);
    return TRUE;
}

static gboolean set_flushing(GstBaseSrc* base, gboolean flushing) {
    FakeCameraSource* self = FAKE_CAMERA_SOURCE(base);
    g_mutex_lock(&self->lock);
    self->flushing = flushing;
    g_cond_broadcast(&self->woken);
    g_mutex_unlock(&self->lock);
    return TRUE;
}

static gboolean unlock(GstBaseSrc* base) {
    return set_flushing(base, TRUE);
}
static gboolean unlock_stop(GstBaseSrc* base) {
    return set_flushing(base, FALSE);
}

/* Waits for the time of the next frame; FALSE when the source is to stop. */
static gboolean wait_for_turn(FakeCameraSource* self) {
    self->due =
        MAX(self->due + G_USEC_PER_SEC / MAX(1, self->mode.frames_per_second), g_get_monotonic_time());
    g_mutex_lock(&self->lock);
    while (!self->flushing && g_cond_wait_until(&self->woken, &self->lock, self->due)) {
    }
    const gboolean go_on = !self->flushing;
    g_mutex_unlock(&self->lock);
    return go_on;
}

static GstFlowReturn create(GstPushSrc* push, GstBuffer** buffer) {
    FakeCameraSource* self = FAKE_CAMERA_SOURCE(push);
    while (wait_for_turn(self)) {
        if (!camera_is_plugged_in(self->path)) {
            GST_ELEMENT_ERROR(self, RESOURCE, READ, ("The camera was pulled out."), ("%s", self->path));
            return GST_FLOW_ERROR;
        }
        if (camera_is_stalled(self->path)) continue;
        const GByteArray* bytes = picture_reel_frame(self->reel, self->card, &self->mode, self->frame++);
        if (bytes == NULL) continue;
        *buffer = gst_buffer_new_allocate(NULL, bytes->len, NULL);
        gst_buffer_fill(*buffer, 0, bytes->data, bytes->len);
        return GST_FLOW_OK;
    }
    return GST_FLOW_FLUSHING;
}

static void set_property(GObject* object, guint id, const GValue* value, GParamSpec* spec) {
    if (id != PROPERTY_CARD) {
        G_OBJECT_WARN_INVALID_PROPERTY_ID(object, id, spec);
        return;
    }
    g_free(FAKE_CAMERA_SOURCE(object)->path);
    FAKE_CAMERA_SOURCE(object)->path = g_value_dup_string(value);
}

static void finalize(GObject* object) {
    FakeCameraSource* self = FAKE_CAMERA_SOURCE(object);
    g_free(self->path);
    g_mutex_clear(&self->lock);
    g_cond_clear(&self->woken);
    G_OBJECT_CLASS(fake_camera_source_parent_class)->finalize(object);
}

static void fake_camera_source_class_init(FakeCameraSourceClass* klass) {
    GObjectClass* object = G_OBJECT_CLASS(klass);
    object->set_property = set_property;
    object->finalize = finalize;
    g_object_class_install_property(object, PROPERTY_CARD,
                                    g_param_spec_string("card", "Card", "Path of the .camera file", NULL,
                                                        G_PARAM_WRITABLE | G_PARAM_STATIC_STRINGS));
    gst_element_class_add_static_pad_template(GST_ELEMENT_CLASS(klass), &source_template);
    gst_element_class_set_static_metadata(GST_ELEMENT_CLASS(klass), "Fake camera", "Source/Video",
                                          "Shows pictures of a folder as a webcam would", "Tholepin");
    GstBaseSrcClass* base = GST_BASE_SRC_CLASS(klass);
    base->get_caps = get_caps;
    base->set_caps = set_caps;
    base->start = start;
    base->stop = stop;
    base->unlock = unlock;
    base->unlock_stop = unlock_stop;
    GST_PUSH_SRC_CLASS(klass)->create = create;
}

static void fake_camera_source_init(FakeCameraSource* self) {
    g_mutex_init(&self->lock);
    g_cond_init(&self->woken);
    gst_base_src_set_live(GST_BASE_SRC(self), TRUE);
    gst_base_src_set_format(GST_BASE_SRC(self), GST_FORMAT_TIME);
    gst_base_src_set_do_timestamp(GST_BASE_SRC(self), TRUE);
}
