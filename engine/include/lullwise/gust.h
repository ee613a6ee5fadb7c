// gust.h - wind in time: lulls and puffs, eddies, swings of direction, from one seed.
// SPDX-License-Identifier: MIT

#ifndef LW_GUST_H
#define LW_GUST_H

#include "lullwise/day.h"
#include "lullwise/seed.h"

#define LW_GUST_EDDIES 3

// A gusty wind as described.
typedef struct lw_gust_kind {
    double lull, mean, puff;  // [m/s]  10, 50 and 90 % points of the wind
    double period;            // T_g  [s]    from puff to puff
    double turbulence;        // I_u  [-]    of eddies: sigma / mean
    double height;            // z    [m]    at which the eddies are met: the sail's middle
    double shift;             // [rad]  standard deviation of the wind's direction
} lw_gust_kind;

// The wind of a day that is settled (lw_day_settle), with I_u of open water at that height
// (lw_wind_turbulence), for a boat whose sail has its middle at a height [m].
lw_gust_kind lw_gust_kind_of(const lw_day *day, double height);

// Constants of a kind for one step of time. Wind is a normal process X of variance 1, bent so that
// its quantiles are the day's:
//
//     U = mean + X (puff - mean, or mean - lull below) / 1.2816,   lull / 2 at least    [judged]
//     X = sqrt(1 - r) S + sqrt(r) E,   r = (I_u mean / sigma)^2, 1/2 at most            [judged]
//     sigma = (puff - lull) / (2 1.2816)
//
// S, the lulls and puffs: an oscillator driven by white noise, S'' + 2 zeta w S' + w^2 S = noise,
// w = 2 pi / T_g, zeta = 0.25 [judged]; it rises through its mean once in T_g on average [rice].
// E, the eddies: three first-order processes, fitted to n S(n) / sigma^2 of [kaimal-1972] within
// 7 % over f = n z / U from 0.003 to 3; frozen, so that a boat meets them as fast as the air
// passes her [taylor-1938]. Both are stepped exactly, whatever the step.
//
// Direction swings as S does, by a noise of its own.
//
// Holds for    steps below a tenth of T_g.
// Leaves out   that puffs come with a shift of their own; that a sail averages eddies smaller than
//              itself; the wind's pace down the course: a boat that sails with a puff keeps it.
typedef struct lw_gust_filter {
    lw_gust_kind kind;
    double step;                         // dt [s]
    double swing_share, eddy_share;      // sqrt(1 - r), sqrt(r)
    double turn[2][2];                   // of (S, S'/w) in one step
    double noise[2][2];                  // [0][0] and [0][1] into S, [1][0] into S'/w
    double ahead[2];                     // of (S, S'/w) in the S expected so far ahead as one sees
    double eddy_weight[LW_GUST_EDDIES];  // square roots of shares of variance; sum of squares 1
    double eddy_pass[LW_GUST_EDDIES];    // dt / length [s/m]
} lw_gust_filter;

lw_gust_filter lw_gust_filter_of(lw_gust_kind kind, double step);

// Lets the filter tell the lull or puff that is to come in some seconds: of all that may follow from S
// and S' now, the mean. At first it tells the one that is.
void lw_gust_look_ahead(lw_gust_filter *filter, double seconds);

#endif
