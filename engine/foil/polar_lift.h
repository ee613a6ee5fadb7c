// polar_lift.h - inside the foil folder: lift as a straight line, bent where it stalls.
// SPDX-License-Identifier: MIT

#ifndef LW_POLAR_LIFT_H
#define LW_POLAR_LIFT_H

#include "lullwise/polar.h"

// A straight line below -1, x between, 1 above, with corners of sharpness k.
double lw_lift_bent(double k, double x);

// The x at which the bend has this value; 3 at most, either way.
double lw_lift_unbent(double k, double value);

// A straight line bent: c_l = most s(slope (alpha - zero) / most).
typedef struct lw_lift_curve {
    double k, slope, zero, most, down, share;
    double off;  // sum of squares
} lw_lift_curve;

// Fitted to a row: with a sharpness given, or with the best one.
lw_lift_curve lw_lift_curve_with(double k, const lw_polar_row *row);
lw_lift_curve lw_lift_curve_of(const lw_polar_row *row);

#endif
