// set_up.h - pilot set-up: a pilot who suits the boat in a flight, from the hull on.
// SPDX-License-Identifier: MIT

#ifndef LW_SET_UP_H
#define LW_SET_UP_H

#include "lullwise/motion.h"

// Gains from the hull to flight, wishes, and where she rests on the hull. Effort goes evenly with
// the speed: it must not jump with it.
void lw_pilot_set_up(const lw_motion *motion, const lw_ask *ask, const lw_wishes *wishes,
                     lw_ride_plan *plan);

#endif
