// steps.h - values written as one, or as from:to:step.
// SPDX-License-Identifier: MIT

#ifndef LW_STEPS_H
#define LW_STEPS_H

#include "answer/question.h"

#define LW_STEPS_MOST 201

typedef struct lw_steps {
    int count;
    double value[LW_STEPS_MOST];  // SI
} lw_steps;

// Reads "-4:12:1" or "1:8:0.5 kn"; the unit, behind the last number, holds for all. With
// `may_be_bare` numbers without a unit are in the row's. False, with one fault, when it is unsound.
bool lw_steps_read(lw_steps *steps, const lw_written *written, const lw_quantity *row,
                   bool may_be_bare, lw_faults *faults);

// Those given with an option, or the steps as they were. False: refused.
bool lw_asked_steps(lw_steps *steps, const lw_options *options, const char *name, bool may_be_bare,
                    lw_refusal *refusal);

#endif
