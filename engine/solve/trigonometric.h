// trigonometric.h - sin, cos, tan over lanes, without a branch or a table.
// SPDX-License-Identifier: MIT
//
// Minimax coefficients of [fdlibm]; reduction by multiples of pi/2 in three pieces [cody-waite].
// Accuracy, in units in the last place, stands with each function: test/test_elementary.c
// measures it.

#ifndef LW_TRIGONOMETRIC_H
#define LW_TRIGONOMETRIC_H

#include "solve/pair.h"

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

    const lw_lanes x = lw_select(lw_lanes_abs(angle) <= 1e6, angle, 0.0 * angle);
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

// Tangent: of the small angle, or its negative inverse in every other quarter.
// Holds for    |x| <= 1e6; the angle of a larger x counts as 0.    Below 0.9 ulp.
LW_INLINE lw_lanes lw_lanes_tan(lw_lanes angle)
{
    const double T0 = 3.33333333333334091986e-01, T1 = 1.33333333333201242699e-01,
                 T2 = 5.39682539762260521377e-02, T3 = 2.18694882948595424599e-02,
                 T4 = 8.86323982359930005737e-03, T5 = 3.59207910759131235356e-03,
                 T6 = 1.45620945432529025516e-03, T7 = 5.88041240820264096874e-04,
                 T8 = 2.46463134818469906812e-04, T9 = 7.81794442939557092300e-05,
                 T10 = 7.14072491382608190305e-05, T11 = -1.85586374855275456654e-05,
                 T12 = 2.59073051863633712884e-05;
    const double pio4_1 = 7.85398163397448278999e-01, pio4_2 = 3.06161699786838301793e-17;

    const lw_quarter q = lw_quarter_of(angle);
    const lw_mask sign = lw_sign_of(q.r), is_odd = -(q.n & 1);
    const lw_lanes ar = lw_flip(q.r, sign), atail = lw_flip(q.tail, sign);

    // near pi/4 the angle is counted from there
    const lw_mask is_wide = ar >= 0.67434;
    const lw_lanes r = lw_select(is_wide, (pio4_1 - ar) + (pio4_2 - atail), ar);
    const lw_lanes tail = lw_select(is_wide, lw_all(0.0), atail);

    // tan(r + tail) = r + rest
    const lw_lanes z = r * r, w = z * z, s = z * r;
    const lw_lanes odd = T1 + w * (T3 + w * (T5 + w * (T7 + w * (T9 + w * T11))));
    const lw_lanes even = z * (T2 + w * (T4 + w * (T6 + w * (T8 + w * (T10 + w * T12)))));
    const lw_lanes rest = (tail + z * (s * (odd + even) + tail)) + T0 * s;
    const lw_pair small = lw_pair_sum(r, rest);
    const lw_lanes inverse = -lw_pair_inverse(small);

    // tan(pi/4 - a) = 1 - 2 (a - a^2 / (1 + a)), and for the odd quarters its negative inverse
    const lw_lanes one = lw_select(is_odd, lw_all(-1.0), lw_all(1.0)), a = small.high;
    const lw_lanes wide = one - 2.0 * (r - (a * a / (a + one) - rest));

    const lw_lanes narrow = lw_select(is_odd, inverse, a);
    return lw_flip(lw_select(is_wide, wide, narrow), sign);
}

#endif
