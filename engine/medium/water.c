// water.c - density, viscosity and vapour pressure of fresh water and of the sea.
// SPDX-License-Identifier: MIT

#include "medium/water.h"

#include <math.h>

#include "lullwise/elementary.h"

#define ZERO_CELSIUS 273.15

double lw_eos80_density(double t, double S)
{
    const double rho_w =
        999.842594 +
        t * (6.793952e-2 +
             t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
    const double A =
        8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
    const double B = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
    const double C = 4.8314e-4;
    return rho_w + S * (A + B * sqrt(S) + C * S);
}

double lw_water_density(lw_water water)
{
    return lw_eos80_density(1.00024 * water.temperature, water.salinity * (35.0 / 35.16504));
}

double lw_fresh_viscosity(double temperature)
{
    static const double a[] = {280.68, 511.45, 61.131, 0.45903};
    static const double b[] = {-1.9, -7.7, -19.6, -40.0};
    const double ratio = (temperature + ZERO_CELSIUS) / 300.0;
    double sum = 0.0;
    for (int i = 0; i < 4; i++) sum += a[i] * lw_pow(ratio, b[i]);
    return 1e-6 * sum;
}

double lw_water_viscosity(lw_water water)
{
    const double t = water.temperature, S = 1e-3 * water.salinity;
    const double A = 1.541 + t * (1.998e-2 - t * 9.52e-5);
    const double B = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
    const double mu = lw_fresh_viscosity(t) * (1.0 + S * (A + B * S));
    return mu / lw_water_density(water);
}

// Saturation pressure, region 4 of [iapws-if97], equation 30.
static double saturation_pressure(double T)
{
    static const double n[] = {0.11670521452767e4,  -0.72421316703206e6, -0.17073846940092e2,
                               0.12020824702470e5,  -0.32325550322333e7, 0.14915108613530e2,
                               -0.48232657361591e4, 0.40511340542057e6,  -0.23855557567849,
                               0.65017534844798e3};
    const double theta = T + n[8] / (T - n[9]);
    const double A = theta * (theta + n[0]) + n[1];
    const double B = theta * (n[2] * theta + n[3]) + n[4];
    const double C = theta * (n[5] * theta + n[6]) + n[7];
    const double root = 2.0 * C / (-B + sqrt(B * B - 4.0 * A * C));
    return 1e6 * root * root * root * root;
}

double lw_vapour_pressure(lw_water water)
{
    const double S = water.salinity;
    return saturation_pressure(water.temperature + ZERO_CELSIUS) /
           (1.0 + 0.57357 * S / (1000.0 - S));
}
