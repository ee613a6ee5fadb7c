// wind.h - wind with height, its gusts and its spectrum.
// SPDX-License-Identifier: MIT

#ifndef LW_WIND_H
#define LW_WIND_H

#include "lullwise/day.h"

#define LW_ROUGHNESS 0.0002  // z_0 [m] open water in the winds one sails in [wieringa-1992]

// Wind at the height `to` [m], from the wind at the height `from` [m].
//
//     U(z) / U(z_1) = ln(z / z_0) / ln(z_1 / z_0)               [log-law]
//
// Holds for    neutral air, 0.1 m up to about 50 m, several hundred metres from the shore.
// Leaves out   cold or warm water (a sea breeze over cold water shears more), waves.
double lw_wind_at(double wind, double from, double to);

// The same by a power of the height; exponent 0.11 over open water, 1/7 over level land.
//
//     U(z) / U(z_1) = (z / z_1)^p                               [power-law]
double lw_wind_at_by_power(double wind, double from, double to, double exponent);

// Turbulence intensity sigma_u / U at a height over water of roughness z_0.
//
//     I_u = 1 / ln(z / z_0)                                     [turbulence]
//
// Holds for    neutral air in balance with the surface under it; gusts off the land are larger.
double lw_wind_turbulence(double height, double roughness);

// Greatest 3-second mean that is to be expected in a time [s], over the mean wind of that time.
//
//     the 3 s column of [wmo-1555], table 1.1, and 1 at 3 s; straight between rows in ln(time)
//
// exposure: "in-land", "off-land", "off-sea", "at-sea"; any other word counts as "off-sea".
// Holds for    strong wind at 10 m; 3..3600 s, and the end values beyond.
// Leaves out   showers, and the larger swings of a light wind under a hot sun.
double lw_wind_gust_factor(const char *exposure, double time);

// Greatest mean over `time` [s] to be expected in ten minutes, over the ten-minute mean.
//
//     the 600 s rows of [wmo-1555], table 1.1; straight between their columns in ln(time)
//
// Holds for    as above; 3..600 s. The columns for 60, 120 and 180 s are from memory.
double lw_wind_puff_factor(const char *exposure, double time);

// Spectral density of the wind along its mean [m^2/s^2 per Hz] at a frequency n [Hz].
//
//     n S / u*^2 = 105 f / (1 + 33 f)^(5/3),   f = n z / U,   u* = 0.4 U / ln(z / z_0)
//                                                               [kaimal-1972]
// Its integral is (2.184 u*)^2.
// Holds for    neutral air over level ground; slow swings of minutes lie outside it.
double lw_wind_spectrum(double wind, double height, double roughness, double n);

#endif
