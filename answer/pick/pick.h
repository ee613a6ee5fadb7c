// pick.h - `lullwise pick`: which pin for this day, this sailor and this aim, and why.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_PICK_H
#define LW_ANSWER_PICK_H

#include "answer/question.h"
#include "answer/words/picked.h"

// The day ranked; and ranked again with something changed, when it is asked so.
typedef struct lw_pick {
    lw_picked as_is, changed;
    lw_outlook outlook, other;  // theirs
    size_t counts[2];           // steps of each that are known of
    const lw_options *options;
    bool is_against;
} lw_pick;

bool lw_pick_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                   lw_refusal *refusal);
size_t lw_pick_steps(void *it);
void lw_pick_step(void *it, size_t step);
void lw_pick_give(const void *it, size_t step, void *part);
void lw_pick_take(void *it, size_t step, const void *part);
void lw_pick_end(void *it);
bool lw_pick_is_answered(const void *it);
void lw_pick_tell(const void *it, lw_teller *teller);

// One ranking, into the object that is open; and its first sentences, the day, boat and aim.
void lw_tell_picked(lw_teller *teller, const lw_picked *picked);
void lw_tell_picked_head(lw_teller *teller, const lw_picked *picked);

#endif
