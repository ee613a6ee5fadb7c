// seed.h - random numbers that are the same on every machine: one number starts a whole run.
// SPDX-License-Identifier: MIT

#ifndef LW_SEED_H
#define LW_SEED_H

#include <stdint.h>

// A stream of random numbers; owned by the caller, changed by every draw.    [xoshiro]
typedef struct lw_seed {
    uint64_t state[4];
} lw_seed;

// What a stream is for: streams of one number with different uses share nothing.
typedef enum lw_seed_use { LW_SEED_SEA, LW_SEED_GUST, LW_SEED_DRAW } lw_seed_use;

// The next of a sequence that is started by any number; fills the state of a stream. [splitmix64]
uint64_t lw_seed_mix(uint64_t *state);

lw_seed lw_seed_of(uint64_t number, lw_seed_use use);

uint64_t lw_seed_bits(lw_seed *seed);   // 64 of them: xoshiro256++    [xoshiro]
double lw_seed_uniform(lw_seed *seed);  // 0 <= u < 1, in steps of 2^-53
double lw_seed_normal(lw_seed *seed);   // mean 0, variance 1          [box-muller]

#endif
