// fuzz_track.h - feeds any bytes to a reader of tracks, and what it takes to the engine.
// SPDX-License-Identifier: MIT
//
// Claims: nothing crashes; what is refused has a fault with a sentence; what is read is kept or
// counted; what is taken has times that rise, and its speeds are numbers.
//
// Define _POSIX_C_SOURCE as 200809L before the first include.

#ifndef LW_TEST_FUZZ_TRACK_H
#define LW_TEST_FUZZ_TRACK_H

#include <math.h>
#include <stdint.h>
#include <stdlib.h>

#include "lullwise/track_events.h"
#include "records/track/reading.h"
#include "test/track_text.h"

#define CLAIM(claim) \
    if (!(claim)) abort()

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);

static void claim_track(const lw_track_file *file)
{
    static lw_track_room room;
    static lw_track_event list[100];
    lw_track_events events = {.list = list, .room = 100};
    lw_track track = {file->fixes, calloc(file->count, sizeof(lw_track_way)), file->count};
    CLAIM(track.ways != NULL);
    lw_track_smooth(&track);
    for (size_t i = 0; i < track.count; i++) {
        CLAIM(i == 0 || track.fixes[i].time > track.fixes[i - 1].time);
        CLAIM(isfinite(track.fixes[i].east) && isfinite(track.fixes[i].north));
        CLAIM(isfinite(track.ways[i].speed) && track.ways[i].speed >= 0.0);
        CLAIM(track.ways[i].course >= 0.0 && track.ways[i].course < 2.0 * LW_PI);
    }
    const lw_track_wind wind = lw_track_wind_of(&track, &room);
    CLAIM(!wind.is_found || (isfinite(wind.from) && wind.error > 0.0));
    lw_track_fly(&track, (lw_track_limits){LW_TRACK_UP, LW_TRACK_DOWN}, &events);
    if (wind.is_found) lw_track_turn(&track, wind.from, &events);
    const double best = lw_track_best_over(&track, 2.0);
    CLAIM(isnan(best) || best >= 0.0);
    free(track.ways);
}

// What a reader makes of them.
static void feed(bool (*reader)(lw_track_reading *), const uint8_t *bytes, size_t length)
{
    lw_track_file file = {.latest = 2e9};
    lw_faults faults = {0};
    FILE *stream = length ? fmemopen((void *)bytes, length, "rb") : NULL;
    if (!stream) return;
    lw_track_reading *r = calloc(1, sizeof *r);
    CLAIM(r != NULL);
    *r = (lw_track_reading){
        .file = &file, .stream = stream, .path = "file", .faults = &faults, .starts = true};
    bool is_taken = false;
    if (lw_track_chunk(r)) is_taken = reader(r);
    is_taken = is_taken && lw_track_file_settle(&file, "file", &faults);
    CLAIM(is_taken == (faults.fault_count == 0));
    for (size_t i = 0; i < faults.count; i++) CLAIM(faults.list[i].sentence[0]);
    if (is_taken) CLAIM(track_text_adds_up(&file));
    if (is_taken) claim_track(&file);
    fclose(stream);
    free(r);
    lw_faults_free(&faults);
    lw_track_file_free(&file);
}

#endif
