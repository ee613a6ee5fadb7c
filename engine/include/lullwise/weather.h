// weather.h - wind and sea in time, the same on every machine from one seed.
// SPDX-License-Identifier: MIT

#ifndef LW_WEATHER_H
#define LW_WEATHER_H

#include <stdint.h>

#include "lullwise/day.h"
#include "lullwise/medium.h"

// --- random numbers that are the same on every machine: one number starts a whole run

// A stream of random numbers; owned by the caller, changed by every draw.    [xoshiro]
typedef struct lw_seed {
    uint64_t state[4];
} lw_seed;

// What a stream is for: streams of one number with different uses share nothing.
typedef enum lw_seed_use { LW_SEED_SEA, LW_SEED_GUST, LW_SEED_DRAW } lw_seed_use;

// The next of a sequence that is started by any number; fills the state of a stream. [splitmix64]
uint64_t lw_seed_mix(uint64_t *state);

lw_seed lw_seed_of(uint64_t number, lw_seed_use use);

uint64_t lw_seed_bits(lw_seed *seed);   // 64 of them: xoshiro256++    [xoshiro]
double lw_seed_uniform(lw_seed *seed);  // 0 <= u < 1, in steps of 2^-53
double lw_seed_normal(lw_seed *seed);   // mean 0, variance 1          [box-muller]

// --- wind in time: lulls and puffs, eddies, swings of direction, from one seed

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

// Lets the filter tell the lull or puff that is to come in some seconds: of all that may follow
// from S and S' now, the mean. At first it tells the one that is.
void lw_gust_look_ahead(lw_gust_filter *filter, double seconds);

// --- an irregular sea: waves of many lengths and directions from one seed
//
// Ground axes, at the mean surface: x towards the wind, y to port of a boat that heads that way,
// z up. A boat on the heading gamma from the wind moves along (cos gamma, sin gamma).

#define LW_SEA_CHAINS  4  // waves whose lengths are a quarter of an octave apart
#define LW_SEA_OCTAVES 3  // each again at a half and a quarter of the length

// A sea as described.
typedef struct lw_sea_kind {
    lw_wave wave;   // H_s, T_p
    double gamma;   //        of its spectrum: 1 to 5
    double from;    // [rad]  where the waves come from, seen from the wind's eye to port
    double spread;  // [rad]  standard deviation of their directions; 0: long-crested
} lw_sea_kind;

// What a wind [m/s] at wind_height raises on a day.
//
//     gamma = 5 to T_p / sqrt(H_s) = 3.6, exp(5.75 - 1.15 T_p / sqrt(H_s)), 1 from 5  [rp-c205]
lw_sea_kind lw_sea_kind_of(const lw_medium *medium, double wind);

// Waves of one length, and of a half and a quarter of it, that run the same way.
typedef struct lw_sea_chain {
    double wavenumber;  // k [rad/m]  of the longest
    double x, y;        //            way they run, a unit vector
    double amplitude[LW_SEA_OCTAVES], omega[LW_SEA_OCTAVES], phase[LW_SEA_OCTAVES];
} lw_sea_chain;

// One sea of a kind.
//
//     surface = sum a cos(phi),  phi = k . r - omega t + epsilon,  omega^2 = g k        [airy]
//     a^2 / 2 = energy of its band, a twelfth of 1.5 octaves of frequency: 0.74 to 2.09 omega_p
//
// k is drawn within the band, so that no two seeds have the same frequencies; epsilon around the
// circle; directions from cos^2 about the mean, stretched to the spread. As frequencies are no
// multiples of each other, no record repeats.
//
// Holds for    deep water. H_s is met by each seed, not on average.
// Leaves out   waves longer than 1.8 and shorter than 0.23 of the peak's length: 1 and 4 % of the
//              energy at gamma 3.3, 2 and 6 % at gamma 1, which the others carry in their stead.
//              Twelve waves of fixed strength have a kurtosis of 2.8, not 3: three standard
//              deviations are passed half as often as in a normal sea.
typedef struct lw_sea_waves {
    lw_sea_chain chains[LW_SEA_CHAINS];
} lw_sea_waves;

lw_sea_waves lw_sea_of(lw_sea_kind kind, lw_seed seed);

// The sea at a place and a time; (u, v, w) is the water's velocity at a depth below the surface.
//
//     (u, v) = sum a omega e^(-k d) cos(phi) (x, y),   w = sum a omega e^(-k d) sin(phi)
//
// d is counted from the wavy surface, not from the mean one: [wheeler-1970].
// Leaves out   all that grows with the square of the height: drift, sharp crests.
typedef struct lw_sea_point {
    double surface;  // [m]    above the mean
    double u, v, w;  // [m/s]  along x, y, z
} lw_sea_point;

lw_sea_point lw_sea_at(const lw_sea_waves *sea, double x, double y, double time, double depth);

#endif
