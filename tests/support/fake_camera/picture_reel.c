#include "picture_reel.h"

#include <glib/gstdio.h>
#include <stdio.h>
#include <string.h>

PictureReel* picture_reel_new(void) {
    PictureReel* reel = g_new0(PictureReel, 1);
    reel->bytes = g_byte_array_new();
    return reel;
}

void picture_reel_free(PictureReel* reel) {
    g_free(reel->shown);
    g_byte_array_unref(reel->bytes);
    g_free(reel);
}

static gint by_name(gconstpointer a, gconstpointer b) {
    return strcmp(*(char* const*)a, *(char* const*)b);
}

static char* picture_at(const CameraCard* card, const char* ending, guint64 frame) {
    GPtrArray* names = g_ptr_array_new_with_free_func(g_free);
    GDir* dir = g_dir_open(card->pictures, 0, NULL);
    for (const char* name = dir ? g_dir_read_name(dir) : NULL; name != NULL; name = g_dir_read_name(dir))
        if (g_str_has_suffix(name, ending))
            g_ptr_array_add(names, g_build_filename(card->pictures, name, NULL));
    if (dir != NULL) g_dir_close(dir);
    g_ptr_array_sort(names, by_name);
    char* path = names->len == 0 ? NULL : g_strdup(names->pdata[(frame / (guint)card->hold) % names->len]);
    g_ptr_array_unref(names);
    return path;
}

static char* identity_of(const char* path) {
    GStatBuf about;
    if (path == NULL || g_stat(path, &about) != 0) return g_strdup("none");
    return g_strdup_printf("%s %ld %ld.%ld", path, (long)about.st_size, (long)about.st_mtim.tv_sec,
                           (long)about.st_mtim.tv_nsec);
}

typedef struct {
    const guint8* rgb;
    int width;
    int height;
} Ppm;

static gboolean open_ppm(const char* contents, gsize length, Ppm* ppm) {
    int most = 0;
    int header = 0;
    if (sscanf(contents, "P6 %d %d %d%n", &ppm->width, &ppm->height, &most, &header) != 3 || most != 255)
        return FALSE;
    ++header; /* the one blank before the pixels */
    ppm->rgb = (const guint8*)contents + header;
    return length >= (gsize)header + 3 * (gsize)ppm->width * (gsize)ppm->height;
}

/* Mid grey where the picture does not reach. */
static const guint8* pixel_of(const Ppm* ppm, int x, int y) {
    static const guint8 grey[3] = {128, 128, 128};
    if (x >= ppm->width || y >= ppm->height) return grey;
    return ppm->rgb + 3 * ((gsize)y * (gsize)ppm->width + (gsize)x);
}

/* ITU-R BT.601, video range. */
static guint8 luma_of(const guint8* p) {
    return (guint8)(((66 * p[0] + 129 * p[1] + 25 * p[2] + 128) >> 8) + 16);
}
static guint8 cb_of(const guint8* p) {
    return (guint8)(((-38 * p[0] - 74 * p[1] + 112 * p[2] + 128) >> 8) + 128);
}
static guint8 cr_of(const guint8* p) {
    return (guint8)(((112 * p[0] - 94 * p[1] - 18 * p[2] + 128) >> 8) + 128);
}

static void pack_yuy2(const Ppm* ppm, const CameraMode* mode, guint8* to) {
    for (int y = 0; y < mode->height; ++y) {
        for (int x = 0; x < mode->width; x += 2) {
            const guint8* left = pixel_of(ppm, x, y);
            *to++ = luma_of(left);
            *to++ = cb_of(left);
            *to++ = luma_of(pixel_of(ppm, x + 1, y));
            *to++ = cr_of(left);
        }
    }
}

static void pack_nv12(const Ppm* ppm, const CameraMode* mode, guint8* to) {
    for (int y = 0; y < mode->height; ++y)
        for (int x = 0; x < mode->width; ++x)
            *to++ = luma_of(pixel_of(ppm, x, y));
    for (int y = 0; y < mode->height; y += 2) {
        for (int x = 0; x < mode->width; x += 2) {
            *to++ = cb_of(pixel_of(ppm, x, y));
            *to++ = cr_of(pixel_of(ppm, x, y));
        }
    }
}

static void fill_raw(GByteArray* bytes, const CameraMode* mode, const char* contents, gsize length) {
    Ppm ppm = {NULL, 0, 0};
    if (contents == NULL || !open_ppm(contents, length, &ppm)) ppm.width = ppm.height = 0;
    const guint pixels = (guint)mode->width * (guint)mode->height;
    const gboolean packed = strcmp(mode->format, "YUY2") == 0;
    g_byte_array_set_size(bytes, packed ? 2 * pixels : pixels + pixels / 2);
    if (packed)
        pack_yuy2(&ppm, mode, bytes->data);
    else
        pack_nv12(&ppm, mode, bytes->data);
}

const GByteArray* picture_reel_frame(PictureReel* reel, const CameraCard* card, const CameraMode* mode,
                                     guint64 frame) {
    const gboolean jpeg = strcmp(mode->format, "MJPG") == 0;
    char* path = picture_at(card, jpeg ? ".jpg" : ".ppm", frame);
    char* identity = identity_of(path);
    if (g_strcmp0(identity, reel->shown) != 0) {
        char* contents = NULL;
        gsize length = 0;
        if (path != NULL && !g_file_get_contents(path, &contents, &length, NULL)) contents = NULL;
        g_byte_array_set_size(reel->bytes, 0);
        if (!jpeg)
            fill_raw(reel->bytes, mode, contents, length);
        else if (contents != NULL)
            g_byte_array_append(reel->bytes, (const guint8*)contents, (guint)length);
        g_free(contents);
        g_free(reel->shown);
        reel->shown = g_strdup(identity);
    }
    g_free(identity);
    g_free(path);
    return reel->bytes->len == 0 ? NULL : reel->bytes;
}
