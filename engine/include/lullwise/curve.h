// curve.h - a smooth function of one variable on evenly spaced knots; solve/curve.h reads it.
// SPDX-License-Identifier: MIT

#ifndef LW_CURVE_RECORD_H
#define LW_CURVE_RECORD_H

#define LW_CURVE_KNOTS 49

typedef struct lw_curve {
    double first, step;  // x of knot 0, distance between knots
    double value[LW_CURVE_KNOTS];
    double slope[LW_CURVE_KNOTS];  // d value / d (x / step)
} lw_curve;

#endif
