// rides.h - rides through gusts and chop, and what a track of them would tell.
// SPDX-License-Identifier: MIT

#ifndef LW_LEARNING_RIDES_H
#define LW_LEARNING_RIDES_H

#include "learning/flown_sum.h"
#include "lullwise/flown.h"
#include "lullwise/learning.h"

#define LW_RIDDEN_LANES 4  // rides side by side on a course  [judged]

// Of a season, with its days' wind and sea, but with the hidden quantities.
void lw_hidden_inputs(const lw_hidden *hidden, const lw_season *season, lw_inputs *inputs);

typedef struct lw_rides_sum {
    lw_flown_sum of[LW_COURSE_COUNT];
    double seconds, under_way, flying;  // [s]
    double swims;
} lw_rides_sum;

double lw_ridden_wind(int knot);  // [m/s]

// Rides as asked for, each of some seconds, with the same gusts and waves whatever is hidden, so
// that these do not make the difference between two.
void lw_rides_add(lw_rides_sum *sum, lw_ridden *ridden, double seconds);

// NAN where it was not ridden, or not flown long enough.
lw_lesson lw_rides_lesson(const lw_rides_sum *sum);

#endif
