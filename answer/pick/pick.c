// pick.c - `lullwise pick`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/pick/pick.h"

const lw_question lw_question_pick = {
    .name = "pick",
    .summary = "Which pin for this day, this sailor and this aim, and why.",
    .takes = LW_INPUT_OPTIONS " against json",
    .doc =
        "Ranks the pins for the day's lulls and puffs, sea and course: expected time, share of the "
        "time flying, swims, the winds in which each takes off, stays up and is held, and the "
        "reason for its place; then the order in 2 kn less and 2 kn more wind, rudder turns "
        "for speed and to hold most, what a pin with less lift costs and buys, and cautions. "
        "--against "
        "answers twice, side by side. Ends with 1 when nothing flies.",
    .size = sizeof(lw_pick),
    .begin = lw_pick_begin,
    .steps = lw_pick_steps,
    .step = lw_pick_step,
    .are_apart = lw_always_apart,
    .part = sizeof(lw_outlook_part),
    .give = lw_pick_give,
    .take = lw_pick_take,
    .end = lw_pick_end,
    .is_answered = lw_pick_is_answered,
    .tell = lw_pick_tell,
    .work = "every pin on every leg, and rides",
};
