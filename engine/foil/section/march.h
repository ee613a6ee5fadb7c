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

// A station that has been solved, or from which a march begins.
typedef struct lw_march_from {
    lw_layer_flow flow;
    lw_station station;
    lw_closure closure;
} lw_march_from;

lw_march_from lw_march_start(const lw_layer_flow *flow, const lw_layer_place *place);

// The place after `from`, of the same kind of layer; the guess holds theta, delta, stress and speed
// to begin with. False when no solution was found: `place` is then the guess, and `end` stays as it
// is; it may be `from` itself.
bool lw_march(const lw_march_from *from, const lw_outer *outer, lw_layer_place *place,
              lw_march_from *end, lw_march_memory *memory);

#endif
