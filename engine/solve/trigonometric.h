// trigonometric.h - sin, cos, tan and their inverses over lanes, without a branch or a table.
// SPDX-License-Identifier: MIT
//
// Minimax coefficients of [fdlibm]; reduction by multiples of pi/2 in three pieces [cody-waite].
// Accuracy, in units in the last place, stands with each function: test/test_elementary.c
// measures it.

#ifndef LW_TRIGONOMETRIC_H
#define LW_TRIGONOMETRIC_H

#include "solve/bits.h"

// An angle as n pi/2 + (r + tail), |r| <= pi/4, the tail being what r cannot hold.
typedef struct lw_quarter {
    lw_lanes r, tail;
    lw_mask n;  // right in its low bits
} lw_quarter;

// Holds for    |x| <= 1e6. Beyond, the angle counts as 0; infinity becomes NaN.
LW_INLINE lw_quarter lw_quarter_of(lw_lanes angle)
{
    const double pio2_1 = 0x1.921fb544p0;                   // pi/2 in pieces of 33 bits, so that a
    const double pio2_2 = 0x1.0b4611a6p-34;                 // multiple below 2^20 is exact
    const double pio2_3 = 2.02226624879595063154e-21;       // and the rest
    const double per_quarter = 6.36619772367581382433e-01;  // 2/pi

    const lw_lanes x = lw_select(lw_lanes_abs(angle) <= 1e6, angle, angle - angle);
    const lw_integer n = lw_nearest(x * per_quarter);
    const lw_lanes first = x - n.value * pio2_1;  // exact
    const lw_lanes w = n.value * pio2_2;
    const lw_lanes second = first - w;
    const lw_lanes lost = n.value * pio2_3 - ((first - second) - w);
    const lw_lanes r = second - lost;
    return (lw_quarter){.r = r, .tail = (second - r) - lost, .n = n.bits};
}

// sin(r + tail), |r| <= pi/4
LW_INLINE lw_lanes lw_sin_of(lw_lanes r, lw_lanes tail)
{
    const double S1 = -1.66666666666666324348e-01, S2 = 8.33333333332248946124e-03,
                 S3 = -1.98412698298579493134e-04, S4 = 2.75573137070700676789e-06,
                 S5 = -2.50507602534068634195e-08, S6 = 1.58969099521155010221e-10;

    const lw_lanes z = r * r, v = z * r, w = z * z;
    const lw_lanes p = S2 + z * (S3 + z * S4) + z * w * (S5 + z * S6);
    return r - ((z * (0.5 * tail - v * p) - tail) - v * S1);
}

// cos(r + tail), |r| <= pi/4
LW_INLINE lw_lanes lw_cos_of(lw_lanes r, lw_lanes tail)
{
    const double C1 = 4.16666666666666019037e-02, C2 = -1.38888888888741095749e-03,
                 C3 = 2.48015872894767294178e-05, C4 = -2.75573143513906633035e-07,
                 C5 = 2.08757232129817482790e-09, C6 = -1.13596475577881948265e-11;

    const lw_lanes z = r * r, w = z * z;
    const lw_lanes p = z * (C1 + z * (C2 + z * C3)) + w * w * (C4 + z * (C5 + z * C6));
    const lw_lanes half = 0.5 * z, head = 1.0 - half;
    return head + (((1.0 - head) - half) + (z * p - r * tail));
}

// Sine and cosine together, for little more than one of them.
// Holds for    |x| <= 1e6; the angle of a larger x counts as 0.    Below 0.8 ulp.
LW_INLINE void lw_lanes_sincos(lw_lanes x, lw_lanes *sine, lw_lanes *cosine)
{
    const lw_quarter q = lw_quarter_of(x);
    const lw_lanes s = lw_sin_of(q.r, q.tail), c = lw_cos_of(q.r, q.tail);

    const lw_mask is_odd = -(q.n & 1);
    const lw_bits turn = (lw_bits)q.n;
    *sine = lw_flip(lw_select(is_odd, c, s), (lw_mask)(turn << 62) & LW_SIGN_BIT);
    *cosine = lw_flip(lw_select(is_odd, s, c), (lw_mask)((turn + 1) << 62) & LW_SIGN_BIT);
}

LW_INLINE lw_lanes lw_lanes_sin(lw_lanes x)
{
    lw_lanes s, c;
    lw_lanes_sincos(x, &s, &c);
    return s;
}

