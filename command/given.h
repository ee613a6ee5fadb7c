// given.h - what the commands that compute start from: inputs read, pins found.
// SPDX-License-Identifier: MIT

#ifndef LW_COMMAND_GIVEN_H
#define LW_COMMAND_GIVEN_H

#include "answer/asked.h"

// Inputs and the pin of --pin (LW_ALL_PINS without it). False after every fault was printed on
// standard error.
bool lw_given(lw_inputs *inputs, int *pin, const lw_options *options);

// A number given with an option, in SI, or *si as it was; false after a complaint when it is
// unsound or outside `low` to `high`, which `what` names ("the boat's place").
bool lw_given_number(const lw_options *options, const char *name, lw_bounds bounds, double *si);

lw_craft lw_given_craft(const lw_inputs *inputs);

#endif
