// random.h - a seeded stream of doubles, and a runner that looks for arguments that break a claim.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_RANDOM_H
#define LW_TEST_RANDOM_H

#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>

typedef struct random_stream {
    uint64_t state;
} random_stream;

typedef struct span {
    double low, high;
} span;

#define MOST_ARGUMENTS 16

static inline uint64_t random_bits(random_stream *stream)  // [splitmix64]
{
    uint64_t z = (stream->state += UINT64_C(0x9e3779b97f4a7c15));
    z = (z ^ (z >> 30)) * UINT64_C(0xbf58476d1ce4e5b9);
    z = (z ^ (z >> 27)) * UINT64_C(0x94d049bb133111eb);
    return z ^ (z >> 31);
}

static inline double random_between(random_stream *stream, double low, double high)
{
    return low + (high - low) * ((double)(random_bits(stream) >> 11) * 0x1p-53);
}

// How many times as many cases as usual: LW_SOAK in the environment, or 1.
static inline int soak_times(void)
{
    const char *text = getenv("LW_SOAK");
    const int times = text ? atoi(text) : 1;
    return times > 0 ? times : 1;
}

// Random cases take turns: each of three runs has a third as many, from a stream of its own; LW_RUN
// in the environment says which. `all`, or nothing, has as many as the three, and a soak.
#define TURNS 3

static inline int turn_of_run(void)  // -1: all
{
    const char *text = getenv("LW_RUN");
    const bool is_one = text && text[0] >= '0' && text[0] <= '9' && soak_times() == 1;
    return is_one ? atoi(text) % TURNS : -1;
}

static inline int cases_of_run(int cases)
{
    return turn_of_run() < 0 ? cases * soak_times() : (cases + TURNS - 1) / TURNS;
}

static inline random_stream stream_of_run(uint64_t seed)
{
    const int turn = turn_of_run();
    return (random_stream){turn < 0 ? seed : seed + 1000003 * (uint64_t)turn};
}

typedef bool (*claim)(const double *x);

// True when `holds` is true at the spans' ends and at `runs` random places between them.
// The same seed each time: a failure repeats. Prints the arguments that break the claim.
static inline bool holds_for_all(claim holds, int runs, const span *spans, size_t count)
{
    random_stream stream = {2024};
    double x[MOST_ARGUMENTS] = {0};
    for (int run = 0; run < runs * soak_times() + 2; run++) {
        for (size_t i = 0; i < count; i++) {
            const span s = spans[i];
            x[i] = run == 0 ? s.low : run == 1 ? s.high : random_between(&stream, s.low, s.high);
        }
        if (holds(x)) continue;
        for (size_t i = 0; i < count; i++) fprintf(stderr, "broken at [%zu] = %.17g\n", i, x[i]);
        return false;
    }
    return true;
}

#endif
