// margins.h - what a solved lane has left before something gives.
// SPDX-License-Identifier: MIT

#ifndef LW_MARGINS_H
#define LW_MARGINS_H

#include "flight/balance.h"

lw_margins lw_margins_of(const lw_craft *craft, const lw_pose *pose, const lw_loads *loads,
                         int lane);

#endif
