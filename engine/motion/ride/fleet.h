// fleet.h - rides side by side, a ride in each lane.
// SPDX-License-Identifier: MIT

#ifndef LW_FLEET_H
#define LW_FLEET_H

#include "motion/events.h"
#include "motion/step.h"

// The lanes of a ride. All members are vectors of 8-byte lanes, so that a ride is one lane of each.
typedef struct lw_fleet {
    lw_moving boats;
    lw_environment_state environment;
    lw_detection detection;
    lw_lanes wind;                                   // where it is not gusty [m/s]
    lw_lanes flying, swimming, distance, made_good;  // counted: lw_ride_tally
} lw_fleet;

#endif
