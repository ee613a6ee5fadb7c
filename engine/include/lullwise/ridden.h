// ridden.h - a ride through a day's gusts and chop: what is asked, and what it starts from.
// SPDX-License-Identifier: MIT
//
// Boat and sailor go out trimmed for steady flight in the mean wind (flown.h), with the rudder as
// wound for it. One seed on one machine is the same ride on any other.

#ifndef LW_RIDDEN_H
#define LW_RIDDEN_H

#include "lullwise/flown.h"
#include "lullwise/motion.h"

typedef struct lw_ridden {
    lw_flown flown;  // what is asked is put here before the plan: pin, wind, course, heading ...
    lw_wind wind;    // lull, mean and puff that blow
    lw_motion motion;
    lw_ride_plan plan;
    bool is_wound;  // the rudder is wound after the mean wind; else its turns are given
} lw_ridden;

// The craft, on the upwind course with the middle pin in the day's mean wind.
void lw_ridden_prepare(lw_ridden *ridden, const lw_inputs *inputs, const lw_sections *sections);

// Gusts, chop, and the plan of a ride with this seed. Where `flown.wind` is not the day's mean,
// lull and puff go with it in proportion, and the chop with the wind.
void lw_ridden_plan(lw_ridden *ridden, uint64_t seed);

#endif
