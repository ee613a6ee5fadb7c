// given.h - what the commands that compute start from: inputs read, pins found.
// SPDX-License-Identifier: MIT

#ifndef LW_GIVEN_H
#define LW_GIVEN_H

#include "command/inputs.h"
#include "lullwise/craft.h"

#define LW_ALL_PINS (-1)

// Inputs and the pin of --pin (LW_ALL_PINS without it). False after every fault was printed on
// standard error.
bool lw_given(lw_inputs *inputs, int *pin, const lw_options *options);

// A number given with an option, in SI, or *si as it was; false after a complaint when it is
// unsound or outside `low` to `high`, which `what` names ("the boat's place").
typedef struct lw_bounds {
    double low, high;
    const char *what;  // NULL: no bounds but those of the option
} lw_bounds;
bool lw_given_number(const lw_options *options, const char *name, lw_bounds bounds, double *si);

lw_craft lw_given_craft(const lw_inputs *inputs);

#endif
