#include "camera_card.h"

#include <stdio.h>
#include <string.h>

static void read_modes(CameraCard* card, GKeyFile* file) {
    gsize count = 0;
    char** modes = g_key_file_get_string_list(file, "camera", "modes", &count, NULL);
    for (gsize i = 0; i < count && card->mode_count < MOST_MODES; ++i) {
        CameraMode* mode = &card->modes[card->mode_count];
        if (sscanf(modes[i], "%7[A-Z0-9],%d,%d,%d", mode->format, &mode->width, &mode->height,
                   &mode->frames_per_second) == 4)
            ++card->mode_count;
    }
    g_strfreev(modes);
}

CameraCard* camera_card_read(const char* path) {
    GKeyFile* file = g_key_file_new();
    CameraCard* card = NULL;
    if (g_key_file_load_from_file(file, path, G_KEY_FILE_NONE, NULL)) {
        card = g_new0(CameraCard, 1);
        card->path = g_strdup(path);
        card->name = g_key_file_get_string(file, "camera", "name", NULL);
        card->pictures = g_key_file_get_string(file, "camera", "pictures", NULL);
        card->hold = MAX(1, g_key_file_get_integer(file, "camera", "hold", NULL));
        read_modes(card, file);
    }
    g_key_file_free(file);
    if (card != NULL && (card->name == NULL || card->pictures == NULL || card->mode_count == 0)) {
        camera_card_free(card);
        card = NULL;
    }
    return card;
}

void camera_card_free(CameraCard* card) {
    if (card == NULL) return;
    g_free(card->path);
    g_free(card->name);
    g_free(card->pictures);
    g_free(card);
}

gboolean camera_is_plugged_in(const char* path) {
    return g_file_test(path, G_FILE_TEST_EXISTS);
}

gboolean camera_is_stalled(const char* path) {
    char* stem = g_strndup(path, strlen(path) - strlen(".camera"));
    char* stall = g_strconcat(stem, ".stall", NULL);
    const gboolean stalled = g_file_test(stall, G_FILE_TEST_EXISTS);
    g_free(stall);
    g_free(stem);
    return stalled;
}

GList* camera_cards_in(const char* folder) {
    GList* cards = NULL;
    GDir* dir = folder == NULL ? NULL : g_dir_open(folder, 0, NULL);
    if (dir == NULL) return NULL;
    for (const char* name = g_dir_read_name(dir); name != NULL; name = g_dir_read_name(dir))
        if (g_str_has_suffix(name, ".camera"))
            cards = g_list_insert_sorted(cards, g_build_filename(folder, name, NULL), (GCompareFunc)strcmp);
    g_dir_close(dir);
    return cards;
}
