// polar_table.h - inside the foil folder: rows of layers put at even steps of lift and flap.
// SPDX-License-Identifier: MIT

#ifndef LW_POLAR_TABLE_H
#define LW_POLAR_TABLE_H

#include "lullwise/polar.h"

// What a row says of one quantity, over y.
typedef struct lw_sampled {
    int count;
    double y[LW_POLAR_POINTS], value[LW_POLAR_POINTS];
} lw_sampled;

// Drag over the least as a logarithm; suction when there is no least.
lw_sampled lw_polar_sample(const lw_polar *polar, const lw_polar_row *row, double flap,
                           double least_drag);

// y at a knot.
double lw_polar_y(const lw_polar *polar, int k);

void lw_polar_fill_drag(const lw_polar *polar, const lw_sampled *sampled, lw_polar_knot *knots);
void lw_polar_fill_suction(const lw_polar *polar, const lw_sampled *sampled, lw_polar_knot *knots);

// Slopes at the knots, in knots: over lift, and across the flap angles.
void lw_polar_smooth(double *value, double *slope, int count);
void lw_polar_smooth_across(lw_polar_knot table[LW_POLAR_FLAPS][LW_POLAR_LIFTS]);
void lw_polar_smooth_bent(lw_polar_flap_knot bent[LW_POLAR_FLAPS]);

#endif
