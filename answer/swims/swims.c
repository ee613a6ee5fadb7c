// swims.c - `lullwise swims`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/swims/swims.h"

const lw_question lw_question_swims = {
    .name = "swims",
    .summary = "How often each pin swims in winds around the day's, from rides in gusts and chop.",
    .takes = "boat sailor day learned set pin json",
    .doc =
        "Sails each pin upwind, on a reach and downwind through the day's gusts and chop, in mean "
        "winds from well below the day's to well above, many rides in each, and counts the swims. "
        "A smooth curve through the counts gives swims an hour with its standard error, and the "
        "puffs up to which it is held by rides. Ends with 1 when no pin flies at all.",
    .size = sizeof(lw_counted),
    .begin = lw_counted_begin,
    .steps = lw_counted_steps,
    .step = lw_counted_step,
    .are_apart = lw_always_apart,
    .part = sizeof(lw_outlook_part),
    .give = lw_counted_give,
    .take = lw_counted_take,
    .end = lw_counted_end,
    .is_answered = lw_counted_is_answered,
    .tell = lw_counted_tell,
    .work = "rides of every pin on three courses",
};
