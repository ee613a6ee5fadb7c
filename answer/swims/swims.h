// swims.h - `lullwise swims`: how often each pin swims in winds around the day's, from rides.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_SWIMS_H
#define LW_ANSWER_SWIMS_H

#include "answer/question.h"
#include "lullwise/choice_find.h"

typedef struct lw_counted {
    lw_inputs inputs;
    lw_unit speed_unit;
    size_t first, count;  // pins asked for
    lw_outlook outlook;   // of a day whose legs are the courses, in their order
} lw_counted;

// The faces of the question.
bool lw_counted_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                      lw_refusal *refusal);
size_t lw_counted_steps(void *it);
void lw_counted_step(void *it, size_t step);
void lw_counted_give(const void *it, size_t step, void *part);
void lw_counted_take(void *it, size_t step, const void *part);
void lw_counted_end(void *it);
bool lw_counted_is_answered(const void *it);
void lw_counted_tell(const void *it, lw_teller *teller);

#endif
