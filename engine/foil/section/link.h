// link.h - inside the section folder: the equations of a station in terms of its links.
// SPDX-License-Identifier: MIT

#ifndef LW_LINK_H
#define LW_LINK_H

#include "foil/section/system.h"

// Slopes of the three equations at a station, in terms of its links.
typedef struct lw_equations {
    lw_four by_0[3], by_1[3], by_2[3];
    double by_nose[3], left[3];
} lw_equations;

// A station among those it hangs on.
typedef struct lw_row {
    int nodes[3];  // two before, one before, its own
    int k;         // its number on the side; 1 and 2 hang on the first, whose shape is fixed
    double sign;
} lw_row;

// Slopes along theta, shape, speed and third made those along theta, third, mass and speed; and the
// same where the shape is fixed, as at a side's first station.
lw_four lw_by_mass(lw_four by, const lw_station *station, double mass, double speed);
lw_four lw_by_speed(lw_four by, double speed);

void lw_equations_of(const lw_system *system, const lw_interval *interval, const lw_row *at,
                     lw_equations *equations);

// Theta and third by two combinations of the equations; that which holds neither is left for the
// mass.
void lw_link_up(const lw_equations *equations, lw_links *links);

// Counts what is left into the system's.
void lw_note(lw_system *system, const lw_equations *equations);

#endif
