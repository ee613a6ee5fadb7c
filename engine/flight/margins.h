// margins.h - what a solved lane has left before something gives.
// SPDX-License-Identifier: MIT

#ifndef LW_MARGINS_H
#define LW_MARGINS_H

#include "flight/balance.h"
#include "foil/ventilation/strut_limits.h"

// The strut that is nearer to ventilating.
typedef struct lw_strut_air {
    double angle;  // to the flow, either way [rad]
    lw_ventilation limit;
} lw_strut_air;

// What margins are told from, asked of all lanes together.
typedef struct lw_limits {
    lw_strut_air air[LW_WIDTH];
    lw_lanes main_pressure, rudder_pressure;  // lowest coefficients on the foils
} lw_limits;

void lw_limits_of(const lw_craft *craft, const lw_pose *pose, const lw_loads *loads,
                  lw_limits *limits);

lw_margins lw_margins_of(const lw_craft *craft, const lw_pose *pose, const lw_loads *loads,
                         const lw_limits *limits, int lane);

#endif
