// trial.h - which test a sailor could sail tomorrow that would tell most.
// SPDX-License-Identifier: MIT

#ifndef LW_TRIAL_H
#define LW_TRIAL_H

#include "lullwise/learning.h"

#define LW_TRIALS_MOST 12  // told, the best first

// A course sailed until turns and speed are found, with one pin or, where they differ, two; or how
// much faster she is with a turn more than with a turn less.
typedef struct lw_trial {
    size_t pin, other;
    lw_course_kind course;
    bool is_of_turn;  // with one pin, the rudder a turn more and a turn less than is best
    double error;     // [s] of the difference that the choice hangs on, once it is sailed
} lw_trial;

// What the choice hangs on: time round the legs with one pin less that with the other, in the mean
// wind, by what is made good in steady flight.
typedef struct lw_next {
    bool is_known;          // both fly all legs
    size_t first, second;   // pins
    double seconds, error;  // [s] between them, and its standard error by what is learned
    size_t count;
    lw_trial trials[LW_TRIALS_MOST];
} lw_next;

// The two pins that are fastest round the day's legs, and the trials that would make the error of
// their difference least: linear, with normal errors [lindley-1956].
lw_next lw_learning_next(const lw_learning *learning, const lw_day *day);

#endif
