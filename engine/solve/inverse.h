// inverse.h - atan2, atan, asin, acos over lanes, without a branch or a table.
// SPDX-License-Identifier: MIT
//
// Minimax coefficients of [fdlibm]. Accuracy, in units in the last place, stands with each
// function: test/test_elementary.c measures it.

#ifndef LW_INVERSE_H
#define LW_INVERSE_H

#include <stdbool.h>

#include "solve/pair.h"

// pi/2 and atan(1/2) in two pieces; the first has few bits, so that sums of first pieces are exact.
#define LW_QUARTER_1 0x1.921fb544p0
#define LW_QUARTER_2 6.07710050650619224932e-11
#define LW_HALF_1    0x1.dac67054p-2
#define LW_HALF_2    1.22715138545494014858e-10

// t - atan(t), |t| <= 7/16
LW_INLINE lw_lanes lw_atan_bend(lw_lanes t)
{
    const double T0 = 3.33333333333329318027e-01, T1 = -1.99999999998764832476e-01,
                 T2 = 1.42857142725034663711e-01, T3 = -1.11111104054623557880e-01,
                 T4 = 9.09088713343650656196e-02, T5 = -7.69187620504482999495e-02,
                 T6 = 6.66107313738753120669e-02, T7 = -5.83357013379057348645e-02,
                 T8 = 4.97687799461593236017e-02, T9 = -3.65315727442169155270e-02,
                 T10 = 1.62858201153657823623e-02;

    const lw_lanes z = t * t, w = z * z;
    const lw_lanes even = z * (T0 + w * (T2 + w * (T4 + w * (T6 + w * (T8 + w * T10)))));
    const lw_lanes odd = w * (T1 + w * (T3 + w * (T5 + w * (T7 + w * T9))));
    return t * (even + odd);
}

// The angle of (x, y) folded into 0..pi/4, where both are finite and `more` is not 0.
typedef struct lw_octant {
    lw_lanes less, more;
    lw_mask is_steep, is_back;  // |y| > |x|; x < 0 or -0
} lw_octant;

LW_INLINE lw_octant lw_octant_of(lw_lanes y, lw_lanes x)
{
    const lw_lanes ay = lw_lanes_abs(y), ax = lw_lanes_abs(x);
    const lw_mask is_steep = ay > ax;
    const lw_lanes less = lw_select(is_steep, ax, ay), more = lw_select(is_steep, ay, ax);

    // beside an infinity all else is 0; the origin has the angle 0
    const double inf = __builtin_inf();
    const lw_mask is_endless = more == inf, is_origin = more == 0.0;
    const lw_lanes beside = lw_select(less == inf, lw_all(1.0), 0.0 * less);
    return (lw_octant){.less = lw_select(is_endless, beside, less),
                       .more = lw_select(is_endless | is_origin, lw_all(1.0), more),
                       .is_steep = is_steep,
                       .is_back = lw_is_negative(x)};
}

// Angle of the point (x, y) from the x axis, -pi to pi, with the signs of zeros counted.
//
//     atan(a) = atan(c) + atan((a - c) / (1 + a c)),   a = |y/x| or |x/y| <= 1,  c = 0, 1/2 or 1
//
// `ratio_is_exact` leaves out what rounding the quotient loses, when c = 0 loses nothing.
LW_INLINE lw_lanes lw_angle_of(lw_lanes y, lw_lanes x, bool ratio_is_exact)
{
    const lw_octant octant = lw_octant_of(y, x);
    const lw_lanes a_y = octant.less, a_x = octant.more;
    const lw_mask is_back = octant.is_back, is_steep = octant.is_steep;

    // nearest of the angles 0, atan(1/2), atan(1): from 7/16 and from 11/16 on
    const lw_mask above_low = (16.0 / 7.0) * a_y >= a_x, above_high = (16.0 / 11.0) * a_y >= a_x;
    const lw_lanes c = lw_where(above_low, 0.5) + lw_where(above_high, 0.5);
    const lw_lanes c_1 =
        lw_select(above_high, lw_all(0.5 * LW_QUARTER_1), lw_where(above_low, LW_HALF_1));
    const lw_lanes c_2 =
        lw_select(above_high, lw_all(0.5 * LW_QUARTER_2), lw_where(above_low, LW_HALF_2));

    // what remains
    const lw_pair below = lw_pair_sum(a_x, c * a_y);
    const lw_pair t = lw_pair_quotient(a_y - c * a_x, below);
    const lw_lanes lost = ratio_is_exact ? lw_all(0.0) : t.low;
    const lw_lanes bend = lw_atan_bend(t.high) - lost;

    // unfold
    const lw_mask backwards = (is_steep ^ is_back) & LW_SIGN_BIT;
    const lw_lanes base_1 =
        lw_select(is_steep, lw_all(LW_QUARTER_1), lw_where(is_back, 2.0 * LW_QUARTER_1));
    const lw_lanes base_2 =
        lw_select(is_steep, lw_all(LW_QUARTER_2), lw_where(is_back, 2.0 * LW_QUARTER_2));
    const lw_lanes first = base_1 + lw_flip(c_1, backwards);  // exact
    const lw_lanes rest = base_2 + lw_flip(c_2 - bend, backwards);
    const lw_lanes angle = first + (lw_flip(t.high, backwards) + rest);
    return lw_flip(angle, lw_sign_of(y));
}

