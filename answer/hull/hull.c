// hull.c - `lullwise hull`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/hull/hull.h"

const lw_question lw_question_hull = {
    .name = "hull",
    .summary = "A hull afloat, and its resistance at each speed: friction and waves.",
    .takes = "boat sailor day set place offsets wigley length speed froude json",
    .doc =
        "Floats the boat's hull with the sailor aboard, level or with --place as that trims it, "
        "and works out friction and wave resistance over the speeds of --speed, as in --speed "
        "'1:8:0.5 kn', or of --froude, as in --froude 0.25:1.0:0.05. --offsets takes the lines "
        "from a file, and the weights from boat and sailor; --wigley takes a mathematical hull, "
        "for checks. Ends with 1 when the hull does not float so.",
    .size = sizeof(lw_hull_answer),
    .begin = lw_hull_answer_begin,
    .steps = lw_hull_answer_steps,
    .step = lw_hull_answer_step,
    .is_answered = lw_hull_answer_is_answered,
    .tell = lw_hull_answer_tell,
    .work = "resistance at each speed",
};
