// curve.c - slopes of a smooth curve through evenly spaced knots.
// SPDX-License-Identifier: MIT

#include "solve/curve.h"

// Harmonic mean of the neighbouring differences, zero where they differ in sign [fritsch-butland].
static double slope_between(double before, double after)
{
    return before * after > 0.0 ? 2.0 * before * after / (before + after) : 0.0;
}

void lw_curve_smooth(lw_curve *curve)
{
    const double *f = curve->value;
    const int n = LW_CURVE_KNOTS;
    for (int i = 1; i < n - 1; i++) {
        curve->slope[i] = slope_between(f[i] - f[i - 1], f[i + 1] - f[i]);
    }
    curve->slope[0] = f[1] - f[0];
    curve->slope[n - 1] = f[n - 1] - f[n - 2];
}
