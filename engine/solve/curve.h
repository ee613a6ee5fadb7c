// curve.h - a smooth function of one variable on evenly spaced knots, read in lanes.
// SPDX-License-Identifier: MIT

#ifndef LW_CURVE_H
#define LW_CURVE_H

#include "lullwise/prepared.h"
#include "solve/lanes.h"

// Fills the slopes so that the curve is monotone wherever the values are [fritsch-butland].
void lw_curve_smooth(lw_curve *curve);

// Where lanes of x fall among a curve's knots; curves on the same knots share it.
typedef struct lw_interval {
    int below[LW_WIDTH];
    lw_lanes part;  // of the way to the next knot
} lw_interval;

LW_INLINE lw_interval lw_interval_of(double first, double step, lw_lanes x)
{
    const lw_lanes last = lw_all(LW_CURVE_KNOTS - 1.0);
    const lw_lanes u = lw_lanes_clamp((x - first) * (1.0 / step), lw_all(0.0), last);
    lw_interval in;
    LW_EACH_LANE (i) {
        const int k = (int)u[i];
        in.below[i] = k < LW_CURVE_KNOTS - 2 ? k : LW_CURVE_KNOTS - 2;
        in.part[i] = u[i] - in.below[i];
    }
    return in;
}

// Cubic Hermite between the knots, constant beyond the ends.
LW_INLINE lw_lanes lw_curve_read(const lw_curve *curve, lw_interval in)
{
    lw_lanes f_0, f_1, m_0, m_1;
    LW_EACH_LANE (i) {
        const int k = in.below[i];
        f_0[i] = curve->value[k], f_1[i] = curve->value[k + 1];
        m_0[i] = curve->slope[k], m_1[i] = curve->slope[k + 1];
    }
    const lw_lanes t = in.part, rise = f_1 - f_0;
    const lw_lanes bend = m_0 - rise, fall = rise - m_1;
    return f_0 + t * (rise + (1.0 - t) * ((1.0 - t) * bend + t * fall));
}

LW_INLINE lw_lanes lw_curve_at(const lw_curve *curve, lw_lanes x)
{
    return lw_curve_read(curve, lw_interval_of(curve->first, curve->step, x));
}

#endif
