// why.c - `lullwise why`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/why/why.h"

const lw_question lw_question_why = {
    .name = "why",
    .summary = "The boat does this: what it is likely to be, and what to move first.",
    .takes = LW_INPUT_OPTIONS
    " sign pin wind heading course turns place heel bow ride-height "
    "wand speed svg width force json",
    .doc =
        "Tell with --sign what the boat does, as often as there are signs, and what is known: pin, "
        "wind, heading or course, turns, place, heel. What is not told is taken as it should be in "
        "this wind. Each cause is one thing off, weighed by how far it must be off to show these "
        "signs and by how often it is. What to move comes afloat first, then ashore, the "
        "smallest step that the model says is enough. --bow, --ride-height, --wand and --speed "
        "tell what a photo or an instrument reads; they tell causes apart that look alike. "
        "--svg draws the boat now and then.",
    .size = sizeof(lw_why),
    .begin = lw_why_begin,
    .end = lw_why_end,
    .is_answered = lw_why_is_answered,
    .tell = lw_why_tell,
    .draw = lw_why_draw,
    .work = "signs",
};
