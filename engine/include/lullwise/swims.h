// swims.h - how often a set-up swims on a course, as a smooth function of the mean wind: from rides.
// SPDX-License-Identifier: MIT

#ifndef LW_SWIMS_H
#define LW_SWIMS_H

#include "lullwise/motion.h"
#include "lullwise/range.h"
#include "lullwise/rate.h"

// Weather that grows with the mean wind: lull and puff in proportion, the chop as the day's fetch
// or height has it.
typedef struct lw_weather {
    lw_gust_kind gust;
} lw_weather;

lw_weather lw_weather_of(const lw_craft *craft, const lw_day *day);

// *motion in that weather when its mean wind is `wind` [m/s].
void lw_weather_put(const lw_weather *weather, double wind, lw_motion *motion);

#define LW_SWIM_WINDS 6
#define LW_SWIM_LEAST 0.7  // of the mean wind, that are ridden in
#define LW_SWIM_MOST  1.8
#define LW_SWIM_RIDES 8  // side by side in each

// How much is ridden: so long a ride, and seeds from the first on.
typedef struct lw_swim_effort {
    double seconds;  // [s]
    uint64_t seed;
} lw_swim_effort;

// Swims for each second of flight, against the mean wind.
typedef struct lw_swims {
    lw_rate_curve curve;  // of x = (wind - middle) / span
    double middle, span;  // [m/s]
    double low, high;     // [m/s]  mean winds that were ridden in; beyond, the nearer holds
    double events, time;  // swims counted, and time flown [s]
    bool is_known;        // false: she flies in none of the winds
} lw_swims;

// Rides the set-up on the course of its range in winds below and above the weather's mean, aloft
// from the start, trimmed for the mean wind or, where in that no steady flight is, for the next
// below. As the sailor of motion.h keeps her course through a gust, that course is one on which
// her whole weight is needed in the lull too: higher than the best of a steady wind.
// After a swim the ride goes on aloft. The same on every machine.
//
// Leaves out   retrimming and steering for a gust; swims while launching; what is learnt from one.
lw_swims lw_swims_of(const lw_craft *craft, const lw_setup *setup, const lw_range *range,
                     const lw_weather *weather, lw_swim_effort effort);

double lw_swims_rate(const lw_swims *swims, double wind);       // [1/s] of flight
double lw_swims_log_error(const lw_swims *swims, double wind);  // of the rate's logarithm

// Greatest mean wind [m/s] ridden in, to 0.1 kn, with a rate below `most` [1/s]; 0: none.
double lw_swims_limit(const lw_swims *swims, double most);

#endif
