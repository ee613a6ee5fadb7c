// sensitivity.c - `lullwise sensitivity`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/sensitivity/sensitivity.h"

const lw_question lw_question_sensitivity = {
    .name = "sensitivity",
    .summary = "Which measurement of the boat and the sailor is worth taking better.",
    .takes = LW_INPUT_OPTIONS " json",
    .doc =
        "Moves each measurement of the boat and the sailor by its error, more and less, and tells "
        "what becomes of the day's choice: by how much that changes the puffs in which the best "
        "pin is held and its time round the course, and which pin would be first instead. What "
        "matters most comes first; there the best pin's range is searched anew, for the others "
        "heel, place and heading stay as they were. Ends with 1 when nothing flies.",
    .size = sizeof(lw_sensed),
    .begin = lw_sensed_begin,
    .steps = lw_sensed_steps,
    .step = lw_sensed_step,
    .part = sizeof(lw_sensed_part),
    .give = lw_sensed_give,
    .take = lw_sensed_take,
    .end = lw_sensed_end,
    .is_answered = lw_sensed_is_answered,
    .tell = lw_sensed_tell,
    .work = "what each measurement does",
};
