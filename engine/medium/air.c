// air.c - density and viscosity of the air, and its chill.
// SPDX-License-Identifier: MIT

#include "lullwise/air.h"

#include <math.h>

#include "lullwise/elementary.h"

#define ZERO_CELSIUS 273.15

double lw_air_density(lw_air air)
{
    return air.pressure / (287.05287 * (air.temperature + ZERO_CELSIUS));
}

double lw_air_viscosity(lw_air air)
{
    const double T = air.temperature + ZERO_CELSIUS;
    return 1.458e-6 * T * sqrt(T) / (T + 110.4);
}

double lw_wind_chill(double temperature, double wind)
{
    const double t = temperature, v = 3.6 * wind;
    if (t > 10.0 || v < 4.8) return t;
    const double v_16 = lw_pow(v, 0.16);
    return 13.12 + 0.6215 * t - 11.37 * v_16 + 0.3965 * t * v_16;
}
