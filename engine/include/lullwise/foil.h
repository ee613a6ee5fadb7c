// foil.h - one foil of a prepared craft by itself: the forces that flight is balanced with.
// SPDX-License-Identifier: MIT

#ifndef LW_FOIL_H
#define LW_FOIL_H

#include "lullwise/craft.h"

typedef struct lw_foil_place {
    double speed;      // V [m/s]
    double incidence;  // alpha [rad] chord line to the flow
    double flap;       // delta [rad] trailing edge down
    double depth;      // h [m] of the middle
    double heel;       // phi [rad] either way
} lw_foil_place;

typedef struct lw_foil_forces {
    double lift, moment;                // [N], [N m] about the quarter chord, bow up
    double section, induced, junction;  // drag [N]
    double coefficient;                 // C_L
    double load_share;                  // C_L asked / greatest C_L: 1 at the stall
    double wetted;                      // part of the span under water
} lw_foil_forces;

// As in the balance, without downwash from elsewhere (engine/foil/foil_force.h).
lw_foil_forces lw_foil_at(const lw_foil_craft *foil, double density, lw_foil_place place);

// Incidence [rad] at which the foil lifts a load [N] at the place's speed, flap and depth; at the
// stall's when it cannot, which the load share of lw_foil_at then shows.
double lw_foil_incidence(const lw_foil_craft *foil, double density, lw_foil_place place,
                         double load);

// Least speed [m/s] at which the foil lifts a load [N], at its stall; 0 when it is out of the
// water.
double lw_foil_least_speed(const lw_foil_craft *foil, double density, lw_foil_place place,
                           double load);

#endif
