// bits.h - what the elementary functions do to the bits of a double, lane by lane.
// SPDX-License-Identifier: MIT
//
// No conversion instruction between doubles and integers is used: adding 1.5 * 2^52 leaves the
// nearest integer in the low bits of the sum, which every machine does alike.

#ifndef LW_BITS_H
#define LW_BITS_H

#include "solve/lanes.h"

typedef uint64_t lw_bits __attribute__((vector_size(8 * LW_WIDTH)));

#define LW_SHIFTER  0x1.8p52
#define LW_SIGN_BIT INT64_MIN

// x rounded to the nearest integer, ties to even; |x| < 2^51.
typedef struct lw_integer {
    lw_lanes value;
    lw_mask bits;  // the integer, right in its low 51 bits
} lw_integer;

LW_INLINE lw_integer lw_nearest(lw_lanes x)
{
    const lw_lanes shifted = x + LW_SHIFTER;
    return (lw_integer){.value = shifted - LW_SHIFTER, .bits = (lw_mask)shifted};
}

// 2^n for an integer -1022..1023.
LW_INLINE lw_lanes lw_power_of_two(lw_integer n)
{
    return (lw_lanes)(((lw_bits)n.bits << 52) + UINT64_C(0x3ff0000000000000));
}

// x 2^n, rounded once, for |n| <= 2044 and x near 1: two steps, as 2^n may not be a double.
LW_INLINE lw_lanes lw_scaled(lw_lanes x, lw_lanes n)
{
    const lw_integer half = lw_nearest(0.5 * n);
    const lw_integer rest = lw_nearest(n - half.value);
    return x * lw_power_of_two(half) * lw_power_of_two(rest);
}

LW_INLINE lw_mask lw_sign_of(lw_lanes x) { return (lw_mask)x & LW_SIGN_BIT; }

LW_INLINE lw_lanes lw_flip(lw_lanes x, lw_mask sign) { return (lw_lanes)((lw_mask)x ^ sign); }

// True also for -0.
LW_INLINE lw_mask lw_is_negative(lw_lanes x)
{
    return (lw_lanes)(lw_sign_of(x) | (lw_mask)lw_all(1.0)) < 0.0;
}

// y where `where` holds, else +0.
LW_INLINE lw_lanes lw_where(lw_mask where, double y)
{
    return (lw_lanes)(where & (lw_mask)lw_all(y));
}

// The upper half of the significand: products of two such numbers are exact.
LW_INLINE lw_lanes lw_upper(lw_lanes x) { return (lw_lanes)((lw_mask)x & INT64_C(-0x8000000)); }

// 2^exponent * significand, with the significand from sqrt(1/2) to sqrt(2); x > 0 and finite.
typedef struct lw_parts {
    lw_lanes exponent;
    lw_lanes significand;
} lw_parts;

LW_INLINE lw_parts lw_parts_of(lw_lanes x)
{
    // subnormal numbers first become normal ones
    const lw_mask tiny = x < 0x1p-1022;
    const lw_lanes normal = lw_select(tiny, x * 0x1p54, x);

    const uint64_t one = UINT64_C(0x3ff0000000000000);
    const uint64_t root_half = UINT64_C(0x3fe6a09e667f3bcd);
    const lw_bits shifted = (lw_bits)normal + (one - root_half);
    const lw_bits k = (shifted >> 52) | (lw_bits)lw_all(LW_SHIFTER);
    const lw_bits m = (shifted & UINT64_C(0x000fffffffffffff)) + root_half;
    const lw_lanes bias = lw_select(tiny, lw_all(LW_SHIFTER + 1077.0), lw_all(LW_SHIFTER + 1023.0));
    return (lw_parts){.exponent = (lw_lanes)k - bias, .significand = (lw_lanes)m};
}

#endif
