// track.c - `lullwise track`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/track/track.h"

const lw_question lw_question_track = {
    .name = "track",
    .summary = "What a sailed track tells: speeds, wind, flights, swims, tacks and gybes.",
    .takes = "wind-from boat sailor day learned set pin svg geojson csv force json",
    .doc =
        "Reads tracks in GPX 1.0 or 1.1, NMEA 0183 or CSV, several as one, and counts what is "
        "wrong "
        "in them. The wind's direction is taken from --wind-from, from instruments, or from the "
        "sailing, with its error, where both tacks were sailed. With --boat she flies from the "
        "speed at which the model lifts her off, and the model's speeds stand beside those sailed; "
        "without it from 10 kn until she is below 8 kn. --csv writes the points as they were "
        "taken, "
        "--geojson a map, --svg a picture.",
    .size = sizeof(lw_tracked),
    .begin = lw_tracked_begin,
    .steps = lw_tracked_steps,
    .step = lw_tracked_step,
    .are_apart = lw_tracked_are_apart,
    .end = lw_tracked_end,
    .tell = lw_tracked_tell,
    .draw = lw_tracked_draw,
    .map = lw_tracked_map,
    .log = lw_tracked_log,
    .release = lw_tracked_release,
    .work = "the model's speeds",
};
