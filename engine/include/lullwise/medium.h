// medium.h - what surrounds the boat on a day: water, air, waves; and what its cold does.
// SPDX-License-Identifier: MIT

#ifndef LW_MEDIUM_H
#define LW_MEDIUM_H

#include "lullwise/day.h"

// --- waves on deep water: one wave, the sea that a wind raises over a fetch, its spectrum

// A sea, by two numbers; or one regular wave, with H for H_s and T for T_p.
typedef struct lw_wave {
    double height;  // H_s [m]  significant: 4 sqrt(m_0)
    double period;  // T_p [s]  of the spectrum's peak
} lw_wave;

// Length of a wave [m], and the speed of its crests [m/s].
//
//     L = g T^2 / (2 pi),   c = g T / (2 pi)                    [airy]
//
// Holds for    water deeper than L / 2; height below L / 20.
double lw_wave_length(double period);
double lw_wave_speed(double period);

// Greatest speed of the water in a regular wave, at z [m] above the mean surface (below: negative).
//
//     u = (pi H / T) e^(k z),   k = 4 pi^2 / (g T^2)            [airy]
double lw_wave_orbital_speed(lw_wave wave, double z);

// Frequency [rad/s] at which a boat meets waves; negative when she overtakes them.
//
//     omega_e = omega - (omega^2 / g) V cos mu                  [airy]
//
// mu: course to the waves' direction of travel: 0 with them, pi head to them.
double lw_wave_encounter(double omega, double speed, double mu);

// The sea that a steady wind raises over a fetch [m], from its speed at 10 m.
//
//     g H_s / U^2 = 0.0016  (g F / U^2)^(1/2),  0.243 at most
//     g T_p / U   = 0.286   (g F / U^2)^(1/3),  8.13 at most    [kamphuis] after [jonswap]
//
// Holds for    wind that has blown for 68.8 (g F / U^2)^(2/3) U / g or longer; deep water;
//              g F / U^2 from about 100, as measured: 370 m at 6 m/s. Below, it leans on tanks.
// Leaves out   swell, current, shoals. Another form of the same data [spm-1984] is 20 % higher
//              at 10 m/s over 10 km: take no digit beyond the first for sure.
lw_wave lw_wave_of_fetch(double wind_at_10_m, double fetch);

// Peak period [s] of a sea of known height, from the same law with the fetch taken out.
double lw_wave_period_of_height(double wind_at_10_m, double height);

// Spectral density [m^2 s/rad] of the sea's elevation, scaled so that 4 sqrt(m_0) = H_s.
//
//     S = A omega^-5 exp(-5/4 (omega_p/omega)^4) gamma^r,
//     r = exp(-(omega/omega_p - 1)^2 / (2 s^2)),  s = 0.07 below omega_p, 0.09 above  [jonswap]
//     A = 5/16 H_s^2 omega_p^4 (1 - 0.287 ln gamma)                                  [rp-c205]
//
// gamma 1: fully developed [pm-1964]; 3.3: growing, the mean of the North Sea measurements.
// Holds for    gamma 1..5 (the scaling is within 0.4 % there).
double lw_wave_spectrum(lw_wave sea, double gamma, double omega);

// Height and peak period of a fully developed sea, from the wind at 19.5 m.
//
//     S = 0.0081 g^2 omega^-5 exp(-0.74 (g / (U omega))^4)      [pm-1964]
lw_wave lw_wave_fully_developed(double wind_at_19_5_m);

// --- what surrounds the boat on a day: water, air, wind with height, sea

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
// the wind at 10 m (above). Without fetch, height and period the water is flat: height 0, and a
// period of 2 s, so that nobody divides by zero.
lw_wave lw_medium_wave(const lw_medium *medium, double wind);

// --- numbers behind the cautions about cold water and wind
//
// Of water: averages of people in ordinary clothes, from rescue services. They say when to think
// twice, not how long anyone lasts.

#define LW_COLD_SHOCK       15.0    // [degC] water below it makes people gasp [rnli-cold]
#define LW_COLD_BREATHING   60.0    // [s] until breathing is under control [1-10-1]
#define LW_COLD_MOVEMENT    600.0   // [s] of useful movement, in ice water [1-10-1]
#define LW_COLD_UNCONSCIOUS 3600.0  // [s] until unconscious, in ice water [1-10-1]
#define LW_COLD_ICY         4.0     // [degC] water below it counts as ice water [judged]

// How long people stayed able to help themselves, and alive, in water of a temperature.
typedef struct lw_cold_band {
    double below;                 // [degC] the band's upper edge
    double able_from, able_to;    // [s]    to exhaustion
    double alive_from, alive_to;  // [s]
} lw_cold_band;

// The band of [us-sar-cold] that a water temperature [degC] falls in. From 80 degF up, and for how
// long people live from 70 degF up, it sets no end: those times are a day.
lw_cold_band lw_cold_band_of(double temperature);

// Wind chill: temperature [degC] of still air that would cool bare, dry skin as fast.
//
//     13.12 + 0.6215 t - 11.37 v^0.16 + 0.3965 t v^0.16,   v in km/h at 10 m    [wind-chill]
//
// Holds for    t <= 10 degC and v > 4.8 km/h; outside, t itself is given back.
// Leaves out   wet skin and clothes, which cool faster; sun; that less of the wind at 10 m
//              reaches a face, so that a wind felt on a boat chills more than is said here.
double lw_wind_chill(double temperature, double wind);

#endif
