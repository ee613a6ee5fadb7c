// hull_craft.h - a hull as measured, made ready: what it displaces, wets and resists, as splines.
// SPDX-License-Identifier: MIT

#ifndef LW_HULL_CRAFT_H
#define LW_HULL_CRAFT_H

#include "lullwise/craft.h"
#include "lullwise/hull_shape.h"

// The hull's lines, x forward of the main foil, z above the hull's bottom at the main strut. Where
// no hull has the measured dimensions, the nearest fuller in the waterline and finer in the block.
void lw_hull_shape_of_craft(lw_hull_shape *shape, const lw_hull *hull, double origin_x);

// Uses 0.1 MB of stack.
void lw_hull_prepare(lw_hull_craft *craft, const lw_hull *hull, double origin_x, double viscosity);

#endif
