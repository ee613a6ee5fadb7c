// published_medium.h - functions that test/published/ names: water, air, wind, waves, cold.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PUBLISHED_MEDIUM_H
#define LW_TEST_PUBLISHED_MEDIUM_H

#include "lullwise/elementary.h"
#include "lullwise/medium.h"
#include "lullwise/weather.h"
#include "medium/air.h"
#include "medium/water.h"
#include "medium/wind.h"
#include "test/published_row.h"

static double eos80_density(const double *a) { return lw_eos80_density(a[0], a[1]); }
static double water_density(const double *a) { return lw_water_density((lw_water){a[0], a[1]}); }
static double water_nu(const double *a) { return lw_water_viscosity((lw_water){a[0], a[1]}); }
static double vapour_pressure(const double *a)
{
    return lw_vapour_pressure((lw_water){a[0], a[1]});
}
static double fresh_mu(const double *a) { return lw_fresh_viscosity(a[0]); }

static double air_density(const double *a) { return lw_air_density((lw_air){a[0], a[1]}); }
static double air_mu(const double *a) { return lw_air_viscosity((lw_air){a[0], 101325.0}); }
static double air_nu(const double *a)
{
    const lw_air air = {a[0], a[1]};
    return lw_air_viscosity(air) / lw_air_density(air);
}
static double wind_chill(const double *a) { return lw_wind_chill(a[0], a[1] / 3.6); }
// In degF and mph, rounded as the chart is.
static double wind_chill_degf(const double *a)
{
    const double chill = lw_wind_chill((a[0] - 32.0) / 1.8, a[1] * 0.44704);
    return floor(32.0 + 1.8 * chill + 0.5);
}

static double log_law(const double *a) { return lw_wind_at(1.0, a[1], a[0]); }
static double power_law(const double *a) { return lw_wind_at_by_power(1.0, a[1], a[0], a[2]); }
static double turbulence(const double *a) { return lw_wind_turbulence(a[0], a[1]); }
static double gust_in_land(const double *a) { return lw_wind_gust_factor("in-land", a[0]); }
static double gust_off_land(const double *a) { return lw_wind_gust_factor("off-land", a[0]); }
static double gust_off_sea(const double *a) { return lw_wind_gust_factor("off-sea", a[0]); }
static double gust_at_sea(const double *a) { return lw_wind_gust_factor("at-sea", a[0]); }
static double puff_in_land(const double *a) { return lw_wind_puff_factor("in-land", a[0]); }
static double puff_off_land(const double *a) { return lw_wind_puff_factor("off-land", a[0]); }
static double puff_off_sea(const double *a) { return lw_wind_puff_factor("off-sea", a[0]); }
static double puff_at_sea(const double *a) { return lw_wind_puff_factor("at-sea", a[0]); }

// n S / u*^2 at f = n z / U: z 10 m, U 10 m/s, so f = n; u* = 0.4 U / ln(z / z_0)
static double kaimal_at(double f)
{
    const double u_star = 0.4 * 10.0 / lw_log(10.0 / LW_ROUGHNESS);
    return f * lw_wind_spectrum(10.0, 10.0, LW_ROUGHNESS, f) / (u_star * u_star);
}
static double kaimal(const double *a) { return kaimal_at(a[0]); }
static double kaimal_integral(const double *a)
{
    (void)a;
    const double step = 0.01;
    double sum = 0.0;
    for (double x = -20.0; x < 15.0; x += step) sum += kaimal_at(lw_exp(x)) * step;
    return sum;
}

