// system.h - the linearised system near a balance: x' = A x of the states that may move.
// SPDX-License-Identifier: MIT

#ifndef LW_LINEAR_SYSTEM_H
#define LW_LINEAR_SYSTEM_H

#include "lullwise/modes.h"
#include "solve/eigen.h"

typedef struct lw_linear_system {
    int count;                                // of states that may move
    size_t state[LW_EIGEN_MOST];              // which
    double a[LW_EIGEN_MOST * LW_EIGEN_MOST];  // rows of `count`
} lw_linear_system;

// The system and its eigenvalues; false when there are none.
bool lw_linear_system_values(const lw_motion *motion, const lw_ride_plan *plan, lw_hands hands,
                             lw_linear_system *linear, lw_complex *values);

// Of the motion of one eigenvalue: how far each state goes (0 where it may not move), and how much
// each part has in it.
bool lw_linear_system_shares(const lw_linear_system *linear, lw_complex value,
                             double size[LW_RIDE_STATES], double share[LW_PARTS]);

#endif
