// polar_row.h - inside the foil folder: a section's boundary layer over a row of angles.
// SPDX-License-Identifier: MIT

#ifndef LW_POLAR_ROW_H
#define LW_POLAR_ROW_H

#include "lullwise/polar.h"

#define LW_ROW_MOST  18
#define LW_ROW_LEAST 4  // points without which a row tells nothing

typedef struct lw_row_point {
    double alpha, lift, drag, moment, suction;
} lw_row_point;

// One flap angle at one Reynolds number, angles rising, from stall to stall.
typedef struct lw_row {
    int count;
    int middle;  // the point whose nose meets the flow smoothly
    lw_row_point point[LW_ROW_MOST];
    double most, most_alpha;    // at the stall upwards
    double least, least_alpha;  // and downwards
    double tried, filled;
} lw_row;

// Angle of attack of a bent section's front part at which the nose meets the flow smoothly, by
// thin-aerofoil theory, for a flap angle of 1 rad [glauert-flap].
double lw_row_middle_alpha(double flap_chord);

// Lays the panels and the layer of the section in the room. False when the shape is none.
bool lw_row_lay(const lw_polar_shape *shape, double flap, lw_polar_room *room);

bool lw_row_of(lw_row *row, const lw_polar_shape *shape, double flap, double reynolds,
               lw_polar_room *room);

// Drag at y = 0 with the flap in line, at rising Reynolds numbers; 0 where there is no answer.
bool lw_row_least_drags(const lw_polar_shape *shape, const double *reynolds, int count,
                        double *drag, lw_polar_room *room);

// Value at x of the smooth curve through rising points, and its slope; beyond the ends straight on.
typedef struct lw_row_value {
    double value, slope;
} lw_row_value;
lw_row_value lw_row_between(const double *x, const double *y, int count, double at);

#endif
