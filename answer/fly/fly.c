// fly.c - `lullwise fly`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/fly/fly.h"

#include "answer/asked_flight.h"

const lw_question lw_question_fly = {
    .name = "fly",
    .summary = "One steady flight: speed, trim, forces, and what runs out first.",
    .takes = LW_INPUT_OPTIONS " " LW_FLIGHT_OPTIONS " svg width force json",
    .doc =
        "Balances the boat in one wind on one heading. Without --wind it is the day's mean, "
        "without --course or --heading upwind with the best VMG, without --pin the middle one. "
        "Rudder turns, heel and place are chosen by --trim, for speed without it, with all "
        "margins kept in the wind and in the day's puff; on the hull the rudder stays at the mark "
        "if it can. --turns, --heel and --place fix them. --svg draws the boat from the side with "
        "the forces on "
        "her. Ends with 1 when there is no balance.",
    .size = sizeof(lw_fly),
    .begin = lw_fly_begin,
    .steps = lw_fly_steps,
    .step = lw_fly_step,
    .is_answered = lw_fly_is_answered,
    .tell = lw_fly_tell,
    .draw = lw_fly_draw,
    .work = "one flight",
};
