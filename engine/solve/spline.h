// spline.h - a curve through points: cubic pieces with continuous slope and curvature.
// SPDX-License-Identifier: MIT

#ifndef LW_SPLINE_H
#define LW_SPLINE_H

// Slopes dy/ds at rising s_0 .. s_n-1, n >= 3. The curvature changes not at all in the first and
// the last piece. `spare`: n doubles, used up.
void lw_spline_slopes(int n, const double *s, const double *y, double *slope, double *spare);

typedef struct lw_spline_point {
    double value, slope;
} lw_spline_point;

// Value and slope at s; beyond the ends the last piece goes on.
lw_spline_point lw_spline_at(int n, const double *s, const double *y, const double *slope,
                             double at);

#endif