LW_INLINE lw_lanes lw_lanes_cos(lw_lanes x)
{
    lw_lanes s, c;
    lw_lanes_sincos(x, &s, &c);
    return c;
}

// Angle of the point (x, y) from the x axis, -pi to pi, with the signs of zeros counted.
//
//     atan(a) = atan(c) + atan((a - c) / (1 + a c)),   a = |y/x| or |x/y| <= 1,  c = 0, 1/2 or 1
//
// Holds for    any arguments below 8e307, and infinities.    Below 0.9 ulp.
LW_INLINE lw_lanes lw_lanes_atan2(lw_lanes y, lw_lanes x)
{
    const double T0 = 3.33333333333329318027e-01, T1 = -1.99999999998764832476e-01,
                 T2 = 1.42857142725034663711e-01, T3 = -1.11111104054623557880e-01,
                 T4 = 9.09088713343650656196e-02, T5 = -7.69187620504482999495e-02,
                 T6 = 6.66107313738753120669e-02, T7 = -5.83357013379057348645e-02,
                 T8 = 4.97687799461593236017e-02, T9 = -3.65315727442169155270e-02,
                 T10 = 1.62858201153657823623e-02;
    // The angles in two pieces; the first has few bits, so that sums of first pieces are exact.
    const double pio2_1 = 0x1.921fb544p0, pio2_2 = 6.07710050650619224932e-11;
    const double half_1 = 0x1.dac67054p-2, half_2 = 1.22715138545494014858e-10;  // atan(1/2)
    const double pi_1 = 2.0 * pio2_1, pi_2 = 2.0 * pio2_2;
    const double pio4_1 = 0.5 * pio2_1, pio4_2 = 0.5 * pio2_2;

    // fold into the octant 0..pi/4
    const lw_lanes ay = lw_lanes_abs(y), ax = lw_lanes_abs(x);
    const lw_mask is_steep = ay > ax, is_back = lw_is_negative(x);
    const lw_lanes less = lw_select(is_steep, ax, ay), more = lw_select(is_steep, ay, ax);

    // infinities and the origin
    const lw_mask is_endless = more == __builtin_inf(), is_origin = more == 0.0;
    const lw_lanes beside = lw_select(less == __builtin_inf(), lw_all(1.0), 0.0 * less);
    const lw_lanes a_y = lw_select(is_endless, beside, less);
    const lw_lanes a_x = lw_select(is_endless | is_origin, lw_all(1.0), more);

    // nearest of the angles 0, atan(1/2), atan(1)
    const lw_mask above_low = a_y >= 0.4375 * a_x, above_high = a_y >= 0.6875 * a_x;
    const lw_lanes c = lw_where(above_low, 0.5) + lw_where(above_high, 0.5);
    const lw_lanes c_1 = lw_select(above_high, lw_all(pio4_1), lw_where(above_low, half_1));
    const lw_lanes c_2 = lw_select(above_high, lw_all(pio4_2), lw_where(above_low, half_2));

    // what remains
    const lw_lanes t = (a_y - c * a_x) / (a_x + c * a_y), z = t * t, w = z * z;
    const lw_lanes even = z * (T0 + w * (T2 + w * (T4 + w * (T6 + w * (T8 + w * T10)))));
    const lw_lanes odd = w * (T1 + w * (T3 + w * (T5 + w * (T7 + w * T9))));
    const lw_lanes bend = t * (even + odd);

    // unfold
    const lw_mask backwards = (is_steep ^ is_back) & LW_SIGN_BIT;
    const lw_lanes base_1 = lw_select(is_steep, lw_all(pio2_1), lw_where(is_back, pi_1));
    const lw_lanes base_2 = lw_select(is_steep, lw_all(pio2_2), lw_where(is_back, pi_2));
    const lw_lanes first = base_1 + lw_flip(c_1, backwards);  // exact
    const lw_lanes rest = base_2 + lw_flip(c_2 - bend, backwards);
    const lw_lanes angle = first + (lw_flip(t, backwards) + rest);
    return lw_flip(angle, lw_sign_of(y));
}

// Below 0.9 ulp.
LW_INLINE lw_lanes lw_lanes_atan(lw_lanes x) { return lw_lanes_atan2(x, lw_all(1.0)); }

#endif
