// four.h - exponentials and logarithms of four ordinary numbers at once, to twelve digits.
// SPDX-License-Identifier: MIT
//
// For sums of which twelve digits are plenty: Taylor's series, no pairs of doubles, no edges.
// Always four side by side, whatever LW_WIDTH: they are the four of one formula, not of four
// flights. The same bits on every machine, as in elementary.h.

#ifndef LW_FOUR_H
#define LW_FOUR_H

#include <stdint.h>

#include "solve/lanes.h"

typedef double lw_four __attribute__((vector_size(32)));
typedef uint64_t lw_four_bits __attribute__((vector_size(32)));

#define LW_FOUR_LN2_1 6.93147180369123816490e-01  // ln 2 in two pieces; the first has 33 bits
#define LW_FOUR_LN2_2 1.90821492927058770002e-10

// e^x = 2^k e^r, |r| <= ln 2 / 2.
// Holds for    |x| <= 700.    Within 3e-13 of the value.
LW_INLINE lw_four lw_four_exp(lw_four x)
{
    const lw_four shifted = x * 1.44269504088896338700 + 0x1.8p52;
    const lw_four k = shifted - 0x1.8p52;
    const lw_four r = (x - k * LW_FOUR_LN2_1) - k * LW_FOUR_LN2_2, z = r * r, w = z * z;
    const lw_four low = (1.0 + r) + z * (1.0 / 2 + r * (1.0 / 6));
    const lw_four middle = (1.0 / 24 + r * (1.0 / 120)) + z * (1.0 / 720 + r * (1.0 / 5040));
    const lw_four high = (1.0 / 40320 + r * (1.0 / 362880)) + z * (1.0 / 3628800);
    const lw_four_bits power = ((lw_four_bits)shifted << 52) + UINT64_C(0x3ff0000000000000);
    return (low + w * (middle + w * high)) * (lw_four)power;
}

// ln x = k ln 2 + 2 (s + s^3 / 3 + ...), s = (m - 1) / (m + 1), sqrt(1/2) <= m < sqrt(2).
// Not of constants: clang 14 does not come to an end over them; a number may stand there twice.
// Holds for    normal numbers above 0.    Within 3e-13 of the value, or of 1 where that is more.
LW_INLINE lw_four lw_four_log(lw_four x)
{
    const uint64_t one = UINT64_C(0x3ff0000000000000);
    const uint64_t root_half = UINT64_C(0x3fe6a09e667f3bcd);
    const lw_four_bits shifted = (lw_four_bits)x + (one - root_half);
    const lw_four_bits exponent = (shifted >> 52) | UINT64_C(0x4338000000000000);
    const lw_four k = (lw_four)exponent - (0x1.8p52 + 1023.0);
    const lw_four m = (lw_four)((shifted & UINT64_C(0x000fffffffffffff)) + root_half);
    const lw_four s = (m - 1.0) / (m + 1.0), z = s * s, w = z * z;
    const lw_four low = (1.0 + z * (1.0 / 3)) + w * (1.0 / 5 + z * (1.0 / 7));
    const lw_four high = (1.0 / 9 + z * (1.0 / 11)) + w * (1.0 / 13 + z * (1.0 / 15));
    return k * LW_FOUR_LN2_1 + (2.0 * s * (low + w * w * high) + k * LW_FOUR_LN2_2);
}

#endif
