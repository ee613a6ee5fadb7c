// pair.h - a number as the sum of two doubles, for the places where 53 bits are too few.
// SPDX-License-Identifier: MIT
//
// Exact sums and products of two doubles [dekker-1971]. None works with infinities.

#ifndef LW_PAIR_H
#define LW_PAIR_H

#include "solve/bits.h"

typedef struct lw_pair {
    lw_lanes high, low;  // |low| is at most half a unit in the last place of high, or near it
} lw_pair;

// a + b, exact when |a| >= |b| or a is 0
LW_INLINE lw_pair lw_pair_sum(lw_lanes a, lw_lanes b)
{
    const lw_lanes sum = a + b;
    return (lw_pair){.high = sum, .low = b - (sum - a)};
}

// a b, exact
LW_INLINE lw_pair lw_pair_product(lw_lanes a, lw_lanes b)
{
    const lw_lanes a_1 = lw_upper(a), a_2 = a - a_1, b_1 = lw_upper(b), b_2 = b - b_1;
    const lw_lanes product = a * b;
    const lw_lanes lost = ((a_1 * b_1 - product) + a_1 * b_2 + a_2 * b_1) + a_2 * b_2;
    return (lw_pair){.high = product, .low = lost};
}

// a b, to about 100 bits
LW_INLINE lw_pair lw_pair_times(lw_pair a, lw_pair b)
{
    const lw_pair p = lw_pair_product(a.high, b.high);
    return lw_pair_sum(p.high, p.low + (a.high * b.low + a.low * b.high));
}

// a / b for doubles a and pairs b: what the quotient lost to rounding is in the low part.
// Where b is so small that the products lose bits, the low part is 0.
LW_INLINE lw_pair lw_pair_quotient(lw_lanes a, lw_pair b)
{
    const lw_lanes quotient = a / b.high;
    const lw_pair back = lw_pair_product(quotient, b.high);
    const lw_lanes left = ((a - back.high) - back.low) - quotient * b.low;
    const lw_mask is_sound = lw_lanes_abs(b.high) > 1e-250;
    return (lw_pair){.high = quotient, .low = (lw_lanes)((lw_mask)(left / b.high) & is_sound)};
}

// 1 / b, rounded from the whole of b
LW_INLINE lw_lanes lw_pair_inverse(lw_pair b)
{
    const lw_pair quotient = lw_pair_quotient(lw_all(1.0), b);
    return quotient.high + quotient.low;
}

#endif
