// grip.h - how strongly a sailor answers what she sees, from how the boat answers her.
// SPDX-License-Identifier: MIT

#ifndef LW_GRIP_H
#define LW_GRIP_H

#include "lullwise/motion.h"

// Grip at a state that `effort` holds, by the crossover model [mcruer-1967]: the loops of heel and
// course have a gain of one where a pilot works. `plan` has a pilot who holds all as it is.
lw_grip lw_grip_of(const lw_motion *motion, const lw_ride_plan *plan, const lw_ride_state *at,
                   double effort);

#endif
