// hull.h - `lullwise hull`: a hull afloat, and the resistance that it meets at each speed.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_HULL_H
#define LW_ANSWER_HULL_H

#include "answer/steps.h"
#include "lullwise/hull_afloat.h"
#include "lullwise/medium.h"

typedef struct lw_hull_answer {
    // asked
    const lw_inputs *inputs;
    const char *offsets;  // the file of its lines; NULL: the boat's dimensions
    bool is_wigley, has_place;
    double length;      // [m] of Wigley's hull
    double place;       // [m] where the sailor sits
    bool is_by_froude;  // what the speeds are given as
    lw_steps speeds;    // [m/s]

    // worked out
    lw_medium medium;
    double form_factor;
    lw_hull_shape shape;
    lw_hull_status status;
    lw_hull_cut cut;
    lw_hull_afloat afloat;
    lw_hull_drive at[LW_STEPS_MOST];
    size_t count;  // of these, so far
} lw_hull_answer;

// The faces of the question.
bool lw_hull_answer_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                          lw_refusal *refusal);
size_t lw_hull_answer_steps(void *it);
void lw_hull_answer_step(void *it, size_t step);
bool lw_hull_answer_is_answered(const void *it);
void lw_hull_answer_tell(const void *it, lw_teller *teller);

#endif
