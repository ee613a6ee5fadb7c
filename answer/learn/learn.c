// learn.c - `lullwise learn`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/learn/learn.h"

const lw_question lw_question_learn = {
    .name = "learn",
    .summary = "What the logged days tell of the boat that a tape cannot, and what to try next.",
    .takes = "boat sailor day logbook output force json",
    .doc =
        "Holds the rudder turns of the logged days of this boat, with sailors of about this "
        "weight, against steady flight, their speeds, time flown and swims against rides, and "
        "learns from them what nobody can measure: incidences as they act, lift scale, drag area, "
        "sail power, chop and the sailor's skill; each with its error, what "
        "cannot be told apart, and how much better days that were left out are foreseen. -o FILE "
        "writes it for --learned of the other commands. With --day it also tells which trial "
        "would make the choice between the day's two fastest pins most sure. Ends with 1 when the "
        "days tell too little.",
    .size = sizeof(lw_taking),
    .begin = lw_taking_begin,
    .steps = lw_taking_steps,
    .step = lw_taking_step,
    .are_apart = lw_taking_are_apart,
    .end = lw_taking_end,
    .is_answered = lw_taking_is_answered,
    .tell = lw_taking_tell,
    .record = lw_taking_write,
    .release = lw_taking_release,
    .work = "the boat a little otherwise",
};
