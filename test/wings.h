// wings.h - wings of simple outline, for tests.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_WINGS_H
#define LW_TEST_WINGS_H

#include <math.h>

#include "lullwise/elementary.h"
#include "lullwise/wing.h"

// Straight-tapered wing of mean chord 1 m, its quarter-chord line swept back.
static inline lw_wing straight_wing(double aspect, double taper, double sweep, double slope)
{
    const double b = aspect, root = 2.0 / (1.0 + taper);
    lw_wing wing = {.count = 2};
    wing.station[0] = (lw_wing_station){.chord = root, .slope = slope};
    wing.station[1] = (lw_wing_station){
        .y = 0.5 * b, .chord = root * taper, .x = -0.5 * b * lw_tan(sweep), .slope = slope};
    return wing;
}

// Elliptic wing of unit span with a straight quarter-chord line: its stations are the middles of
// an even number of cosine strips, so the lattice meets the true chords.
static inline lw_wing elliptic_wing(double aspect, int strips)
{
    const double root = 4.0 / (LW_PI * aspect), slope = 2.0 * LW_PI;
    lw_wing wing = {.count = 1};
    wing.station[0] = (lw_wing_station){.chord = root, .slope = slope};
    for (int k = strips / 2; k < strips; k++) {
        const double y = -0.5 * lw_cos(LW_PI * (k + 0.5) / strips);
        const double chord = root * sqrt(1.0 - 4.0 * y * y);
        wing.station[wing.count++] = (lw_wing_station){.y = y, .chord = chord, .slope = slope};
    }
    wing.station[wing.count++] = (lw_wing_station){.y = 0.5, .chord = 0.0, .slope = slope};
    return wing;
}

#endif
