// track_hash.c - a track's file named in a day, with a hash of its bytes.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "records/logbook/track_hash.h"

#include <stdio.h>
#include <string.h>
#include <sys/stat.h>

#include "records/record_hash.h"

static bool hash_file(FILE *file, uint64_t *hash)
{
    unsigned char bytes[16384];
    size_t count;
    *hash = LW_HASH_EMPTY;
    while ((count = fread(bytes, 1, sizeof bytes, file)) > 0)
        *hash = lw_hash_add(*hash, bytes, count);
    return !ferror(file);
}

static bool is_plain(const char *path)
{
    struct stat about;
    return stat(path, &about) == 0 && S_ISREG(about.st_mode);
}

// The next of the day's tracks, by its name; NULL with a sentence where there cannot be one.
static lw_day_track *named(lw_entry *entry, const char *name, const char **why)
{
    char tame[LW_TRACK_FILE_ROOM];
    lw_text_tame(tame, sizeof tame, name);
    *why = "a name that cannot be shown, or is too long";
    if (strcmp(tame, name) != 0) return NULL;
    *why = "8 tracks at most are kept of a day";
    if (entry->track_count == LW_DAY_TRACKS_MOST) return NULL;
    lw_day_track *track = &entry->tracks[entry->track_count];
    LW_FIT(track->file, "%s", name);
    return track;
}

bool lw_track_hash(lw_entry *entry, const char *path, const char **why)
{
    const char *slash = strrchr(path, '/');
    lw_day_track *track = named(entry, slash ? slash + 1 : path, why);
    if (!track) return false;
    *why = "there is no such file, or it may not be read";
    FILE *file = is_plain(path) ? fopen(path, "rb") : NULL;
    if (!file) return false;
    const bool is_read = hash_file(file, &track->hash);
    fclose(file);
    entry->track_count += is_read;
    return is_read;
}

bool lw_track_hash_bytes(lw_entry *entry, const char *name, const void *bytes, size_t count)
{
    const char *why;
    lw_day_track *track = named(entry, name, &why);
    if (!track) return false;
    track->hash = lw_hash_add(LW_HASH_EMPTY, bytes, count);
    entry->track_count++;
    return true;
}