static double wave_length(const double *a) { return lw_wave_length(a[0]); }
static double wave_speed(const double *a) { return lw_wave_speed(a[0]); }
static double orbital_speed(const double *a)
{
    return lw_wave_orbital_speed((lw_wave){a[0], a[1]}, a[2]);
}
static double encounter(const double *a)
{
    return lw_wave_encounter(2.0 * LW_PI / a[0], a[1], a[2] * LW_DEG);
}
static double fetch_height(const double *a) { return lw_wave_of_fetch(a[0], a[1]).height; }
static double fetch_period(const double *a) { return lw_wave_of_fetch(a[0], a[1]).period; }
static double period_of_height(const double *a) { return lw_wave_period_of_height(a[0], a[1]); }
static double developed_height(const double *a) { return lw_wave_fully_developed(a[0]).height; }
static double developed_omega(const double *a)
{
    return 2.0 * LW_PI / lw_wave_fully_developed(a[0]).period;
}

// A sea of one wave that runs towards an angle from the boat's course along x.
static lw_sea_waves one_wave(double height, double period, double course)
{
    const double omega = 2.0 * LW_PI / period;
    lw_sea_waves sea = {0};
    sea.chains[0] = (lw_sea_chain){.wavenumber = omega * omega / LW_GRAVITY,
                                   .x = lw_cos(course),
                                   .y = lw_sin(course),
                                   .amplitude = {0.5 * height},
                                   .omega = {omega}};
    return sea;
}
static double sea_orbital_speed(const double *a)
{
    const lw_sea_waves sea = one_wave(a[0], a[1], 1.0);
    const lw_sea_point p = lw_sea_at(&sea, 2.0, 3.0, 4.0, -a[2]);
    return sqrt(p.u * p.u + p.v * p.v + p.w * p.w);
}
// Rate at which the water's velocity turns round, as the boat meets it.
static double sea_encounter(const double *a)
{
    const lw_sea_waves sea = one_wave(0.3, a[0], a[2] * LW_DEG);
    const double dt = 1e-3, along = sea.chains[0].x, across = sea.chains[0].y;
    const lw_sea_point p = lw_sea_at(&sea, 0.0, 0.0, 0.0, 0.0);
    const lw_sea_point q = lw_sea_at(&sea, a[1] * dt, 0.0, dt, 0.0);
    const double from = lw_atan2(p.w, p.u * along + p.v * across);
    return (from - lw_atan2(q.w, q.u * along + q.v * across)) / dt;
}
static double sea_gamma(const double *a)
{
    const lw_medium medium = {.wind_height = 10.0, .wave_height = a[0], .wave_period = a[1]};
    return lw_sea_kind_of(&medium, 10.0).gamma;
}

// Spectral moment int w^k S dw of a sea with H_s 1 m, T_p 1 s, up to 100 times the peak frequency.
static double moment(double gamma, int k)
{
    const double step = 0.002;
    double sum = 0.0;
    for (double x = -1.5; x < 4.6; x += step) {
        const double omega = 2.0 * LW_PI * lw_exp(x);
        const double S = lw_wave_spectrum((lw_wave){1.0, 1.0}, gamma, omega);
        sum += S * omega * step * (k == 0 ? 1.0 : k == 1 ? omega : omega * omega);
    }
    return sum;
}
static double spectrum_height(const double *a) { return 4.0 * sqrt(moment(a[0], 0)); }
static double spectrum_ratio(const double *a)
{
    return moment(a[0], 0) / (1.0 - 0.287 * lw_log(a[0])) / moment(1.0, 0);
}
static double spectrum_t1(const double *a)
{
    return 2.0 * LW_PI * moment(a[0], 0) / moment(a[0], 1);
}
static double spectrum_tz(const double *a)
{
    return 2.0 * LW_PI * sqrt(moment(a[0], 0) / moment(a[0], 2));
}

