// closure.h - inside the section folder: what the profile of a boundary layer does, from its
// thicknesses, with all slopes.
// SPDX-License-Identifier: MIT

#ifndef LW_CLOSURE_H
#define LW_CLOSURE_H

#include "foil/section/dual.h"

typedef enum lw_layer_kind { LW_LAMINAR, LW_TURBULENT, LW_WAKE } lw_layer_kind;

// A place in a layer by the unknowns of the equations; lengths in chords, speeds in those of the
// undisturbed flow.
typedef struct lw_layer_place {
    double log_theta;  // of the momentum thickness
    double shape;      // H = delta / theta
    double log_speed;  // of U at the edge, along the layer
    double third;      // laminar: n, how often waves have grown e times; else ln of the stress, the
                       // square root of the greatest shear stress coefficient
} lw_layer_place;

// In the symbols of [drela-giles-1987].
typedef struct lw_closure {
    double shape;
    lw_dual log_H_star;   // of energy thickness over theta
    lw_dual friction;     // c_f / theta [1/chord]; below 0 the layer is apart
    lw_dual dissipation;  // 2 c_D / (H* theta) [1/chord]
    lw_dual lag;          // turbulent, wake: d(2 ln S + 2 ln U) / dx [1/chord]
    lw_dual growth;       // laminar: d n / dx [1/chord]
} lw_closure;

void lw_closure_of(lw_layer_kind kind, double log_reynolds, const lw_layer_place *place,
                   lw_closure *of);

// Logarithm of the stress with which a turbulent layer starts.
void lw_closure_start(double log_reynolds, const lw_layer_place *place, lw_dual *log_stress);

#endif
