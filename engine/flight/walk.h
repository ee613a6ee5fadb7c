// walk.h - trims of a set-up on a course, knot by knot along the wind.
// SPDX-License-Identifier: MIT

#ifndef LW_WALK_H
#define LW_WALK_H

#include "lullwise/range.h"
#include "lullwise/trim.h"

// Every knot starts from its neighbour's trim: the one way in which flights on a course are found.
typedef struct lw_walk {
    const lw_craft *craft;
    const lw_setup *setup;
    lw_course course;
    double puff;  // [m/s]
    lw_trim trims[LW_RANGE_WINDS];
} lw_walk;

double lw_walk_wind(int i);  // of knot i [m/s]

lw_walk lw_walk_of(const lw_craft *craft, const lw_setup *setup, lw_course course, double puff);

// The trim for a wind, from another; NULL: from nothing.
lw_trim lw_walk_trim(const lw_walk *walk, double wind, const lw_trim *from);

// Straight between the knots beside a wind, for where to start; false where neither flies. With one
// that flies, that one.
bool lw_walk_between(const lw_walk *walk, double wind, lw_trim *trim);

#endif
