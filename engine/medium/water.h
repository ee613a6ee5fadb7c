// water.h - density, viscosity and vapour pressure of fresh water and of the sea.
// SPDX-License-Identifier: MIT
//
// Holds for all of them   0..40 degC, 0..42 g/kg, at one atmosphere.

#ifndef LW_WATER_H
#define LW_WATER_H

#include "lullwise/day.h"

// Density of sea water at one atmosphere, from its temperature t [degC, IPTS-68] and its
// practical salinity S [-], in kg/m^3.
//
//     rho = rho_w(t) + A(t) S + B(t) S^(3/2) + C S^2            [eos-80]
//
// Leaves out   pressure: 0.005 kg/m^3 for each metre of depth.
double lw_eos80_density(double t, double S);

// Density of the day's water [kg/m^3]: eos-80 at the practical salinity that goes with its
// absolute salinity, S = 35 / 35.16504 S_A, and t_68 = 1.00024 t.
double lw_water_density(lw_water water);

// Dynamic viscosity of fresh water at 0.1 MPa [Pa s].
//
//     mu = 1e-6 sum a_i (T / 300 K)^b_i                         [iapws-viscosity]
//
// Holds for    -20..110 degC within 0.05 % of the full formulation.
double lw_fresh_viscosity(double temperature);

// Kinematic viscosity of the day's water [m^2/s].
//
//     nu = mu (1 + A S + B S^2) / rho,   S in kg/kg             [sharqawy-2010]
//
// Holds for    0..150 g/kg. Within 0.1 % of the tables of [ittc-water].
double lw_water_viscosity(lw_water water);

// Vapour pressure of the day's water [Pa].
//
//     p_v = p_IF97(T) / (1 + 0.57357 S / (1000 - S))            [iapws-if97] [sharqawy-2010]
//
// Leaves out   gas dissolved in the water, which lets bubbles grow at a higher pressure.
double lw_vapour_pressure(lw_water water);

#endif
