// initial.h - the initial condition of a ride: the state of a balance.
// SPDX-License-Identifier: MIT

#ifndef LW_INITIAL_H
#define LW_INITIAL_H

#include "lullwise/motion.h"

// The sailor has noticed all of it.
lw_ride_state lw_initial_state(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer);

#endif
