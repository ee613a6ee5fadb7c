// trace.h - one moment of one lane as a row.
// SPDX-License-Identifier: MIT

#ifndef LW_TRACE_LANES_H
#define LW_TRACE_LANES_H

#include "motion/ride/fleet.h"

// Of the state that `loads` and `around` belong to: the past one, after a step.
lw_trace lw_trace_lane(const lw_motion *motion, const lw_fleet *fleet, const lw_environment *around,
                       const lw_loads *loads, int lane);

#endif
