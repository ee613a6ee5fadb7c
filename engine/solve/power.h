// power.h - pow and cbrt over lanes, without a branch or a table.
// SPDX-License-Identifier: MIT

#ifndef LW_POWER_H
#define LW_POWER_H

#include "solve/exponential.h"

// log(x) to about 65 bits, for x > 0 and finite:
//
//     log(2^k m) = k ln 2 + 2 (s + s z (1/3 + z/5 + z^2/7 + ...)),  s = (m - 1)/(m + 1),  z = s^2
LW_INLINE lw_pair lw_log_pair(lw_lanes x)
{
    const double third_low = 1.85037170770859413132e-17;  // 1/3 less the double nearest to it

    const lw_parts parts = lw_parts_of(x);
    const lw_lanes m = parts.significand, k = parts.exponent;
    const lw_lanes sum = m + 1.0;
    const lw_pair s = lw_pair_quotient(m - 1.0, (lw_pair){sum, m - (sum - 1.0)});
    const lw_pair z = lw_pair_times(s, s);

    const lw_lanes w = z.high;
    const lw_lanes tail =
        w * (1.0 / 5 +
             w * (1.0 / 7 +
                  w * (1.0 / 9 +
                       w * (1.0 / 11 +
                            w * (1.0 / 13 +
                                 w * (1.0 / 15 +
                                      w * (1.0 / 17 +
                                           w * (1.0 / 19 + w * (1.0 / 21 + w * (1.0 / 23))))))))));
    const lw_pair third = lw_pair_sum(lw_all(1.0 / 3), tail);
    const lw_pair q = {third.high, third.low + third_low};
    const lw_pair bend = lw_pair_times(s, lw_pair_times(z, q));

    const lw_pair half = lw_pair_sum(s.high, bend.high);
    const lw_pair whole = lw_pair_sum(k * LW_LN2_1, 2.0 * half.high);
    const lw_lanes low = 2.0 * (half.low + (s.low + bend.low)) + k * LW_LN2_2;
    return lw_pair_sum(whole.high, whole.low + low);
}

// x^y = exp(y log x).
// Holds for    x >= 0, -0 counting as 0; below 0, NaN. x^0 = 1 and 1^y = 1 but for NaN.
// Below 0.75 ulp; below 1.1 where the result is subnormal.
LW_INLINE lw_lanes lw_lanes_pow(lw_lanes x, lw_lanes y)
{
    const double inf = __builtin_inf(), most = 0x1p70;  // an exponent that ends every x but 1
    const lw_lanes e = lw_select(y > most, lw_all(most), lw_select(y < -most, lw_all(-most), y));

    const lw_pair log = lw_log_pair(x);
    const lw_pair p = lw_pair_product(e, log.high);
    const lw_mask is_within = (p.high > -746.0) & (p.high < 711.0);
    const lw_lanes tail = (lw_lanes)((lw_mask)(p.low + e * log.low) & is_within);
    const lw_exponential power = lw_exp_of(p.high, tail);
    const lw_lanes usual = lw_scaled(power.value.high + power.value.low, power.power);

    // 0 and infinity have no logarithm
    const lw_mask is_zero = x == 0.0, is_endless = x == inf;
    const lw_mask grows = (is_zero & (y < 0.0)) | (is_endless & (y > 0.0));
    const lw_lanes edge = lw_select(y == 0.0, lw_all(1.0), lw_where(grows, inf));
    const lw_lanes value = lw_select(is_zero | is_endless, edge, usual);

    const lw_mask is_number = (x >= 0.0) & (y == y);
    return lw_select(is_number, value, lw_all(__builtin_nan("")));
}

// A quadratic within 0.1 %, one step of Halley's, and a second from a root short enough to be
// squared exactly.
// Holds for    all x.    Below 0.7 ulp.
LW_INLINE lw_lanes lw_lanes_cbrt(lw_lanes x)
{
    const lw_lanes ax = lw_lanes_abs(x);
    const lw_parts parts = lw_parts_of(ax);
    const lw_lanes third = lw_nearest(parts.exponent * (1.0 / 3)).value;
    const lw_lanes left = parts.exponent - 3.0 * third;  // -1, 0 or 1
    const lw_mask is_more = left > 0.5, is_less = left < -0.5;

    // cbrt(m) and cbrt(2^left)
    const lw_lanes two =
        lw_select(is_more, lw_all(2.0), lw_select(is_less, lw_all(0.5), lw_all(1.0)));
    const lw_lanes m = parts.significand, n = m * two;
    const lw_lanes rough = 0.5574239481 + m * (0.5462521160 - m * 0.1039887645);
    const lw_lanes root_two =
        lw_select(is_more, lw_all(1.2599210498948732),
                  lw_select(is_less, lw_all(0.79370052598409974), lw_all(1.0)));
    const lw_lanes t_0 = rough * root_two, cube = t_0 * t_0 * t_0;
    const lw_lanes t = lw_upper(t_0 * (cube + 2.0 * n) / (2.0 * cube + n));

    const lw_lanes ratio = n / (t * t);
    const lw_lanes root = t + t * ((ratio - t) / (t + t + ratio));
    const lw_lanes scaled = lw_flip(root * lw_power_of_two(lw_nearest(third)), lw_sign_of(x));
    return lw_select((ax > 0.0) & (ax < __builtin_inf()), scaled, x);
}

#endif
