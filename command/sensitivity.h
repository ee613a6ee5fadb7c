// sensitivity.h - which measurement is worth taking better: worked out, printed, as JSON.
// SPDX-License-Identifier: MIT

#ifndef LW_COMMAND_SENSITIVITY_H
#define LW_COMMAND_SENSITIVITY_H

#include <jansson.h>
#include <stdio.h>

#include "lullwise/day.h"
#include "lullwise/sensitivity.h"

// Every measurement to first order, then those that matter most anew. False: no memory.
bool lw_sensitivity_of(const lw_inputs *inputs, lw_sensitivity *sensitivity);

void lw_sensitivity_print(FILE *out, const lw_inputs *inputs, const lw_sensitivity *sensitivity);
json_t *lw_sensitivity_json(const lw_inputs *inputs, const lw_sensitivity *sensitivity);

#endif
