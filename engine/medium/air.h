// air.h - density and viscosity of the air.
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

#endif
