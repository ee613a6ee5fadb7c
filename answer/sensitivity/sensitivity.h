// sensitivity.h - which measurement is worth taking better, told.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_SENSITIVITY_H
#define LW_ANSWER_SENSITIVITY_H

#include "answer/teller.h"
#include "lullwise/day.h"
#include "lullwise/sensitivity.h"

// An object "sensitivity"; its rows are sorted, those of most weight first.
void lw_sensitivity_tell(const lw_inputs *inputs, const lw_sensitivity *sensitivity,
                         lw_teller *teller);

#endif
