// polar_row.h - inside the foil folder: a section's boundary layer over a row of angles.
// SPDX-License-Identifier: MIT

#ifndef LW_POLAR_ROW_H
#define LW_POLAR_ROW_H

#include "lullwise/polar.h"

// Angle of attack of a bent section's front part at which the nose meets the flow smoothly, by
// thin-aerofoil theory, for a flap angle of 1 rad [glauert-flap].
double lw_row_middle_alpha(double flap_chord);

// Lays the panels and the layer of the section in the room. False when the shape is none.
bool lw_row_lay(const lw_polar_shape *shape, double flap, lw_polar_room *room);

// From stall to stall. False when the shape is none.
bool lw_row_of(lw_polar_row *row, const lw_polar_shape *shape, double flap, double reynolds,
               lw_polar_room *room);

// At y = 0 with the flap in line, twice as fast from point to point; no drag where there is no
// answer.
bool lw_row_over_speeds(lw_polar_row *row, const lw_polar_shape *shape, lw_polar_room *room);

// Value at x of the smooth curve through rising points, and its slope; beyond the ends straight on.
typedef struct lw_row_value {
    double value, slope;
} lw_row_value;
lw_row_value lw_row_between(const double *x, const double *y, int count, double at);

#endif
