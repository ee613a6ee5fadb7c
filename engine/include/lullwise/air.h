// air.h - density and viscosity of the air, and what its chill does to a wet sailor.
// SPDX-License-Identifier: MIT

#ifndef LW_AIR_H
#define LW_AIR_H

#include "lullwise/day.h"

// Density of dry air [kg/m^3].
//
//     rho = p / (R T),   R = 287.05287 J/(kg K)                 [icao-atmosphere]
//
// Leaves out   moisture: 1 % less dense at 25 degC and saturated.
double lw_air_density(lw_air air);

// Dynamic viscosity of air [Pa s].
//
//     mu = 1.458e-6 T^(3/2) / (T + 110.4 K)                     [icao-atmosphere]
//
// Holds for    -100..1500 degC.
double lw_air_viscosity(lw_air air);

// Wind chill: temperature [degC] of still air that would cool bare, dry skin as fast.
//
//     13.12 + 0.6215 t - 11.37 v^0.16 + 0.3965 t v^0.16,   v in km/h at 10 m    [wind-chill]
//
// Holds for    t <= 10 degC and v >= 4.8 km/h; outside, t itself is given back.
// Leaves out   wet skin and clothes, which cool faster; sun.
double lw_wind_chill(double temperature, double wind);

#endif
