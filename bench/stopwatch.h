// stopwatch.h - seconds by the machine's steady clock, and medians of repeats.
// SPDX-License-Identifier: MIT

#ifndef LW_BENCH_STOPWATCH_H
#define LW_BENCH_STOPWATCH_H

#define REPEATS 9

double seconds_now(void);

// Sorts the values.
double median_of(double values[REPEATS]);

#endif
