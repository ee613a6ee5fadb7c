// modes.h - `lullwise modes`: is she steady, what swings, and how near the wand's loop is to it.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_MODES_H
#define LW_ANSWER_MODES_H

#include "answer/question.h"
#include "lullwise/flown.h"
#include "lullwise/modes.h"

typedef struct lw_disturbed {
    lw_flown flown;
    lw_modes sailed, alone;
    lw_wand_margin margin;  // where she flies
    double gearing;         // as the boat has it
} lw_disturbed;

// The motions about a flight that is worked out and has a balance.
void lw_disturbed_find(lw_disturbed *disturbed);

// The faces of the question.
bool lw_disturbed_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                        lw_refusal *refusal);
void lw_disturbed_end(void *it);
bool lw_disturbed_is_answered(const void *it);
void lw_disturbed_tell(const void *it, lw_teller *teller);

#endif
