// bspline.h - smooth functions of two or three variables on even knots, read lane by lane.
// SPDX-License-Identifier: MIT
//
// Cubic B-splines: slope and curvature are continuous across the knots. A row of n knots has n + 2
// coefficients, the first standing one knot before the first value.

#ifndef LW_BSPLINE_H
#define LW_BSPLINE_H

#include <stddef.h>

#include "solve/lanes.h"

// Four numbers read at once, whatever the width of the lanes.
typedef double lw_four __attribute__((vector_size(32), aligned(8), may_alias));

// Coefficients of the spline through n values, n >= 5, in place: row[0] and row[(n + 1) * stride]
// are filled, values stand between. No change of the third derivative at the second knot from
// either end.
void lw_bspline_fit(double *row, int n, ptrdiff_t stride);

// Where lanes of u fall among n knots, u counted in knots and held between them: the first of four
// coefficients, and their weights.
typedef struct lw_bspline_interval {
    int first[LW_WIDTH];
    lw_lanes value[4];
} lw_bspline_interval;

LW_INLINE lw_bspline_interval lw_bspline_interval_of(int n, lw_lanes u)
{
    lw_bspline_interval in;
    lw_lanes t;
    const lw_lanes held = lw_lanes_clamp(u, lw_all(0.0), lw_all(n - 1.0));
    LW_EACH_LANE (i) {
        const int k = (int)held[i];
        in.first[i] = k < n - 2 ? k : n - 2;
        t[i] = held[i] - in.first[i];
    }
    const lw_lanes r = 1.0 - t, t_2 = t * t, r_2 = r * r;
    in.value[0] = (1.0 / 6.0) * (r_2 * r);
    in.value[1] = (2.0 / 3.0) - t_2 * (1.0 - 0.5 * t);
    in.value[2] = (2.0 / 3.0) - r_2 * (1.0 - 0.5 * r);
    in.value[3] = (1.0 / 6.0) * (t_2 * t);
    return in;
}

#endif
