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

// A place with the logarithms of its thickness, speed and stress.
typedef struct lw_station {
    lw_layer_place at;
    double log_theta, log_speed, log_stress;
} lw_station;

// In the symbols of [drela-giles-1987].
typedef struct lw_closure {
    double H;        // shape, delta / theta
    double H_star;   // energy thickness / theta
    double c_f;      // friction coefficient; below 0 the layer is apart
    double two_c_D;  // twice the dissipation coefficient over H_star
    double U_s;      // slip speed
    double c_eq;     // stress in equilibrium, as the stress above
    double thick;    // nominal thickness
    double R;        // Reynolds number of theta
    double log_H_less_1, log_H_star;
    double late;  // how much the place counts beside the one before, where the shape changes
} lw_closure;

typedef struct lw_layer_flow {
    lw_layer_kind kind;
    double reynolds, log_reynolds;
} lw_layer_flow;

lw_station lw_station_of(const lw_layer_place *place);

// The shape before may be left out; then both places count alike.
lw_closure lw_closure_of(const lw_layer_flow *flow, const lw_station *station,
                         const lw_closure *before);

// Growth of the fastest wave's logarithm per chord in a laminar layer [drela-giles-1987].
double lw_wave_growth(double H, double theta, double R);

// Stress at the start of a turbulent layer, as a part of that in equilibrium.
double lw_stress_at_transition(double H);

#endif
