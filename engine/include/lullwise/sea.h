// sea.h - an irregular sea: waves of many lengths and directions from one seed.
// SPDX-License-Identifier: MIT
//
// Ground axes, at the mean surface: x towards the wind, y to port of a boat that heads that way,
// z up. A boat on the heading gamma from the wind moves along (cos gamma, sin gamma).

#ifndef LW_SEA_H
#define LW_SEA_H

#include "lullwise/medium.h"
#include "lullwise/seed.h"

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
