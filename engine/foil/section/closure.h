// closure.h - inside the section folder: what the profile of a boundary layer does, from its
// thicknesses.
// SPDX-License-Identifier: MIT

#ifndef LW_CLOSURE_H
#define LW_CLOSURE_H

#include <stdbool.h>

typedef enum lw_layer_kind { LW_LAMINAR, LW_TURBULENT, LW_WAKE } lw_layer_kind;

// A place in a layer. Lengths in chords, speeds in those of the undisturbed flow.
typedef struct lw_layer_place {
    double x;       // from the stagnation point, along the surface and the wake
    double theta;   // momentum thickness
    double delta;   // displacement thickness
    double stress;  // square root of the greatest shear stress coefficient; turbulent only
    double speed;   // U at the edge
} lw_layer_place;

// In the symbols of [drela-giles-1987].
typedef struct lw_closure {
    double H;        // shape, delta / theta
    double H_star;   // energy thickness / theta
    double c_f;      // friction coefficient
    double two_c_D;  // twice the dissipation coefficient over H_star
    double U_s;      // slip speed
    double c_eq;     // stress in equilibrium, as the stress above
    double thick;    // nominal thickness
    double R;        // Reynolds number of theta
} lw_closure;

lw_closure lw_closure_of(lw_layer_kind kind, const lw_layer_place *place, double reynolds);

// The same where the logarithm of R is known already.
lw_closure lw_closure_at(lw_layer_kind kind, const lw_layer_place *place, double reynolds,
                         double log_R);

// Whether a turbulent layer has friction backwards.
bool lw_is_apart(const lw_layer_place *place, double reynolds);

// Growth of the fastest wave's logarithm per chord in a laminar layer [drela-giles-1987].
double lw_wave_growth(double H, double theta, double R);

// Stress at the start of a turbulent layer, as a part of that in equilibrium.
double lw_stress_at_transition(double H);

#endif
