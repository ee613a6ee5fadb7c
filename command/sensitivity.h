// sensitivity.h - which measurement is worth taking better: worked out, with progress.
// SPDX-License-Identifier: MIT

#ifndef LW_COMMAND_SENSITIVITY_H
#define LW_COMMAND_SENSITIVITY_H

#include "lullwise/day.h"
#include "lullwise/sensitivity.h"

// Every measurement to first order, then those that matter most anew. False: no memory.
bool lw_sensitivity_of(const lw_inputs *inputs, lw_sensitivity *sensitivity);

#endif
