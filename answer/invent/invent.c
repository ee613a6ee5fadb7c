// invent.c - `lullwise invent`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/invent/invent.h"

const lw_question lw_question_invent = {
    .name = "invent",
    .summary = "Write an invented season, days and tracks, to try `learn` on.",
    .takes = "boat sailor day days seed force json",
    .doc =
        "Rides a boat whose hidden quantities differ from her file, by chance and within their "
        "errors, on days in winds from 8 to 18 kn, and writes into FOLDER what would have been "
        "noted "
        "of "
        "them with errors by chance: days.csv for `lullwise log import`, a track of each day for "
        "`lullwise track`, and truth.yaml with the hidden quantities, as --learned takes it. "
        "Nothing of it happened, and its files say so. The same --seed is the same season.",
    .size = sizeof(lw_inventing),
    .begin = lw_inventing_begin,
    .steps = lw_inventing_steps,
    .step = lw_inventing_step,
    .are_apart = lw_inventing_are_apart,
    .end = lw_inventing_end,
    .is_answered = lw_inventing_is_answered,
    .tell = lw_inventing_tell,
    .release = lw_inventing_release,
    .work = "invented days",
};
