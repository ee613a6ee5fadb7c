// flow.h - inside the section folder: the set of equations for the perfect fluid.
// SPDX-License-Identifier: MIT

#ifndef LW_PROFILE_FLOW_INSIDE_H
#define LW_PROFILE_FLOW_INSIDE_H

#include "lullwise/profile.h"

// A place inside the tail, a little before its end, and the direction of its bisector.
typedef struct lw_tail {
    double x, y, t_x, t_y;
} lw_tail;
lw_tail lw_tail_of(const lw_profile *profile);

// Factors the equations in the room: n + 1 of them, for the vorticity at each of n nodes and then
// the stream function on the surface. False when they have no solution.
bool lw_flow_equations(const lw_profile *profile, lw_profile_room *room);

// Load of speeds along the surface, such as the boundary layer leaves them.
lw_profile_load lw_load_of_speeds(const lw_profile *profile, const double *speed, double alpha);

#endif
