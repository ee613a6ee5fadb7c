// rough.h - sine, cosine and exponential to six digits, for sums of which six are plenty.
// SPDX-License-Identifier: MIT
//
// Taylor's series of a part of the argument, and the rest by doubling: no selection, no table. The
// same bits on every machine, as in elementary.h, at about a third of its cost.

#ifndef LW_ROUGH_H
#define LW_ROUGH_H

#include "lullwise/base.h"
#include "solve/bits.h"

// Sine and cosine of an angle in turns: its quarter by the series, and the rest by doubling.
// Holds for    |turns| <= 1e9.    Within 2e-6, and 7 |turns| 2^-53 more.
LW_INLINE void lw_rough_of_turns(lw_lanes turns, lw_lanes *sine, lw_lanes *cosine)
{
    const double a = 0.5 * LW_PI, b = a * a;
    const lw_lanes t = turns - lw_nearest(turns).value, z = t * t;
    const lw_lanes s =
        t * (a + z * (-a * b / 6 + z * (a * b * b / 120 + z * (-a * b * b * b / 5040))));
    const lw_lanes half =  // 1 - c
        z * (b / 2 + z * (-b * b / 24 + z * (b * b * b / 720 + z * (-b * b * b * b / 40320))));
    const lw_lanes c = 1.0 - half, s_s = s + s;
    const lw_lanes s_2 = s_s * c, c_2 = 1.0 - s_s * s, s_4 = s_2 + s_2;
    *sine = s_4 * c_2;
    *cosine = 1.0 - s_4 * s_2;
}

// e^-x
// Holds for    x >= 0; from 16 on it stays where it is.    Within 4e-6.
LW_INLINE lw_lanes lw_rough_decay(lw_lanes x)
{
    const lw_lanes t = -0.0625 * lw_lanes_min(x, lw_all(16.0));
    const lw_lanes root = 1.0 + t * (1.0 + t * (0.5 + t * (1.0 / 6 + t * (1.0 / 24))));
    const lw_lanes r_2 = root * root, r_4 = r_2 * r_2, r_8 = r_4 * r_4;
    return r_8 * r_8;
}

#endif
