// curve.h - a smooth function of one variable on evenly spaced knots, read in lanes.
// SPDX-License-Identifier: MIT

#ifndef LW_CURVE_H
#define LW_CURVE_H

#include "lullwise/craft.h"
#include "solve/lanes.h"

// Fills the slopes so that the curve is monotone wherever the values are [fritsch-butland].
void lw_curve_smooth(lw_curve *curve);

// Cubic Hermite between the knots, constant beyond the ends.
LW_INLINE lw_lanes lw_curve_at(const lw_curve *curve, lw_lanes x)
{
    const lw_lanes last = lw_all(LW_CURVE_KNOTS - 1.0);
    const lw_lanes u = lw_lanes_clamp((x - curve->first) / curve->step, lw_all(0.0), last);
    lw_lanes f_0, f_1, m_0, m_1, t;
    for (int i = 0; i < LW_WIDTH; i++) {
        int k = (int)u[i];
        if (k > LW_CURVE_KNOTS - 2) k = LW_CURVE_KNOTS - 2;
        t[i] = u[i] - k;
        f_0[i] = curve->value[k], f_1[i] = curve->value[k + 1];
        m_0[i] = curve->slope[k], m_1[i] = curve->slope[k + 1];
    }
    const lw_lanes r = 1.0 - t;
    return r * r * ((1.0 + 2.0 * t) * f_0 + t * m_0) + t * t * ((3.0 - 2.0 * t) * f_1 - r * m_1);
}

#endif