// Holds for    any arguments below 8e307, and infinities.    Below 0.8 ulp.
LW_INLINE lw_lanes lw_lanes_atan2(lw_lanes y, lw_lanes x) { return lw_angle_of(y, x, false); }

// Below 0.9 ulp.
LW_INLINE lw_lanes lw_lanes_atan(lw_lanes x) { return lw_angle_of(x, lw_all(1.0), true); }

// (asin(x) - x) / x as a function of z = x^2 <= 1/4
LW_INLINE lw_lanes lw_asin_bend(lw_lanes z)
{
    const double P0 = 1.66666666666666657415e-01, P1 = -3.25565818622400915405e-01,
                 P2 = 2.01212532134862925881e-01, P3 = -4.00555345006794114027e-02,
                 P4 = 7.91534994289814532176e-04, P5 = 3.47933107596021167570e-05;
    const double Q1 = -2.40339491173441421878e+00, Q2 = 2.02094576023350569471e+00,
                 Q3 = -6.88283971605453293030e-01, Q4 = 7.70381505559019352791e-02;

    const lw_lanes p = z * (P0 + z * (P1 + z * (P2 + z * (P3 + z * (P4 + z * P5)))));
    const lw_lanes q = 1.0 + z * (Q1 + z * (Q2 + z * (Q3 + z * Q4)));
    return p / q;
}

// sqrt(t) as a pair, its high part short enough to be squared exactly
LW_INLINE lw_pair lw_root_pair(lw_lanes t)
{
    const lw_lanes root = lw_lanes_sqrt(t), high = lw_upper(root);
    return (lw_pair){.high = high, .low = (t - high * high) / (root + high + 1e-300)};
}

// From 1/2 on: asin(x) = pi/2 - 2 asin(sqrt((1 - x) / 2)).
// Holds for    -1 <= x <= 1; beyond, NaN.    Below 0.9 ulp.
LW_INLINE lw_lanes lw_lanes_asin(lw_lanes x)
{
    const double pio4 = 7.85398163397448278999e-01, pio2_low = 6.12323399573676603587e-17;

    const lw_lanes ax = lw_lanes_abs(x);
    const lw_mask is_far = ax >= 0.5;
    const lw_lanes t = 0.5 * (1.0 - ax);
    const lw_lanes bend = lw_asin_bend(lw_select(is_far, t, x * x));

    const lw_lanes near = ax + ax * bend;
    const lw_pair s = lw_root_pair(t);
    const lw_lanes twice = 2.0 * lw_lanes_sqrt(t) * bend - (pio2_low - 2.0 * s.low);
    const lw_lanes far = pio4 - (twice - (pio4 - 2.0 * s.high));
    return lw_flip(lw_select(is_far, far, near), lw_sign_of(x));
}

// Holds for    -1 <= x <= 1; beyond, NaN.    Below 0.9 ulp.
LW_INLINE lw_lanes lw_lanes_acos(lw_lanes x)
{
    const double pio2 = 1.57079632679489655800e+00, pio2_low = 6.12323399573676603587e-17;

    const lw_lanes ax = lw_lanes_abs(x);
    const lw_mask is_far = ax >= 0.5;
    const lw_lanes t = 0.5 * (1.0 - ax);
    const lw_lanes bend = lw_asin_bend(lw_select(is_far, t, x * x));

    const lw_lanes near = pio2 - (x - (pio2_low - x * bend));
    const lw_pair s = lw_root_pair(t);
    const lw_lanes root = lw_lanes_sqrt(t);
    const lw_lanes ahead = 2.0 * (s.high + (bend * root + s.low));
    const lw_lanes behind = 2.0 * (pio2 - (root + (bend * root - pio2_low)));
    return lw_select(is_far, lw_select(x < 0.0, behind, ahead), near);
}

#endif
