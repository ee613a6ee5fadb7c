// seed.c - random numbers that are the same on every machine.
// SPDX-License-Identifier: MIT

#include "lullwise/weather.h"

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/elementary.h"

uint64_t lw_seed_mix(uint64_t *state)
{
    uint64_t z = (*state += UINT64_C(0x9e3779b97f4a7c15));
    z = (z ^ (z >> 30)) * UINT64_C(0xbf58476d1ce4e5b9);
    z = (z ^ (z >> 27)) * UINT64_C(0x94d049bb133111eb);
    return z ^ (z >> 31);
}

// Neighbouring numbers and uses start far apart: both go through the mixer first.
lw_seed lw_seed_of(uint64_t number, lw_seed_use use)
{
    uint64_t kind = (uint64_t)use, mixed = number;
    uint64_t start = lw_seed_mix(&mixed) ^ lw_seed_mix(&kind);
    lw_seed seed;
    for (int i = 0; i < 4; i++) seed.state[i] = lw_seed_mix(&start);
    return seed;
}

static uint64_t turned(uint64_t bits, int by) { return (bits << by) | (bits >> (64 - by)); }

uint64_t lw_seed_bits(lw_seed *seed)
{
    uint64_t *s = seed->state;
    const uint64_t bits = turned(s[0] + s[3], 23) + s[0], shifted = s[1] << 17;
    s[2] ^= s[0], s[3] ^= s[1], s[1] ^= s[2], s[0] ^= s[3];
    s[2] ^= shifted;
    s[3] = turned(s[3], 45);
    return bits;
}

double lw_seed_uniform(lw_seed *seed) { return (double)(lw_seed_bits(seed) >> 11) * 0x1p-53; }

double lw_seed_normal(lw_seed *seed)
{
    const double u = 1.0 - lw_seed_uniform(seed), v = lw_seed_uniform(seed);
    return sqrt(-2.0 * lw_log(u)) * lw_cos(2.0 * LW_PI * v);
}
