// range.c - `lullwise range`: what is asked.
// SPDX-License-Identifier: MIT

#include "answer/range/range.h"

const lw_question lw_question_range = {
    .name = "range",
    .summary = "From what wind each pin flies, up to what wind it is held, and what ends it.",
    .takes = "boat sailor day learned set pin puff svg width force json",
    .doc =
        "Works out each pin upwind, on a reach and downwind. Takes off: least wind that lifts her "
        "through the hump on that course. Stays up: least wind in which she keeps flying. Held "
        "to: greatest wind that keeps all margins, the rudder wound for it, also when it comes as "
        "a puff at unchanged turns. The puff is the day's puff above its mean, or --puff. --svg "
        "draws these winds with the day's lull, mean and puff. Ends with 1 when no pin flies at "
        "all.",
    .size = sizeof(lw_ranged),
    .begin = lw_ranged_begin,
    .steps = lw_ranged_steps,
    .step = lw_ranged_step,
    .are_apart = lw_always_apart,
    .part = sizeof(lw_ranged_one),
    .give = lw_ranged_give,
    .take = lw_ranged_take,
    .is_answered = lw_ranged_is_answered,
    .tell = lw_ranged_tell,
    .draw = lw_ranged_draw,
    .work = "every pin on every course",
};
