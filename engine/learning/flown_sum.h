// flown_sum.h - sums of what was flown on a course, of a track or of rides alike.
// SPDX-License-Identifier: MIT

#ifndef LW_FLOWN_SUM_H
#define LW_FLOWN_SUM_H

#include "lullwise/range.h"

// Over the time flown: seconds, speed x seconds, speed^2 x seconds.
typedef struct lw_flown_sum {
    double time, run, squares;
} lw_flown_sum;

// Adds a step of time [s] flown at a speed and an angle from the wind [rad] to the course that it
// is on, if it is on one.
void lw_flown_sum_add(lw_flown_sum of[LW_COURSE_COUNT], double angle, double speed, double step);

// NAN, where nothing was flown.
double lw_flown_sum_mean(const lw_flown_sum *sum);
double lw_flown_sum_scatter(const lw_flown_sum *sum);

#endif
