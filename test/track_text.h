// track_text.h - a track read from a text at hand.
// SPDX-License-Identifier: MIT
//
// Define _POSIX_C_SOURCE as 200809L before the first include.

#ifndef LW_TEST_TRACK_TEXT_H
#define LW_TEST_TRACK_TEXT_H

#include <stdio.h>
#include <string.h>

#include "records/track/track_file.h"

typedef struct track_text {
    lw_track_file file;
    lw_faults faults;
    bool is_read;
} track_text;

static inline void track_text_free(track_text *t)
{
    lw_track_file_free(&t->file);
    lw_faults_free(&t->faults);
}

// Reads and settles; `latest`: the day after which points are later than today.
static inline track_text track_bytes(const char *bytes, size_t length, double latest)
{
    track_text t = {.file = {.latest = latest}};
    FILE *stream = length ? fmemopen((void *)bytes, length, "rb") : fopen("/dev/null", "rb");
    t.is_read = lw_track_file_stream(&t.file, stream, "file", &t.faults) &&
                lw_track_file_settle(&t.file, "file", &t.faults);
    fclose(stream);
    return t;
}

static inline track_text track_of(const char *text) { return track_bytes(text, strlen(text), 0.0); }

// What is read is kept, or counted once as dropped.
static inline bool track_text_adds_up(const lw_track_file *file)
{
    const size_t *counts = file->counts;
    return counts[LW_TRACK_KEPT] == file->count &&
           counts[LW_TRACK_READ] == counts[LW_TRACK_KEPT] + counts[LW_TRACK_REPEATS] +
                                        counts[LW_TRACK_WILD] + counts[LW_TRACK_BROKEN] +
                                        counts[LW_TRACK_WITHOUT_TIME] +
                                        counts[LW_TRACK_WITHOUT_FIX];
}

#endif
