// balance.h - the solver's lanes: poses side by side, with what was found of each.
// SPDX-License-Identifier: MIT

#ifndef LW_BALANCE_LANES_H
#define LW_BALANCE_LANES_H

#include "boat/force.h"
#include "lullwise/flight.h"

typedef struct lw_balance_state {
    lw_pose pose;           // in: where to start; out: where the solver ended
    lw_mask level, towed;   // which of pitch and rudder incidence, speed and acceleration is found
    lw_lanes residual;      // greatest left, in weights
    lw_lanes rounds;
    lw_loads loads;         // at the end
} lw_balance_state;

void lw_balance_lanes(const lw_craft *craft, lw_balance_state *state);

#endif
