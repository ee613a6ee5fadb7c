// stopwatch.c - the machine's steady clock.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 199309L

#include "bench/stopwatch.h"

#include <stdlib.h>
#include <time.h>

double seconds_now(void)
{
    struct timespec now;
    clock_gettime(CLOCK_MONOTONIC, &now);
    return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

static int by_size(const void *a, const void *b)
{
    const double x = *(const double *)a, y = *(const double *)b;
    return (x > y) - (x < y);
}

double median_of(double values[REPEATS])
{
    qsort(values, REPEATS, sizeof values[0], by_size);
    return values[REPEATS / 2];
}
