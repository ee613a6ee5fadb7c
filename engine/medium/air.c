// air.c - density and viscosity of the air.
// SPDX-License-Identifier: MIT

#include "medium/air.h"

#include <math.h>

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