static double cold_shock(const double *a)
{
    (void)a;
    return LW_COLD_SHOCK;
}
static double cold_breathing(const double *a)
{
    (void)a;
    return LW_COLD_BREATHING / 60.0;
}
static double cold_movement(const double *a)
{
    (void)a;
    return LW_COLD_MOVEMENT / 60.0;
}
static double cold_unconscious(const double *a)
{
    (void)a;
    return LW_COLD_UNCONSCIOUS / 60.0;
}
static lw_cold_band band_of_degf(double t) { return lw_cold_band_of((t - 32.0) / 1.8); }
static double cold_able_from(const double *a) { return band_of_degf(a[0]).able_from / 60.0; }
static double cold_able_to(const double *a) { return band_of_degf(a[0]).able_to / 60.0; }
static double cold_alive_from(const double *a) { return band_of_degf(a[0]).alive_from / 60.0; }
static double cold_alive_to(const double *a) { return band_of_degf(a[0]).alive_to / 60.0; }

// clang-format off
#define PUBLISHED_MEDIUM                                  \
    {"eos80_density",    "kg/m3", 2, eos80_density},      \
    {"water_density",    "kg/m3", 2, water_density},      \
    {"water_nu",         "m2/s",  2, water_nu},           \
    {"fresh_mu",         "Pa s",  1, fresh_mu},           \
    {"vapour_pressure",  "Pa",    2, vapour_pressure},    \
    {"air_density",      "kg/m3", 2, air_density},        \
    {"air_mu",           "Pa s",  1, air_mu},             \
    {"air_nu",           "m2/s",  2, air_nu},             \
    {"wind_chill",       "degC",  2, wind_chill},         \
    {"wind_chill_degf",  "-",     2, wind_chill_degf},    \
    {"log_law",          "-",     2, log_law},            \
    {"power_law",        "-",     3, power_law},          \
    {"turbulence",       "-",     2, turbulence},         \
    {"gust_in_land",     "-",     1, gust_in_land},       \
    {"gust_off_land",    "-",     1, gust_off_land},      \
    {"gust_off_sea",     "-",     1, gust_off_sea},       \
    {"gust_at_sea",      "-",     1, gust_at_sea},        \
    {"puff_in_land",     "-",     1, puff_in_land},       \
    {"puff_off_land",    "-",     1, puff_off_land},      \
    {"puff_off_sea",     "-",     1, puff_off_sea},       \
    {"puff_at_sea",      "-",     1, puff_at_sea},        \
    {"kaimal",           "-",     1, kaimal},             \
    {"kaimal_integral",  "-",     0, kaimal_integral},    \
    {"wave_length",      "m",     1, wave_length},        \
    {"wave_speed",       "m/s",   1, wave_speed},         \
    {"orbital_speed",    "m/s",   3, orbital_speed},      \
    {"encounter",        "rad/s", 3, encounter},          \
    {"sea_orbital_speed", "m/s",  3, sea_orbital_speed},  \
    {"sea_encounter",    "rad/s", 3, sea_encounter},      \
    {"sea_gamma",        "-",     2, sea_gamma},          \
    {"fetch_height",     "m",     2, fetch_height},       \
    {"fetch_period",     "s",     2, fetch_period},       \
    {"period_of_height", "s",     2, period_of_height},   \
    {"developed_height", "m",     1, developed_height},   \
    {"developed_omega",  "rad/s", 1, developed_omega},    \
    {"spectrum_height",  "m",     1, spectrum_height},    \
    {"spectrum_ratio",   "-",     1, spectrum_ratio},     \
    {"spectrum_t1",      "s",     1, spectrum_t1},        \
    {"spectrum_tz",      "s",     1, spectrum_tz},        \
    {"cold_shock",       "degC",  0, cold_shock},         \
    {"cold_breathing",   "min",   0, cold_breathing},     \
    {"cold_movement",    "min",   0, cold_movement},      \
    {"cold_unconscious", "min",   0, cold_unconscious},   \
    {"cold_able_from",   "min",   1, cold_able_from},     \
    {"cold_able_to",     "min",   1, cold_able_to},       \
    {"cold_alive_from",  "min",   1, cold_alive_from},    \
    {"cold_alive_to",    "min",   1, cold_alive_to}
// clang-format on

#endif
