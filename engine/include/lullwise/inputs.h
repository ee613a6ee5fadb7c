// inputs.h - what every answer is made from: a boat, a sailor and a day.
// SPDX-License-Identifier: MIT

#ifndef LW_INPUTS_H
#define LW_INPUTS_H

#include "lullwise/boat.h"
#include "lullwise/day.h"

typedef struct lw_inputs {
    lw_boat boat;
    lw_sailor sailor;
    lw_day day;           // settled: lull, mean and puff are there
    lw_day day_as_given;  // before lw_day_settle
} lw_inputs;

#endif
