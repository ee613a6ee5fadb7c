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
#define LW_SWIM_RIDES 8                // side by side in each
#define LW_SWIM_MANY  (12.0 / 3600.0)  // [1/s] of flight: more than a sailor bears  [judged]

// How much is ridden: so long a ride, and seeds from the first on. From the same seed every set-up
// meets the same gusts and waves, so that they differ by less chance than each is known to.
typedef struct lw_swim_effort {
    double seconds;  // [s]
    uint64_t seed;
} lw_swim_effort;

// What rides of one set-up on one course counted.
typedef struct lw_swim_counts {
    lw_rate_count of[LW_SWIM_WINDS * LW_SWIM_RIDES];
    size_t count;
    double low, high;  // [m/s]  mean winds that were ridden in
} lw_swim_counts;

// Rides the set-up on the course of its range in winds below and above the weather's mean, aloft
// from the start, trimmed for the knot nearest to the mean wind or, where in that no steady flight
// is, for the next below. After a swim the ride goes on aloft. The same on every machine.
//
// Leaves out   retrimming for a gust; swims while launching; what is learnt from one.
void lw_swims_ride(const lw_craft *craft, const lw_setup *setup, const lw_range *range,
                   const lw_weather *weather, lw_swim_effort effort, lw_swim_counts *counts);

// Swims for each second of flight, against the mean wind.
typedef struct lw_swims {
    lw_rate_curve curve;  // of x = (wind - first) / apart
    double first, apart;  // [m/s]
    double low, high;     // [m/s]  mean winds that were ridden in; beyond, the nearer holds
    double events, time;  // swims counted, and time flown [s]
    bool is_known;        // false: she flies in none of the winds
} lw_swims;

// A curve for each of several set-ups on one course, in the order of their lift, fitted together:
// each is pulled towards its neighbours as far as their counts leave it open.
void lw_swims_fit(const lw_weather *weather, size_t n, const lw_swim_counts *const counts[],
                  lw_rate_family *family, lw_swims *const swims[]);

// One set-up alone.
lw_swims lw_swims_of(const lw_craft *craft, const lw_setup *setup, const lw_range *range,
                     const lw_weather *weather, lw_swim_effort effort);

double lw_swims_rate(const lw_swims *swims, double wind);       // [1/s] of flight
double lw_swims_log_error(const lw_swims *swims, double wind);  // of the rate's logarithm
double lw_swims_x(const lw_swims *swims, double wind);          // where a wind lies on the curve

// Where too much wind ends it: greatest mean wind [m/s] ridden in with fewer than LW_SWIM_MANY more
// swims than in the wind where she swims least; 0: not known.
double lw_swims_hold(const lw_swims *swims);

// Greatest mean wind [m/s] ridden in, to 0.1 kn, with a rate below `most` [1/s]; 0: none.
double lw_swims_limit(const lw_swims *swims, double most);

#endif
