// walk.h - trims of a set-up on a course, knot by knot along the wind: the one finder of flights.
// SPDX-License-Identifier: MIT

#ifndef LW_WALK_H
#define LW_WALK_H

#include "lullwise/range.h"

// Every knot starts from its neighbour's trim, until four in a row keep no margins: beyond, none is
// sought. The craft must outlive it. About 30 ms to make.
typedef struct lw_walk {
    const lw_craft *craft;
    lw_setup setup;
    lw_course course;
    double puff;                    // [m/s]
    lw_trim trims[LW_RANGE_WINDS];  // of the winds of a range
} lw_walk;

lw_walk lw_walk_of(const lw_craft *craft, const lw_setup *setup, lw_course course, double puff);

double lw_walk_wind(int i);  // of knot i [m/s]

// The flight in a wind: of a knot as it is, between two with controls straight between theirs.
lw_trim lw_walk_flight(const lw_walk *walk, double wind);

// The turns that hold most, for a flight whose heading, heel and place stay.
lw_trim lw_walk_holding(const lw_walk *walk, const lw_trim *flight);

// The trim for a wind sought from another; NULL: from nothing.
lw_trim lw_walk_trim(const lw_walk *walk, double wind, const lw_trim *from);

// The trims as the points of a range, whose limits stay unknown.
void lw_range_trims(const lw_walk *walk, lw_range *range);

// Straight between the knots beside a wind, for where to start; with one that flies, that one. False
// where neither does.
bool lw_walk_between(const lw_walk *walk, double wind, lw_trim *trim);

#endif
