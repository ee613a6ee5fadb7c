// ask.h - asks put into lanes of poses.
// SPDX-License-Identifier: MIT

#ifndef LW_ASK_LANES_H
#define LW_ASK_LANES_H

#include "boat/steady.h"
#include "lullwise/flight.h"
#include "solve/newton_many.h"

// Lane i of a pose from an ask, at its start.
void lw_pose_put(lw_pose *pose, int i, const lw_ask *ask);

// Lane i of a pose, moved to a solution of the ask it was put from.
void lw_pose_settle(lw_pose *pose, int i, const lw_ask *ask, const lw_solution *solution);

#endif
