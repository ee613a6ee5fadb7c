// modes.c - `lullwise modes`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/modes/modes.h"

#include "answer/asked_flight.h"

const lw_question lw_question_modes = {
    .name = "modes",
    .summary = "Is she steady, what swings, and how much more gearing until the wand's loop does.",
    .takes = LW_INPUT_OPTIONS " " LW_FLIGHT_OPTIONS " json",
    .doc =
        "Disturbs a steady flight a little and tells what becomes of it: each motion that dies "
        "away or grows by itself, with its swing, how long it takes to be half gone, and what "
        "goes together in it; once as the sailor sails, once left alone. Then how much "
        "more gearing, or what lag of the wand, makes ride height and pitch swing by "
        "themselves. The flight is that of `lullwise fly` with the same options. Ends with 1 "
        "when there is no balance.",
    .size = sizeof(lw_disturbed),
    .begin = lw_disturbed_begin,
    .end = lw_disturbed_end,
    .is_answered = lw_disturbed_is_answered,
    .tell = lw_disturbed_tell,
    .work = "one flight, and the motions about it",
};
