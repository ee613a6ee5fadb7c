// held.h - one answer of `lullwise hold`: worked out, printed, as JSON.
// SPDX-License-Identifier: MIT

#ifndef LW_HELD_H
#define LW_HELD_H

#include <jansson.h>

#include "answer/words/picked.h"
#include "lullwise/hold.h"

typedef struct lw_held {
    lw_picked picked;  // of the day as it is now
    lw_hold hold;
} lw_held;

// The answer from the inputs and what is asked of the hold; the outlook is there.
void lw_held_work_out(lw_held *held);

void lw_held_print(const lw_held *held);
json_t *lw_held_json(const lw_held *held);

// The answer in words, a sentence or two.
#define LW_HELD_LENGTH 500
void lw_held_answer(const lw_held *held, char text[LW_HELD_LENGTH]);

#endif
