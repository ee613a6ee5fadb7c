// loads.h - what the inflow does to each part of a boat, and the sum of it, in lanes.
// SPDX-License-Identifier: MIT

#ifndef LW_LOADS_H
#define LW_LOADS_H

#include "boat/inflow.h"

typedef struct lw_loads {
    lw_inflow inflow;  // that the loads come of
    lw_lanes
        residual[6];  // surge, sway, heave, roll, pitch, yaw; [1] of weight, [m] of weight x 1 m
    lw_foil_load main, rudder;
    lw_strut_load main_strut, rudder_strut;
    lw_hull_load hull;
    lw_lanes racks;           // buoyancy of both [N]
    lw_lanes slap, bow_drag;  // [N] on a hull coming down, and against a bow under water (negative)
    lw_sail_load sail;
    lw_vector air;            // [N] sail and windage, in the boat
    lw_vector water;          // [N] foils, struts and hull, buoyancy left out
    lw_lanes downwash;        // that the main foil makes now at the rudder foil [rad]
    lw_vector force, moment;  // all of it, weight too, in the boat about the origin
} lw_loads;

// What adds up: forces, and moments about the origin.
typedef struct lw_sum {
    lw_vector force, moment;
} lw_sum;

LW_INLINE void lw_sum_add(lw_sum *sum, lw_vector at, lw_vector force)
{
    sum->force.x += force.x, sum->force.y += force.y, sum->force.z += force.z;
    const lw_vector moment = lw_cross(at, force);
    sum->moment.x += moment.x, sum->moment.y += moment.y, sum->moment.z += moment.z;
}

#endif
