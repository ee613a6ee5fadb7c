// wing_shape.h - what a wing is at a place along its span, and how much of it is wet.
// SPDX-License-Identifier: MIT

#ifndef LW_WING_SHAPE_H
#define LW_WING_SHAPE_H

#include "lullwise/wing.h"

// The wing at y [m] to port, straight between its stations.
lw_wing_station lw_wing_at(const lw_wing *wing, double y);

double lw_wing_area(const lw_wing *wing);  // [m^2] both sides, seen along z

// The part of the span, in y, around its deepest place that is under water; from == to when none.
typedef struct lw_wing_extent {
    double from, to;
} lw_wing_extent;

lw_wing_extent lw_wing_wet(const lw_wing *wing, lw_wing_place place);

#endif
