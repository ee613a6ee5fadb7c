// michell.c - wave resistance of Wigley's hull by Michell's integral.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/elementary.h"
#include "lullwise/hull_shape.h"

// int_0^1 (1 - s^2) e^(-q s) ds
static double depth_integral(double q)
{
    if (q > 0.5) return 1.0 / q - 2.0 / (q * q * q) * (1.0 - (1.0 + q) * lw_exp(-q));
    double sum = 0.0, power = 1.0;  // of the series of e^(-q s)
    for (int k = 0; k < 12; k++) {
        sum += power * 2.0 / ((k + 1.0) * (k + 3.0));
        power *= -q / (k + 1.0);
    }
    return sum;
}

// int_-1^1 s sin(p s) ds
static double length_integral(double p) { return 2.0 * (lw_sin(p) / p - lw_cos(p)) / p; }

double lw_hull_form_wave_area(lw_hull_form form, double speed)
{
    const double L = form.length, B = form.beam, T = form.draft, g = LW_GRAVITY;
    const double V_2 = fmax(speed * speed, 0.01 * g * L), n = g / V_2;
    const double c_most = fmax(8.0, sqrt(40.0 / (n * T)));  // beyond lies 1e-4 of the integral
    const double u_most = lw_log(2.0 * c_most);
    const int steps = 32 + (int)(4.0 * n * L);

    double sum = 0.0;
    for (int i = 0; i <= steps; i++) {
        const double e = lw_exp(u_most * i / steps), c = 0.5 * (e + 1.0 / e);
        const double J = length_integral(0.5 * n * L * c) * depth_integral(n * T * c * c);
        sum += (i == 0 ? 0.5 : 1.0) * J * J * c * c;
    }
    // y_x = -2 B/L s (1 - (z/T)^2), and dx dz = L/2 T ds d(z/T)
    const double scale = B * T, integral = scale * scale * sum * u_most / steps;
    return 8.0 * n * n / LW_PI * integral;
}
