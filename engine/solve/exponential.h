// exponential.h - exp, log, log10 over lanes, without a branch or a table.
// SPDX-License-Identifier: MIT
//
// Minimax coefficients of [fdlibm]. Accuracy, in units in the last place, stands with each
// function: test/test_elementary.c measures it.

#ifndef LW_EXPONENTIAL_H
#define LW_EXPONENTIAL_H

#include "solve/pair.h"

#define LW_LN2_1 6.93147180369123816490e-01  // ln 2 in two pieces; the first has 33 bits
#define LW_LN2_2 1.90821492927058770002e-10

// 2^power (value.high + value.low)
typedef struct lw_exponential {
    lw_lanes power;
    lw_pair value;  // sqrt(1/2) to sqrt(2), to about 56 bits
} lw_exponential;

// exp(x + tail), |tail| far below |x|:  2^k exp(r),  r = x + tail - k ln 2.
LW_INLINE lw_exponential lw_exp_of(lw_lanes x, lw_lanes tail)
{
    const double P1 = 1.66666666666666019037e-01, P2 = -2.77777777770155933842e-03,
                 P3 = 6.61375632143793436117e-05, P4 = -1.65339022054652515390e-06,
                 P5 = 4.13813679705723846039e-08;
    const double per_ln2 = 1.44269504088896338700e+00;

    // outside -746..711 the result is 0 or infinite anyhow; NaN passes
    const lw_mask is_over = x > 711.0, is_under = x < -746.0;
    const lw_lanes low_end = lw_select(is_under, lw_all(-746.0), x);
    const lw_lanes within = lw_select(is_over, lw_all(711.0), low_end);

    const lw_lanes k = lw_nearest(within * per_ln2).value;
    const lw_lanes high = within - k * LW_LN2_1;  // exact
    const lw_lanes low = k * LW_LN2_2 - tail;
    const lw_lanes r = high - low, z = r * r;
    const lw_lanes c = r - z * (P1 + z * (P2 + z * (P3 + z * (P4 + z * P5))));
    const lw_pair above_one = lw_pair_sum(high, (r * c) / (2.0 - c) - low);
    const lw_pair sum = lw_pair_sum(lw_all(1.0), above_one.high);
    return (lw_exponential){.power = k, .value = {sum.high, sum.low + above_one.low}};
}

// Holds for    all x; infinite above 709.78, subnormal below -708.4.
// Below 0.7 ulp; below 1.1 where the result is subnormal.
LW_INLINE lw_lanes lw_lanes_exp(lw_lanes x)
{
    const lw_exponential e = lw_exp_of(x, lw_all(0.0));
    return lw_scaled(e.value.high + e.value.low, e.power);
}

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

// log10(x) = k log10(2) + log(1 + f) / ln 10, with log(1 + f) as a pair.
// Holds for    all x.    Below 0.8 ulp.
LW_INLINE lw_lanes lw_lanes_log10(lw_lanes x)
{
    // in two pieces; the first ones are so short that their products are exact
    const double per_ln10_1 = 4.34294481878168880939e-01, per_ln10_2 = 2.50829467116452752298e-11;
    const double log2_1 = 3.01029995663611771306e-01, log2_2 = 3.69423907715893078616e-13;

    const lw_parts parts = lw_parts_of(x);
    const lw_lanes k = parts.exponent, f = parts.significand - 1.0;
    const lw_lanes half = 0.5 * f * f;
    const lw_lanes high = (lw_lanes)((lw_mask)(f - half) & INT64_C(-0x100000000));
    const lw_lanes low = ((f - high) - half) + lw_log_rest(f);

    const lw_pair sum = lw_pair_sum(k * log2_1, high * per_ln10_1);
    const lw_lanes rest = k * log2_2 + (low + high) * per_ln10_2 + low * per_ln10_1;
    return lw_log_edges(x, sum.high + (sum.low + rest));
}

#endif
