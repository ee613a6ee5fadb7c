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
// of the 12 % sections in [carmichael].

#include <math.h>

#include "foil/section/outline.h"
#include "lullwise/base.h"
#include "lullwise/elementary.h"

#define TERMS 24

// clang-format off
static const double b[4][TERMS] = {
    {0.088989, 0.069289, -0.022572, 0.002158, 0.001102, 0.001499, 0.000363, 0.000637, 0.000529,
     0.000199, 0.000709, -0.000363, 0.000768, -0.000586, 0.000726, -0.000615, 0.000522, -0.000469,
     0.000294, -0.000246, 0.000129, -0.000070, 0.000028, -0.000007},
    {0.088044, 0.067355, -0.024725, 0.005440, 0.001106, 0.003327, -0.000056, 0.001205, 0.000818,
     0.000161, 0.001224, -0.001074, 0.001641, -0.001479, 0.001669, -0.001553, 0.001303, -0.001132,
     0.000821, -0.000624, 0.000359, -0.000205, 0.000095, -0.000027},
    {0.088625, 0.058354, -0.027235, 0.006791, 0.001822, 0.002316, 0.000666, 0.001478, 0.001135,
     0.000512, 0.000770, -0.000055, 0.000761, -0.000394, 0.000588, -0.000473, 0.000429, -0.000381,
     0.000233, -0.000221, 0.000104, -0.000074, 0.000030, -0.000016},
    {0.092266, 0.049819, -0.028672, 0.012395, 0.001034, 0.001591, 0.002224, 0.002000, 0.000906,
     0.000938, 0.000679, 0.000544, -0.000033, 0.000411, -0.000141, 0.000128, -0.000215, 0.000083,
     -0.000192, -0.000042, -0.000021, -0.000016, 0.000012, -0.000005},
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
