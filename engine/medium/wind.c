// wind.c - wind with height, its gusts and its spectrum.
// SPDX-License-Identifier: MIT

#include "medium/wind.h"

#include <string.h>

#include "lullwise/elementary.h"

double lw_wind_at(double wind, double from, double to)
{
    return wind * lw_log(to / LW_ROUGHNESS) / lw_log(from / LW_ROUGHNESS);
}

double lw_wind_at_by_power(double wind, double from, double to, double exponent)
{
    return wind * lw_pow(to / from, exponent);
}

double lw_wind_turbulence(double height, double roughness)
{
    return 1.0 / lw_log(height / roughness);
}

// A row of the gust table: `over` a time the greatest 3 s mean, and `in` ten minutes the greatest
// mean of a time, both over the mean.
#define OVER_COUNT 6
#define IN_COUNT   5
static const double over_times[OVER_COUNT] = {3.0, 60.0, 120.0, 180.0, 600.0, 3600.0};  // [s]
static const double in_times[IN_COUNT] = {3.0, 60.0, 120.0, 180.0, 600.0};              // [s]

typedef struct gust_row {
    const char *exposure;
    double over[OVER_COUNT];
    double in[IN_COUNT];
} gust_row;

// clang-format off
// The hourly value at sea is printed as 1.30; a copy that was seen has 1.40, out of line with its
// own row.
static const gust_row gust_rows[] = {
    {"in-land",  {1.00, 1.49, 1.55, 1.58, 1.66, 1.75}, {1.66, 1.21, 1.12, 1.09, 1.00}},
    {"off-land", {1.00, 1.36, 1.42, 1.44, 1.52, 1.60}, {1.52, 1.16, 1.09, 1.06, 1.00}},
    {"off-sea",  {1.00, 1.23, 1.28, 1.31, 1.38, 1.45}, {1.38, 1.11, 1.05, 1.03, 1.00}},
    {"at-sea",   {1.00, 1.11, 1.15, 1.17, 1.23, 1.30}, {1.23, 1.05, 1.02, 1.00, 1.00}},
};
// clang-format on

static const gust_row *row_of(const char *exposure)
{
    const size_t count = sizeof gust_rows / sizeof gust_rows[0];
    for (size_t i = 0; i < count; i++) {
        if (strcmp(exposure, gust_rows[i].exposure) == 0) return &gust_rows[i];
    }
    return &gust_rows[2];
}

// Straight between the columns in ln(time), and the end values beyond.
static double between(const double *times, const double *factors, int count, double time)
{
    if (!(time > times[0])) return factors[0];
    for (int i = 1; i < count; i++) {
        if (time > times[i]) continue;
        const double part = lw_log(time / times[i - 1]) / lw_log(times[i] / times[i - 1]);
        return factors[i - 1] + part * (factors[i] - factors[i - 1]);
    }
    return factors[count - 1];
}

double lw_wind_gust_factor(const char *exposure, double time)
{
    return between(over_times, row_of(exposure)->over, OVER_COUNT, time);
}

double lw_wind_puff_factor(const char *exposure, double time)
{
    return between(in_times, row_of(exposure)->in, IN_COUNT, time);
}

double lw_wind_spectrum(double wind, double height, double roughness, double n)
{
    const double u_star = 0.4 * wind / lw_log(height / roughness);
    const double z_over_U = height / wind, f = n * z_over_U;
    return u_star * u_star * 105.0 * z_over_U / lw_pow(1.0 + 33.0 * f, 5.0 / 3.0);
}
