// spline.c - cubic splines by their slopes.
// SPDX-License-Identifier: MIT

#include "solve/spline.h"

// A cubic's second derivative at the nearer end of a piece of length h with chord slope c:
// (6 c - 4 y'_near - 2 y'_far) / h. Continuity inside, and no change in the end pieces, give a
// three-banded set of equations for the slopes.
void lw_spline_slopes(int n, const double *s, const double *y, double *slope, double *spare)
{
    double *upper = spare;
    upper[0] = 1.0;  // y'_0 + y'_1 = 2 c: the end piece is a parabola
    slope[0] = 2.0 * (y[1] - y[0]) / (s[1] - s[0]);
    for (int i = 1; i < n - 1; i++) {
        const double before = 1.0 / (s[i] - s[i - 1]), after = 1.0 / (s[i + 1] - s[i]);
        const double right =
            3.0 * ((y[i] - y[i - 1]) * before * before + (y[i + 1] - y[i]) * after * after);
        const double pivot = 2.0 * (before + after) - before * upper[i - 1];
        upper[i] = after / pivot;
        slope[i] = (right - before * slope[i - 1]) / pivot;
    }
    const double last = 2.0 * (y[n - 1] - y[n - 2]) / (s[n - 1] - s[n - 2]);
    slope[n - 1] = (last - slope[n - 2]) / (1.0 - upper[n - 2]);
    for (int i = n - 2; i >= 0; i--) slope[i] -= upper[i] * slope[i + 1];
}

static int piece_of(int n, const double *s, double at)
{
    int low = 0, high = n - 1;
    while (high - low > 1) {
        const int middle = (low + high) / 2;
        if (at < s[middle]) {
            high = middle;
        } else {
            low = middle;
        }
    }
    return low;
}

lw_spline_point lw_spline_at(int n, const double *s, const double *y, const double *slope,
                             double at)
{
    const int i = piece_of(n, s, at);
    const double h = s[i + 1] - s[i], t = (at - s[i]) / h;
    const double rise = y[i + 1] - y[i];
    const double a = h * slope[i] - rise, b = h * slope[i + 1] - rise;
    const double value = y[i] + t * rise + t * (1.0 - t) * ((1.0 - t) * a - t * b);
    const double bend = (1.0 - 2.0 * t) * ((1.0 - t) * a - t * b) - t * (1.0 - t) * (a + b);
    return (lw_spline_point){.value = value, .slope = (rise + bend) / h};
}
