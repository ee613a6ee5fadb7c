// seed_lanes.h - random streams side by side: a stream in each lane.
// SPDX-License-Identifier: MIT

#ifndef LW_SEED_LANES_H
#define LW_SEED_LANES_H

#include "lullwise/weather.h"
#include "solve/bits.h"

typedef struct lw_seed_lanes {
    lw_bits state[4];
} lw_seed_lanes;

LW_INLINE void lw_seed_lanes_put(lw_seed_lanes *lanes, int lane, lw_seed seed)
{
    for (int i = 0; i < 4; i++) lanes->state[i][lane] = seed.state[i];
}

LW_INLINE lw_bits lw_bits_turned(lw_bits bits, int by)
{
    return (bits << by) | (bits >> (64 - by));
}

// As lw_seed_bits, lane by lane. [xoshiro]
LW_INLINE lw_bits lw_seed_lanes_bits(lw_seed_lanes *seed)
{
    lw_bits *s = seed->state;
    const lw_bits bits = lw_bits_turned(s[0] + s[3], 23) + s[0], shifted = s[1] << 17;
    s[2] ^= s[0], s[3] ^= s[1], s[1] ^= s[2], s[0] ^= s[3];
    s[2] ^= shifted;
    s[3] = lw_bits_turned(s[3], 45);
    return bits;
}

// Evenly distributed with mean 0 and variance 1, from -sqrt(3) to sqrt(3), out of the upper 32 of
// the bits: enough to drive a filter, whose sum of many is normal.
LW_INLINE lw_lanes lw_noise_of(lw_bits bits)
{
    const lw_bits one = (bits >> 32 << 20) | UINT64_C(0x3ff0000000000000);  // 1 <= x < 2
    return ((lw_lanes)one - (1.5 - 0x1p-33)) * 3.4641016151377544;
}

#endif
