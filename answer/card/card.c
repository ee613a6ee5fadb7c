// card.c - `lullwise card`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/card/card.h"

const lw_question lw_question_card = {
    .name = "card",
    .summary = "A small card to take afloat: pin and turns by wind, signs, cautions.",
    .takes = LW_INPUT_OPTIONS " second season paper date svg pdf png force json",
    .doc =
        "Tells for one boat and one or two sailors what is carried: which pin from which lull; "
        "rudder turns upwind, on a reach and downwind for each pin, for speed and to hold most; "
        "take-off and hold winds; signs with their first change; when to stop; cautions. For the "
        "day as `lullwise pick` ranks it, by rides; with --season for a span of winds, by steady "
        "flight alone. --svg FILE writes the first page there and the second beside it: card.svg "
        "and card-2.svg. Ends with 1 when no pin flies; the card says so.",
    .size = sizeof(lw_carded),
    .begin = lw_carded_begin,
    .steps = lw_carded_steps,
    .step = lw_carded_step,
    .are_apart = lw_always_apart,
    .part = sizeof(lw_card_part),
    .give = lw_carded_give,
    .take = lw_carded_take,
    .end = lw_carded_end,
    .is_answered = lw_carded_is_answered,
    .tell = lw_carded_tell,
    .draw = lw_carded_draw,
    .draw_back = lw_carded_draw_back,
    .work = "every pin on every course, and rides",
};
