// ride.c - `lullwise ride`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/ride/ride.h"

#include "answer/asked_flight.h"

const lw_question lw_question_ride = {
    .name = "ride",
    .summary = "A ride through the day's gusts and chop: what happens, and how often.",
    .takes = "boat sailor day learned set " LW_FLIGHT_OPTIONS
             " minutes seed runs error every csv svg force json",
    .doc =
        "Sails boat and sailor for some minutes through the day's lulls, puffs and waves, trimmed "
        "for the mean wind, the rudder wound after the wind of the last minute unless --turns "
        "fixes it, and tells what happens: touches, breaches, air on the foils, drops, swims. "
        "Without --pin it is the middle one, without --course or --heading upwind with the best "
        "VMG. --wind is the mean wind instead of the day's; lull and puff go with it. --csv and "
        "--svg keep the history. --runs sails many rides on all cores and gives each rate with "
        "its standard error. Ctrl-C ends with what there is.",
    .size = sizeof(lw_rode),
    .begin = lw_rode_begin,
    .steps = lw_rode_steps,
    .step = lw_rode_step,
    .are_apart = lw_rode_are_apart,
    .end = lw_rode_end,
    .release = lw_rode_release,
    .is_answered = lw_rode_is_answered,
    .tell = lw_rode_tell,
    .draw = lw_rode_draw,
    .log = lw_rode_log,
    .work = "rides",
};
