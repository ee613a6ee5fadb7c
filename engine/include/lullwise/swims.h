// swims.h - the day's weather in other mean winds, and how often a pin swims in them, from rides.
// SPDX-License-Identifier: MIT

#ifndef LW_SWIMS_H
#define LW_SWIMS_H

#include "lullwise/chance.h"
#include "lullwise/motion.h"

// Weather that grows with the mean wind: lull and puff in proportion, the chop as the day's fetch
// or height has it.
typedef struct lw_weather {
    lw_gust_kind gust;
} lw_weather;

lw_weather lw_weather_of(const lw_craft *craft, const lw_day *day);

// *motion in that weather when its mean wind is `wind` [m/s].
void lw_weather_put(const lw_weather *weather, double wind, lw_motion *motion);

// Mean winds that are ridden in: so many, evenly, from the least to the most of the day's, which is
// one of them.
#define LW_RIDE_WINDS LW_RATE_TERMS
#define LW_RIDE_LEAST 0.8
#define LW_RIDE_APART 0.2
#define LW_RIDE_MOST  (LW_RIDE_LEAST + LW_RIDE_APART * (LW_RIDE_WINDS - 1))
#define LW_RIDE_MEAN  1  // the day's own

// Swims for each second under way, against the mean wind.
typedef struct lw_swims {
    lw_rate_curve curve;  // of x = (wind - first) / apart
    double first, apart;  // [m/s]
    double events, time;  // swims counted, and time under way [s]
    bool is_known;        // false: nothing was ridden
} lw_swims;

// A curve for each of several pins on one course, in the order of their lift, from n counts whose
// `curve` is the pin's index, fitted together: each is pulled towards its neighbours as far as its
// counts leave it open.
void lw_swims_fit(const lw_weather *weather, const lw_rate_count *counts, size_t n, size_t pins,
                  lw_swims swims[]);

double lw_swims_x(const lw_swims *swims, double wind);       // where a wind lies on the curve
double lw_swims_rate(const lw_swims *swims, double wind);    // [1/s] under way
double lw_swims_factor(const lw_swims *swims, double wind);  // of one standard error, either way

// Held to, by rides: the puffs of the greatest mean wind in which she swims less than once in five
// minutes. Nowhere is it anything else.
#define LW_SWIM_MANY       (1.0 / 300.0)  // [1/s] more than a sailor bears  [judged]
#define LW_HELD_BY_MARGINS "By margins: steady flight keeps them all, as the puff hits too"
#define LW_HELD_BY_RIDES   "by rides: less than a swim in five minutes, in a wind with such puffs"
typedef struct lw_ride_hold {
    double mean, puff;  // [m/s] of that wind; 0: she swims more often in all that was ridden in
    bool has_end;       // false: she does not even in the greatest that was ridden in
} lw_ride_hold;

// To 0.1 kn of mean wind.
lw_ride_hold lw_swims_hold(const lw_swims *swims, const lw_weather *weather);

#endif
