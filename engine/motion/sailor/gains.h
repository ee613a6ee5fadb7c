// gains.h - gains of the pilot model, from how the boat answers the sailor.
// SPDX-License-Identifier: MIT

#ifndef LW_GAINS_H
#define LW_GAINS_H

#include "lullwise/motion.h"

// Gains at a state that `effort` holds, by the crossover model [mcruer-1967]: the loops of heel and
// course have a gain of one where a pilot works. `plan` has a pilot who holds all as it is.
lw_gains lw_gains_of(const lw_motion *motion, const lw_ride_plan *plan, const lw_ride_state *at,
                     double effort);

#endif
