// hold.c - `lullwise hold`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/hold/hold.h"

const lw_question lw_question_hold = {
    .name = "hold",
    .summary = "The wind builds: hold the pin that is in the boat, or stop and change it.",
    .takes = "boat sailor day learned set pin left builds-to stop json",
    .doc =
        "Weighs what is left of the race against a stop: time to the finish with the pin of --pin "
        "held and with each other pin, from rides in the same gusts, swims at the day's cost, "
        "while the mean wind goes evenly to that of --builds-to. Tells the break-even in miles and "
        "minutes left, the chance that a stop pays, when to stop if later is better, and the "
        "rudder turns of each pin here and at the finish. Ends with 1 when no pin flies.",
    .size = sizeof(lw_held),
    .begin = lw_held_begin,
    .steps = lw_held_steps,
    .step = lw_held_step,
    .are_apart = lw_always_apart,
    .part = sizeof(lw_outlook_part),
    .give = lw_held_give,
    .take = lw_held_take,
    .end = lw_held_end,
    .is_answered = lw_held_is_answered,
    .tell = lw_held_tell,
    .work = "every pin on every leg, and rides",
};
