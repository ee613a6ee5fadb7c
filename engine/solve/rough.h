// rough.h - sine, cosine and exponential to eight digits, for sums of which eight are plenty.
// SPDX-License-Identifier: MIT
//
// Taylor's series of a part of the argument, and the rest by doubling: no selection, no table. The
// same bits on every machine, as in elementary.h, at less than half of its cost.

#ifndef LW_ROUGH_H
#define LW_ROUGH_H

#include "solve/bits.h"

// Holds for    |x| <= 1e6, where the error is 1e-10 more.    Within 2e-8.
LW_INLINE void lw_rough_sincos(lw_lanes x, lw_lanes *sine, lw_lanes *cosine)
{
    const double per_turn = 0.15915494309189535, turn = 6.28318530717958648;
    const lw_lanes t = 0.25 * (x - turn * lw_nearest(x * per_turn).value);  // |t| <= pi/4
    const lw_lanes z = t * t;
    const lw_lanes s =
        t * (1.0 + z * (-1.0 / 6 + z * (1.0 / 120 + z * (-1.0 / 5040 + z * (1.0 / 362880)))));
    const lw_lanes half =  // 1 - cos t
        z * (0.5 + z * (-1.0 / 24 + z * (1.0 / 720 + z * (-1.0 / 40320 + z * (1.0 / 3628800)))));
    const lw_lanes c = 1.0 - half;
    const lw_lanes s_2 = 2.0 * s * c, c_2 = 1.0 - 2.0 * s * s;
    *sine = 2.0 * s_2 * c_2;
    *cosine = 1.0 - 2.0 * s_2 * s_2;
}

// e^-x
// Holds for    x >= 0; from 16 on it stays where it is.    Within 1.2e-7.
LW_INLINE lw_lanes lw_rough_decay(lw_lanes x)
{
    const lw_lanes t = -0.0625 * lw_lanes_min(x, lw_all(16.0));
    const lw_lanes root =
        1.0 +
        t * (1.0 + t * (0.5 + t * (1.0 / 6 + t * (1.0 / 24 + t * (1.0 / 120 + t * (1.0 / 720))))));
    const lw_lanes r_2 = root * root, r_4 = r_2 * r_2, r_8 = r_4 * r_4;
    return r_8 * r_8;
}

#endif
