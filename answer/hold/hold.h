// hold.h - `lullwise hold`: the wind builds; hold the pin that is in the boat, or stop and change
// it.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_HOLD_H
#define LW_ANSWER_HOLD_H

#include "answer/question.h"
#include "answer/words/picked.h"
#include "lullwise/hold.h"

typedef struct lw_held {
    lw_picked picked;    // of the day as it is now
    lw_outlook outlook;  // the picked one's
    lw_hold hold;
    double most_turns[LW_PINS_MOST];  // that hold most in the wind at the finish; NAN: none
} lw_held;

bool lw_held_stops(const lw_held *held);  // a stop pays, here or later on

// The answer in words, a sentence or two.
#define LW_HELD_LENGTH 500
void lw_held_answer(const lw_held *held, char text[LW_HELD_LENGTH]);

// The faces of the question.
bool lw_held_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                   lw_refusal *refusal);
size_t lw_held_steps(void *it);
void lw_held_step(void *it, size_t step);
void lw_held_give(const void *it, size_t step, void *part);
void lw_held_take(void *it, size_t step, const void *part);
void lw_held_end(void *it);
bool lw_held_is_answered(const void *it);
void lw_held_tell(const void *it, lw_teller *teller);

#endif
