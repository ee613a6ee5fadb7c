// march.h - inside the section folder: a boundary layer from one station to the next.
// SPDX-License-Identifier: MIT

#ifndef LW_MARCH_H
#define LW_MARCH_H

#include <stdbool.h>

#include "foil/section/closure.h"

// What the outer flow does at a station: U = speed + pull * mass, mass = U delta.
typedef struct lw_outer {
    double x, speed, pull;
} lw_outer;

// How the unknowns of a station answered when it was last worked out.
typedef struct lw_march_memory {
    double inverse[3][3];
    lw_layer_kind kind;
    bool is_known;
} lw_march_memory;

// Place after `from`, which is of the same kind but for the first of the wake; the guess holds
// theta, delta, stress and speed to begin with. False when no solution was found: the place is
// then the guess.
bool lw_march(lw_layer_kind kind, const lw_layer_place *from, const lw_outer *outer,
              double reynolds, lw_layer_place *place, lw_march_memory *memory);

#endif
