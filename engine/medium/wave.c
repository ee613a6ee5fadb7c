// wave.c - one wave on deep water, and the sea that a wind raises.
// SPDX-License-Identifier: MIT

#include "lullwise/medium.h"

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/elementary.h"

static const double g = LW_GRAVITY;

double lw_wave_length(double period) { return g * period * period / (2.0 * LW_PI); }

double lw_wave_speed(double period) { return g * period / (2.0 * LW_PI); }

double lw_wave_orbital_speed(lw_wave wave, double z)
{
    const double k = 2.0 * LW_PI / lw_wave_length(wave.period);
    return LW_PI * wave.height / wave.period * lw_exp(k * z);
}

double lw_wave_encounter(double omega, double speed, double mu)
{
    return omega - omega * omega / g * speed * lw_cos(mu);
}

lw_wave lw_wave_of_fetch(double wind_at_10_m, double fetch)
{
    const double U = wind_at_10_m;
    if (!(U > 0.0 && fetch > 0.0)) return (lw_wave){0.0, 0.0};
    const double F = g * fetch / (U * U);
    const double H = fmin(0.0016 * sqrt(F), 0.243);
    const double T = fmin(0.286 * lw_cbrt(F), 8.13);
    return (lw_wave){.height = H * U * U / g, .period = T * U / g};
}

double lw_wave_period_of_height(double wind_at_10_m, double height)
{
    const double U = fmax(wind_at_10_m, 0.1);
    const double H = g * height / (U * U);
    const double growing = 0.286 * lw_cbrt(H * H / (0.0016 * 0.0016)) * U / g;
    const double developed = 8.13 * sqrt(height / (0.243 * g));
    return fmin(growing, developed);
}

double lw_wave_spectrum(lw_wave sea, double gamma, double omega)
{
    if (!(omega > 0.0 && sea.period > 0.0)) return 0.0;
    const double omega_p = 2.0 * LW_PI / sea.period, H_s = sea.height;
    const double x = omega / omega_p, x_2 = x * x, x_4 = x_2 * x_2;
    const double s = x <= 1.0 ? 0.07 : 0.09;
    const double r = lw_exp(-(x - 1.0) * (x - 1.0) / (2.0 * s * s));
    const double A = 5.0 / 16.0 * H_s * H_s / omega_p * (1.0 - 0.287 * lw_log(gamma));
    return A / (x_4 * x) * lw_exp(-1.25 / x_4) * lw_pow(gamma, r);
}

lw_wave lw_wave_fully_developed(double wind_at_19_5_m)
{
    const double U = wind_at_19_5_m, alpha = 0.0081, beta = 0.74;
    return (lw_wave){.height = 2.0 * U * U / g * sqrt(alpha / beta),
                     .period = 2.0 * LW_PI * U / g / sqrt(sqrt(0.8 * beta))};
}
