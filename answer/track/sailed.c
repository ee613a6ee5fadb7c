// sailed.c - what a logged day keeps of its tracks.
// SPDX-License-Identifier: MIT

#include "answer/track/sailed.h"

#include <math.h>
#include <stdlib.h>

#include "answer/track/track.h"

// Room to work in.
typedef struct sailing {
    lw_track_file file;
    lw_track track;
    lw_track_room room;
    lw_track_event list[LW_TRACKED_EVENTS];
} sailing;

static bool read_files(lw_track_file *file, const lw_options *options, lw_faults *faults)
{
    const char *path, *first = lw_options_nth(options, "track", 0);
    file->wants_end = options->wants_end;
    for (size_t n = 0; (path = lw_options_nth(options, "track", n)); n++) {
        if (!lw_track_file_read(file, path, faults)) return false;
    }
    return lw_track_file_settle(file, first, faults);
}

static lw_sailed sailed_of(sailing *s)
{
    lw_track_summary summary;
    lw_track_events events = {.list = s->list, .room = LW_TRACKED_EVENTS};
    const lw_track_known known = {.given = NAN,
                                  .told = lw_tracked_told_wind(&s->file.wind),
                                  .limits = {LW_TRACK_UP, LW_TRACK_DOWN}};
    lw_track_summary_of(&s->track, &known, &s->room, &events, &summary);
    return lw_sailed_of(&s->track, &summary);
}

bool lw_sailed_read(lw_sailed *sailed, const lw_options *options, lw_faults *faults)
{
    sailing *s = calloc(1, sizeof *s);
    if (!s) return lw_faults_no_memory(faults, "--track");
    bool is_read = read_files(&s->file, options, faults);
    if (is_read) {
        s->track = (lw_track){.fixes = s->file.fixes,
                              .ways = calloc(s->file.count, sizeof *s->track.ways),
                              .count = s->file.count};
        is_read = s->track.ways || lw_faults_no_memory(faults, "--track");
    }
    if (is_read) *sailed = sailed_of(s);
    free(s->track.ways);
    lw_track_file_free(&s->file);
    free(s);
    return is_read;
}
