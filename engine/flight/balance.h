// balance.h - the solver's lanes: poses side by side, and what was found of each.
// SPDX-License-Identifier: MIT

#ifndef LW_BALANCE_LANES_H
#define LW_BALANCE_LANES_H

#include "flight/ask.h"

// Residuals of a pose; what the solver drives to zero.
void lw_pose_residual(const lw_craft *craft, const lw_pose *pose, lw_lanes residual[LW_UNKNOWNS]);

// All loads of a pose.
void lw_pose_all_loads(const lw_craft *craft, const lw_pose *pose, lw_loads *loads);

// Solves n asks; a lane that is done takes the next ask.
void lw_solve(const lw_craft *craft, const lw_ask *asks, bool are_akin, lw_solution *solutions,
              size_t n);

#endif
