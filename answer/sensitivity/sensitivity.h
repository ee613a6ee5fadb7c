// sensitivity.h - `lullwise sensitivity`: which measurement is worth taking better.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_SENSITIVITY_H
#define LW_ANSWER_SENSITIVITY_H

#include "answer/question.h"
#include "lullwise/sensitivity.h"

// The steps: those of the day's outlook, then each measurement to first order, then those that
// matter most anew.
typedef struct lw_sensed {
    lw_inputs inputs;
    lw_outlook outlook, scratch;
    lw_sensing sensing;    // rests on the outlook
    size_t outlook_steps;  // and so many measurements behind them, once `is_listed`
    size_t row_count, anew_count;
    bool is_listed, is_sorted;             // the measurements
    bool is_moved[LW_SENSITIVITIES_MOST];  // to first order, before they are sorted
} lw_sensed;

// What a step gives: of the outlook, or of a measurement.
typedef union lw_sensed_part {
    lw_outlook_part outlook;
    struct {
        double hold, seconds, weight;
        int first_instead;
    } row;
} lw_sensed_part;

// The faces of the question.
bool lw_sensed_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                     lw_refusal *refusal);
size_t lw_sensed_steps(void *it);
void lw_sensed_step(void *it, size_t step);
void lw_sensed_give(const void *it, size_t step, void *part);
void lw_sensed_take(void *it, size_t step, const void *part);
void lw_sensed_end(void *it);
bool lw_sensed_is_answered(const void *it);
void lw_sensed_tell(const void *it, lw_teller *teller);

#endif
