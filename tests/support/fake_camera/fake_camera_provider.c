/* The test-only plugin: webcams that are files. See camera_card.h for what may stand in the folder. */

#include "camera_card.h"
#include "fake_camera_source.h"

#include <gst/gst.h>
#include <string.h>

#define FOLDER_VARIABLE "THOLEPIN_FAKE_CAMERAS"

typedef struct {
    GstDevice parent;
    char* card;
} FakeCameraDevice;

typedef struct {
    GstDeviceClass parent_class;
} FakeCameraDeviceClass;

GType fake_camera_device_get_type(void);
G_DEFINE_TYPE(FakeCameraDevice, fake_camera_device, GST_TYPE_DEVICE)

static GstElement* create_element(GstDevice* device, const char* name) {
    GstElement* source = gst_element_factory_make("fakecamerasource", name);
    g_object_set(source, "card", ((FakeCameraDevice*)device)->card, NULL);
    return source;
}

static void device_finalize(GObject* object) {
    g_free(((FakeCameraDevice*)object)->card);
    G_OBJECT_CLASS(fake_camera_device_parent_class)->finalize(object);
}

static void fake_camera_device_class_init(FakeCameraDeviceClass* klass) {
    G_OBJECT_CLASS(klass)->finalize = device_finalize;
    GST_DEVICE_CLASS(klass)->create_element = create_element;
}

static void fake_camera_device_init(FakeCameraDevice* self) {
    self->card = NULL;
}

/* NULL when the card has gone or makes no sense. */
static GstDevice* device_of(const char* card_path) {
    CameraCard* card = camera_card_read(card_path);
    if (card == NULL) return NULL;
    GstCaps* caps = fake_camera_caps(card_path);
    GstStructure* properties = gst_structure_new("fake-camera", "card", G_TYPE_STRING, card_path, NULL);
    FakeCameraDevice* device =
        g_object_new(fake_camera_device_get_type(), "display-name", card->name, "device-class",
                     "Video/Source", "caps", caps, "properties", properties, NULL);
    device->card = g_strdup(card_path);
    gst_structure_free(properties);
    gst_caps_unref(caps);
    camera_card_free(card);
    return GST_DEVICE(device);
}

typedef struct {
    GstDeviceProvider parent;
    GThread* watcher;
    GHashTable* plugged; /* card path to GstDevice */
    gint stopping;
} FakeCameraProvider;

typedef struct {
    GstDeviceProviderClass parent_class;
} FakeCameraProviderClass;

GType fake_camera_provider_get_type(void);
G_DEFINE_TYPE(FakeCameraProvider, fake_camera_provider, GST_TYPE_DEVICE_PROVIDER)

static GList* probe(GstDeviceProvider* provider) {
    (void)provider;
    GList* devices = NULL;
    GList* cards = camera_cards_in(g_getenv(FOLDER_VARIABLE));
    for (GList* at = cards; at != NULL; at = at->next) {
        GstDevice* device = device_of(at->data);
        if (device != NULL) devices = g_list_append(devices, gst_object_ref_sink(device));
    }
    g_list_free_full(cards, g_free);
    return devices;
}

static void take_out_missing(FakeCameraProvider* self) {
    GHashTableIter at;
    gpointer card;
    gpointer device;
    g_hash_table_iter_init(&at, self->plugged);
    while (g_hash_table_iter_next(&at, &card, &device)) {
        if (camera_is_plugged_in(card)) continue;
        gst_device_provider_device_remove(GST_DEVICE_PROVIDER(self), device);
        g_hash_table_iter_remove(&at);
    }
}

static void put_in_new(FakeCameraProvider* self) {
    GList* cards = camera_cards_in(g_getenv(FOLDER_VARIABLE));
    for (GList* at = cards; at != NULL; at = at->next) {
        if (g_hash_table_contains(self->plugged, at->data)) continue;
        GstDevice* device = device_of(at->data);
        if (device == NULL) continue;
        g_hash_table_insert(self->plugged, g_strdup(at->data), gst_object_ref_sink(device));
        gst_device_provider_device_add(GST_DEVICE_PROVIDER(self), device);
    }
    g_list_free_full(cards, g_free);
}

static gpointer watch(gpointer data) {
    FakeCameraProvider* self = data;
    while (!g_atomic_int_get(&self->stopping)) {
        g_usleep(20000);
        take_out_missing(self);
        put_in_new(self);
    }
    return NULL;
}

static gboolean provider_start(GstDeviceProvider* provider) {
    FakeCameraProvider* self = (FakeCameraProvider*)provider;
    self->plugged = g_hash_table_new_full(g_str_hash, g_str_equal, g_free, gst_object_unref);
    put_in_new(self);
    g_atomic_int_set(&self->stopping, 0);
    self->watcher = g_thread_new("fake-cameras", watch, self);
    return TRUE;
}

static void provider_stop(GstDeviceProvider* provider) {
    FakeCameraProvider* self = (FakeCameraProvider*)provider;
    g_atomic_int_set(&self->stopping, 1);
    g_clear_pointer(&self->watcher, g_thread_join);
    g_clear_pointer(&self->plugged, g_hash_table_unref);
}

static void fake_camera_provider_class_init(FakeCameraProviderClass* klass) {
    GstDeviceProviderClass* provider = GST_DEVICE_PROVIDER_CLASS(klass);
    provider->probe = probe;
    provider->start = provider_start;
    provider->stop = provider_stop;
    gst_device_provider_class_set_static_metadata(provider, "Fake cameras", "Source/Video",
                                                  "Webcams that are files of a folder", "Tholepin");
}

static void fake_camera_provider_init(FakeCameraProvider* self) {
    self->watcher = NULL;
}

static gboolean plugin_init(GstPlugin* plugin) {
    return gst_element_register(plugin, "fakecamerasource", GST_RANK_NONE, FAKE_TYPE_CAMERA_SOURCE) &&
           gst_device_provider_register(plugin, "fakecameraprovider", GST_RANK_PRIMARY,
                                        fake_camera_provider_get_type());
}

#define PACKAGE "tholepin"
GST_PLUGIN_DEFINE(GST_VERSION_MAJOR, GST_VERSION_MINOR, fakecamera, "Webcams that are files, for tests",
                  plugin_init, "1.0", "unknown", PACKAGE, "https://localhost/")
