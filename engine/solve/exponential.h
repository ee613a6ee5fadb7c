// exponential.h - exp, log and what rests on them over lanes, without a branch or a table.
// SPDX-License-Identifier: MIT
//
// Minimax coefficients of [fdlibm]. Accuracy, in units in the last place, stands with each
// function: test/test_elementary.c measures it.

#ifndef LW_EXPONENTIAL_H
#define LW_EXPONENTIAL_H

#include "solve/bits.h"

#define LW_LN2_1 6.93147180369123816490e-01  // ln 2 in two pieces; the first has 33 bits
#define LW_LN2_2 1.90821492927058770002e-10

// exp(x + tail), |tail| far below |x|:  2^k exp(r),  r = x + tail - k ln 2.
LW_INLINE lw_lanes lw_exp_of(lw_lanes x, lw_lanes tail)
{
    const double P1 = 1.66666666666666019037e-01, P2 = -2.77777777770155933842e-03,
                 P3 = 6.61375632143793436117e-05, P4 = -1.65339022054652515390e-06,
                 P5 = 4.13813679705723846039e-08;
    const double per_ln2 = 1.44269504088896338700e+00;

    // outside -746..710 the result is 0 or infinite anyhow; NaN passes
    const lw_mask is_over = x > 710.0, is_under = x < -746.0;
    const lw_lanes within =
        lw_select(is_over, lw_all(710.0), lw_select(is_under, lw_all(-746.0), x));

    const lw_lanes k = lw_nearest(within * per_ln2).value;
    const lw_lanes high = within - k * LW_LN2_1;  // exact
    const lw_lanes low = k * LW_LN2_2 - tail;
    const lw_lanes r = high - low, z = r * r;
    const lw_lanes c = r - z * (P1 + z * (P2 + z * (P3 + z * (P4 + z * P5))));
    return lw_scaled(1.0 - ((low - (r * c) / (2.0 - c)) - high), k);
}

// Holds for    all x; infinite above 709.78, subnormal below -708.4.    Below 0.9 ulp.
LW_INLINE lw_lanes lw_lanes_exp(lw_lanes x) { return lw_exp_of(x, lw_all(0.0)); }

// Where log has no finite value: -inf at 0, NaN below, inf at inf, NaN at NaN.
LW_INLINE lw_lanes lw_log_edges(lw_lanes x, lw_lanes log)
{
    const lw_lanes inf = lw_all(__builtin_inf()), nan = lw_all(__builtin_nan(""));
    const lw_lanes right = lw_select(x < inf, log, x);
    return lw_select(x > 0.0, right, lw_select(x == 0.0, -inf, nan));
}

// log(1 + f) = f - f^2/2 + s (f^2/2 + R(s^2)),  s = f / (2 + f): the last product.
LW_INLINE lw_lanes lw_log_rest(lw_lanes f)
{
    const double L1 = 6.666666666666735130e-01, L2 = 3.999999999940941908e-01,
                 L3 = 2.857142874366239149e-01, L4 = 2.222219843214978396e-01,
                 L5 = 1.818357216161805012e-01, L6 = 1.531383769920937332e-01,
                 L7 = 1.479819860511658591e-01;

    const lw_lanes s = f / (2.0 + f), z = s * s, w = z * z;
    const lw_lanes odd = z * (L1 + w * (L3 + w * (L5 + w * L7)));
    const lw_lanes even = w * (L2 + w * (L4 + w * L6));
    return s * (0.5 * f * f + (even + odd));
}

// Natural logarithm: k ln 2 + log(1 + f), sqrt(1/2) <= 1 + f < sqrt(2).
// Holds for    all x.    Below 0.9 ulp.
LW_INLINE lw_lanes lw_lanes_log(lw_lanes x)
{
    const lw_parts parts = lw_parts_of(x);
    const lw_lanes k = parts.exponent, f = parts.significand - 1.0;
    const lw_lanes half = 0.5 * f * f;
    const lw_lanes log = k * LW_LN2_1 - ((half - (lw_log_rest(f) + k * LW_LN2_2)) - f);
    return lw_log_edges(x, log);
}

#endif
