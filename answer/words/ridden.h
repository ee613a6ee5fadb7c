// ridden.h - a ride through a day's gusts and chop: what it starts from, and what is said of it.
// SPDX-License-Identifier: MIT
//
// Boat and sailor go out trimmed for steady flight in the mean wind (flown.h), with the rudder as
// wound for it. One seed on one machine is the same ride on any other.

#ifndef LW_WORDS_RIDDEN_H
#define LW_WORDS_RIDDEN_H

#include "answer/words/flown.h"
#include "lullwise/motion.h"

typedef struct lw_ridden {
    lw_flown flown;  // what is asked is put here before the plan: pin, wind, course, heading ...
    lw_wind wind;    // lull, mean and puff that blow
    lw_motion motion;
    lw_ride_plan plan;
    bool is_wound;  // the rudder is wound after the mean wind; else its turns are given
} lw_ridden;

// The craft, on the upwind course with the middle pin in the day's mean wind.
void lw_ridden_prepare(lw_ridden *ridden, const lw_inputs *inputs);

// Gusts, chop, and the plan of a ride with this seed. Where `flown.wind` is not the day's mean,
// lull and puff go with it in proportion, and the chop with the wind.
void lw_ridden_plan(lw_ridden *ridden, uint64_t seed);

// "Upwind, 45 deg. Wind 10.0, 12.5, 15.5 kn in lull, mean, puff; waves of 0.16 m ..."; and how it
// is trimmed, or that it does not fly in the mean wind.
#define LW_RIDDEN_LENGTH 500
void lw_ridden_scene(const lw_ridden *ridden, char text[LW_RIDDEN_LENGTH]);
void lw_ridden_trim(const lw_ridden *ridden, char text[LW_RIDDEN_LENGTH]);

// "Flew 96 % of 10 min 00 s, 14.2 kn on average, 8.9 kn made good to windward, swims counted."
void lw_ridden_sum(const lw_ridden *ridden, const lw_ride_tally *tally,
                   char text[LW_RIDDEN_LENGTH]);

#endif
