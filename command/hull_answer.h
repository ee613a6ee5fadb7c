// hull_answer.h - what `lullwise hull` tells: a hull afloat, and what it costs to drive it.
// SPDX-License-Identifier: MIT

#ifndef LW_HULL_ANSWER_H
#define LW_HULL_ANSWER_H

#include "command/steps.h"
#include "lullwise/hull_shape.h"
#include "lullwise/medium.h"

typedef struct lw_afloat {
    double displaced;               // [kg]
    double length, beam, draft;     // L, B, T [m]
    double wetted, waterplane;      // S, A_WP [m^2]
    double block;                   // C_B
    double waterplane_coefficient;  // C_WP
    double centre_x;                // LCB [m]
    double centre_height;           // KB [m] above the lowest point
    double metacentre_across;       // BM [m]
    double metacentre_along;        // BM [m]
    double transom_area;            // [m^2]
    double trim;                    // [rad] bow up
} lw_afloat;

typedef struct lw_drive {
    double froude;
    double speed;                   // [m/s]
    double friction, waves, total;  // [N]
    double of_weight;               // total / weight
    double friction_coefficient;    // C_V = (1 + k) C_F
    double wave_coefficient;        // C_W
    double total_coefficient;       // C_T
} lw_drive;

extern const lw_table lw_afloat_table, lw_drive_table;

// Water that is moved through, and the form factor k.
typedef struct lw_driven_in {
    double density, viscosity, form_factor;
} lw_driven_in;

lw_afloat lw_afloat_of(const lw_hull_cut *cut, double density);
lw_drive lw_drive_at(const lw_hull_cut *cut, lw_driven_in water, double speed);

// Level, and sunk until so much volume [m^3] is under water.
lw_hull_status lw_hull_float_level(lw_hull_cut *cut, const lw_hull_shape *shape, double volume);

#endif
