// balance.h - the solver's lanes: poses side by side, and what was found of each.
// SPDX-License-Identifier: MIT

#ifndef LW_BALANCE_LANES_H
#define LW_BALANCE_LANES_H

#include "boat/steady.h"
#include "lullwise/flight.h"
#include "solve/newton_many.h"

// Lane i of a pose from an ask, at its start.
void lw_pose_put(lw_pose *pose, int i, const lw_ask *ask);

// Lane i of a pose, moved to a solution of the ask it was put from.
void lw_pose_settle(lw_pose *pose, int i, const lw_ask *ask, const lw_solution *solution);

// Residuals of a pose; what the solver drives to zero.
void lw_pose_residual(const lw_craft *craft, const lw_pose *pose, lw_lanes residual[LW_UNKNOWNS]);

// All loads of a pose.
void lw_pose_all_loads(const lw_craft *craft, const lw_pose *pose, lw_loads *loads);

// Solves n asks; a lane that is done takes the next ask.
void lw_solve(const lw_craft *craft, const lw_ask *asks, lw_solution *solutions, size_t n);

#endif
