// prepared.h - what a craft reads from curves instead of computing it, and how far they are off.
// SPDX-License-Identifier: MIT

#ifndef LW_PREPARED_H
#define LW_PREPARED_H

#include <stddef.h>

// --- a smooth function of one variable on evenly spaced knots; solve/curve.h reads it

#define LW_CURVE_KNOTS 49

typedef struct lw_curve {
    double first, step;  // x of knot 0, distance between knots
    double value[LW_CURVE_KNOTS];
    double slope[LW_CURVE_KNOTS];  // d value / d (x / step)
} lw_curve;

// --- what a craft reads from curves instead of computing it, and how far they are off

// One prepared function: its largest error against the direct computation anywhere between the
// knots, on the preset boat. Tests measure it afresh.
typedef struct lw_prepared {
    const char *function;
    double error;
    const char *unit;
    const char *where;  // the error is largest
} lw_prepared;

typedef struct lw_prepared_list {
    const lw_prepared *rows;
    size_t count;
} lw_prepared_list;

// The hull: volume, its middle, waterplane, friction and waves. Within 8 deg of pitch, 1.3 of the
// measured draft, and 1.2 to 9 m/s.
lw_prepared_list lw_prepared_hull(void);

// Foils: slope, induced drag and downwash over depth, from 0.1 m down, against a lattice of 32 x 4;
// lift, and the load where the stall begins, heeled 10 to 30 deg, against the same lattice, with
// the tip 5 cm deep or more, or out of the water by up to 0.15 m;
// sections' lift, drag, moment and lowest pressure, with the flow within -5 to 7 degrees of meeting
// the nose smoothly and Re 2.5e5 to 1.2e6, against the layer that a polar was worked out from.
lw_prepared_list lw_prepared_foils(void);

#endif
