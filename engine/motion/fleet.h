// fleet.h - rides side by side, a ride in each lane.
// SPDX-License-Identifier: MIT

#ifndef LW_FLEET_H
#define LW_FLEET_H

#include "motion/watch.h"

typedef struct lw_past {
    lw_state_lanes state, rates;
} lw_past;

// The lanes of a ride. All members are vectors of 8-byte lanes, so that a ride is one lane of each.
typedef struct lw_fleet {
    lw_state_lanes now;
    lw_past past, older;
    lw_mask fresh;  // no past yet
    lw_hysteresis memory;
    lw_ride_lanes ride;
    lw_world world;
    lw_watch watch;
    lw_lanes wind;                                   // where it is not gusty [m/s]
    lw_lanes flying, swimming, distance, made_good;  // counted: lw_ride_tally
} lw_fleet;

// Lane i from a plan, its pilot wanting what she wants in flight.
void lw_ride_lanes_put(lw_ride_lanes *lanes, int i, const lw_ride_plan *plan);

// The angles' sines and cosines: of now, of the past, and of what was before it.
typedef struct lw_turns {
    lw_turned now, past, older;
} lw_turns;

LW_INLINE lw_turns lw_turns_of(const lw_fleet *fleet)
{
    return (lw_turns){lw_turned_of(&fleet->now), lw_turned_of(&fleet->past.state),
                      lw_turned_of(&fleet->older.state)};
}

#endif
