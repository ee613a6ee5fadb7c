// medium.h - what surrounds the boat on a day: water, air, wind with height, sea.
// SPDX-License-Identifier: MIT

#ifndef LW_MEDIUM_H
#define LW_MEDIUM_H

#include "lullwise/day.h"
#include "lullwise/wave.h"

typedef struct lw_medium {
    double water_density;    // rho   [kg/m^3]
    double water_viscosity;  // nu    [m^2/s]   kinematic
    double vapour_pressure;  // p_v   [Pa]      of the water
    double air_density;      // rho_a [kg/m^3]
    double air_pressure;     // p_a   [Pa]
    double wind_height;      // z     [m]       where the day's wind was read
    double fetch;            // F     [m]       0: sheltered
    double wave_height;      // H_s   [m]       as given; 0: from fetch and wind
    double wave_period;      // T_p   [s]       as given; 0: from fetch and wind
    double wave_from;        // [rad]           where the waves come from, left of the wind's eye
    double wave_spread;      // [rad]           standard deviation of their directions
} lw_medium;

lw_medium lw_medium_of(const lw_day *day);

// The sea under a wind [m/s] at wind_height: what the day gives, and the rest from the fetch and
// the wind at 10 m (wave.h). Without fetch, height and period the water is flat: height 0, and a
// period of 2 s, so that nobody divides by zero.
lw_wave lw_medium_wave(const lw_medium *medium, double wind);

#endif
