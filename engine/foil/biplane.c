// biplane.c - interference of two equal elliptic loads, in the Trefftz plane.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/elementary.h"
#include "lullwise/planform.h"

#define POINTS 256  // the integrand is even and periodic: midpoints converge like exp(-4 n G/b)

double lw_planform_interference(double gap_over_span)
{
    const double gap = 2.0 * fmax(gap_over_span, 0.02);
    double cosine[POINTS];
    for (int i = 0; i < POINTS; i++) cosine[i] = lw_cos((i + 0.5) * LW_PI / POINTS);

    double sum = 0.0;
    for (int i = 0; i < POINTS; i++) {
        for (int j = 0; j <= i; j++) {
            const double apart = cosine[i] - cosine[j];
            const double part = cosine[i] * cosine[j] * lw_log(apart * apart + gap * gap);
            sum += i == j ? part : 2.0 * part;
        }
    }
    return -sum / ((double)POINTS * POINTS);
}
