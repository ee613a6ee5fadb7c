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

static bool read_files(lw_track_file *file, const char *const *paths, lw_faults *faults)
{
    for (size_t n = 0; paths[n]; n++) {
        if (!lw_track_file_read(file, paths[n], faults)) return false;
    }
    return lw_track_file_settle(file, paths[0], faults);
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

bool lw_sailed_read(lw_sailed *sailed, double *begins, const char *const *paths,
                    bool (*wants_end)(void), lw_faults *faults)
{
    *begins = NAN;
    sailing *s = calloc(1, sizeof *s);
    if (!s) return lw_faults_no_memory(faults, paths[0]);
    s->file.wants_end = wants_end;
    bool is_read = read_files(&s->file, paths, faults);
    if (is_read) {
        s->track = (lw_track){.fixes = s->file.fixes,
                              .ways = calloc(s->file.count, sizeof *s->track.ways),
                              .count = s->file.count};
        is_read = s->track.ways || lw_faults_no_memory(faults, paths[0]);
    }
    if (is_read) *sailed = sailed_of(s);
    if (is_read && !s->file.lacks_date) *begins = s->file.points[0].time;
    free(s->track.ways);
    lw_track_file_free(&s->file);
    free(s);
    return is_read;
}
