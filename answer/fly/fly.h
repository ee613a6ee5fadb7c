// fly.h - `lullwise fly`: one steady flight, its forces, and which margin runs out first.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_FLY_H
#define LW_ANSWER_FLY_H

#include "answer/question.h"
#include "lullwise/flown.h"

typedef struct lw_fly {
    lw_flown flown;
    bool has_flight;  // it is worked out
    bool has_range;   // so is the range, where she does not fly
    lw_unit speed_unit;
    double width;  // [px] of the picture; 0: as it comes
} lw_fly;

// The faces of the question. The second step is the range, from which follows what to try where she
// does not fly; the answer can be told without it.
bool lw_fly_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                  lw_refusal *refusal);
size_t lw_fly_steps(void *it);
void lw_fly_step(void *it, size_t step);
bool lw_fly_is_answered(const void *it);
void lw_fly_tell(const void *it, lw_teller *teller);
void lw_fly_draw(const void *it, FILE *out);

#endif
