// section_curve.h - a hull's half-breadth anywhere between its points and stations.
// SPDX-License-Identifier: MIT

#ifndef LW_SECTION_CURVE_H
#define LW_SECTION_CURVE_H

#include "lullwise/hull_shape.h"

#define LW_HULL_PLACES 400  // along the hull, where its ends in the water are looked for

// A shape with the slopes of its sections' curves, worked out once.
typedef struct lw_hull_lines {
    const lw_hull_shape *shape;
    double slope[LW_HULL_STATIONS][LW_HULL_POINTS];             // dy/dz
    double keel[LW_HULL_PLACES + 1], deck[LW_HULL_PLACES + 1];  // z [m] at even places along it
} lw_hull_lines;

// x [m] of the places 0 to LW_HULL_PLACES, from the transom to the bow.
double lw_hull_place(const lw_hull_shape *shape, int i);

void lw_hull_lines_of(lw_hull_lines *lines, const lw_hull_shape *shape);

// The weights of at most four stations around x: cubic between them, exact for a parabola.
typedef struct lw_hull_blend {
    int first, count;
    double weight[4];
    int below;          // station at or aft of x
    double keel, deck;  // z [m] there
} lw_hull_blend;

lw_hull_blend lw_hull_blend_at(const lw_hull_lines *lines, double x);

// Half-breadths [m] of a place along the hull at `count` heights z, none below the one before;
// stations are matched at equal parts of their own height.
void lw_hull_halves(const lw_hull_lines *lines, const lw_hull_blend *blend, const double *z,
                    int count, double *half);

#endif
