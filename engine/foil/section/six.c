// six.c - thickness of the NACA six-series sections by a conformal map.
// SPDX-License-Identifier: MIT
//
// A circle at angle phi goes to exp(psi + i theta), and that by z + 1/z to the section:
//
//     x ~ cosh psi cos theta,   y ~ sinh psi sin theta                    [theodorsen-garrick]
//     psi = k sum b_n cos n phi,   theta = phi - k sum b_n sin n phi
//
// The sums belong together, as the map is regular outside. k = 1 is the section of 12 %; others of
// its family differ in k alone [ladson-brooks]. The b_n are our own least squares to the ordinates
// of the 12 % sections in [carmichael], which end at 95 % of the chord; the cusp behind is drawn on
// by the power of the distance from the tail that 90 and 95 % give.

#include <math.h>

#include "foil/section/outline.h"
#include "lullwise/base.h"
#include "lullwise/elementary.h"

#define TERMS 24

// clang-format off
static const double b[4][TERMS] = {
    {0.089500, 0.068271, -0.021545, 0.001233, 0.001895, 0.000902, 0.000773, 0.000458, 0.000507,
     0.000437, 0.000307, 0.000191, 0.000131, 0.000106, 0.000050, 0.000022, -0.000019, -0.000023,
     -0.000027, -0.000013, 0.000001, -0.000007, 0.000002, -0.000002},
    {0.089202, 0.065044, -0.022395, 0.003312, 0.002941, 0.001916, 0.000933, 0.000728, 0.000823,
     0.000653, 0.000332, 0.000185, 0.000157, 0.000154, 0.000042, -0.000002, -0.000046, -0.000005,
     -0.000019, -0.000010, -0.000002, -0.000005, -0.000001, -0.000001},
    {0.089041, 0.057526, -0.026403, 0.006026, 0.002481, 0.001811, 0.001017, 0.001309, 0.001136,
     0.000686, 0.000457, 0.000383, 0.000248, 0.000166, 0.000033, 0.000051, -0.000025, -0.000005,
     -0.000046, -0.000017, -0.000012, -0.000009, -0.000003, -0.000003},
    {0.092162, 0.050042, -0.028881, 0.012605, 0.000862, 0.001737, 0.002132, 0.002053, 0.000913,
     0.000890, 0.000780, 0.000412, 0.000132, 0.000240, 0.000032, -0.000024, -0.000086, -0.000002,
     -0.000140, -0.000040, -0.000021, -0.000011, 0.000006, -0.000004},
};
// clang-format on

typedef struct place {
    double x, y;
} place;

static place place_at(const double *series, double k, double phi)
{
    const double c = lw_cos(phi), s = lw_sin(phi);
    double psi = 0.0, turn = 0.0, c_n = 1.0, s_n = 0.0;
    for (int n = 0; n < TERMS; n++) {
        psi += series[n] * c_n;
        turn += series[n] * s_n;
        const double next = c_n * c - s_n * s;
        s_n = s_n * c + c_n * s;
        c_n = next;
    }
    const double theta = phi - k * turn;
    return (place){lw_cosh(k * psi) * lw_cos(theta), lw_sinh(k * psi) * lw_sin(theta)};
}

// Points of the upper side in chords; the greatest thickness is the answer.
static double upper_side(const double *series, double k, int steps, double *x, double *y)
{
    const double nose = place_at(series, k, 0.0).x, tail = place_at(series, k, LW_PI).x;
    double most = 0.0;
    for (int i = 0; i <= steps; i++) {
        const place p = place_at(series, k, LW_PI * i / steps);
        x[i] = (nose - p.x) / (nose - tail);
        y[i] = p.y / (nose - tail);
        most = fmax(most, 2.0 * y[i]);
    }
    return most;
}

bool lw_thickness_six(int family, double t, int steps, double *x, double *y)
{
    if (family < 3 || family > 6) return false;
    const double *series = b[family - 3];
    double low = 0.02, high = 3.0;
    for (int step = 0; step < 40; step++) {
        const double k = 0.5 * (low + high);
        *(upper_side(series, k, steps, x, y) < t ? &low : &high) = k;
    }
    upper_side(series, low, steps, x, y);
    x[0] = 0.0;
    x[steps] = 1.0;
    return true;
}
