// cold.c - times in cold water, and the chill of wind.
// SPDX-License-Identifier: MIT

#include "lullwise/medium.h"

#include <stddef.h>

#include "lullwise/elementary.h"

#define MINUTE 60.0
#define HOUR   3600.0
#define DAY    86400.0

#define DEGF(t) (((t)-32.0) / 1.8)  // [degC]

// clang-format off
// An edge belongs to the warmer band.
static const lw_cold_band bands[] = {
    {DEGF(32.5),  0.0 * MINUTE, 15.0 * MINUTE, 15.0 * MINUTE, 45.0 * MINUTE},
    {DEGF(40.0), 15.0 * MINUTE, 30.0 * MINUTE, 30.0 * MINUTE, 90.0 * MINUTE},
    {DEGF(50.0), 30.0 * MINUTE, 60.0 * MINUTE,  1.0 * HOUR,    3.0 * HOUR},
    {DEGF(60.0),  1.0 * HOUR,    2.0 * HOUR,    1.0 * HOUR,    6.0 * HOUR},
    {DEGF(70.0),  2.0 * HOUR,    7.0 * HOUR,    2.0 * HOUR,   40.0 * HOUR},
    {DEGF(80.0),  3.0 * HOUR,   12.0 * HOUR,    3.0 * HOUR,    DAY},
    {99.0,        DAY,           DAY,           DAY,           DAY},
};
// clang-format on

lw_cold_band lw_cold_band_of(double temperature)
{
    const size_t last = sizeof bands / sizeof bands[0] - 1;
    for (size_t i = 0; i < last; i++) {
        if (temperature < bands[i].below) return bands[i];
    }
    return bands[last];
}

double lw_wind_chill(double temperature, double wind)
{
    const double t = temperature, v = 3.6 * wind;
    if (!(t <= 10.0 && v > 4.8)) return t;
    const double v_16 = lw_pow(v, 0.16);
    return 13.12 + 0.6215 * t - 11.37 * v_16 + 0.3965 * t * v_16;
}
