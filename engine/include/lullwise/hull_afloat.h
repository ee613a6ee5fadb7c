// hull_afloat.h - a hull afloat with its weights, and what it costs to drive it, in numbers.
// SPDX-License-Identifier: MIT
//
// A hull_shape.h shape floated by what it carries, and told as rows with units.

#ifndef LW_HULL_AFLOAT_H
#define LW_HULL_AFLOAT_H

#include "lullwise/boat.h"
#include "lullwise/hull_shape.h"

// --- floated

// The boat's hull from its measured dimensions, with deck enough for any load.
lw_hull_status lw_hull_shape_of_boat(lw_hull_shape *shape, const lw_hull *hull);

// What the hull carries, its own weight included.
typedef struct lw_hull_load {
    double mass;  // [kg]
    double x;     // [m] where it acts, forward of where the hull's x is 0; NaN: held level
} lw_hull_load;

// Boat and sailor, whose middle is `place` [m] forward of the transom; NaN: held level.
lw_hull_load lw_hull_load_of(const lw_hull *hull, const lw_person *person, double place);

// Cuts the hull where it floats so.
lw_hull_status lw_hull_float_load(lw_hull_cut *cut, const lw_hull_shape *shape, lw_hull_load load,
                                  double density);

// Wigley's hull of usual proportions, B = L / 10 and T = L / 16, at its draft.  [wigley-1934]
lw_hull_status lw_hull_float_wigley(lw_hull_cut *cut, lw_hull_shape *shape, double length);

// --- in numbers

typedef struct lw_hull_afloat {
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
} lw_hull_afloat;

typedef struct lw_hull_drive {
    double froude;
    double speed;                   // [m/s]
    double friction, waves, total;  // [N]
    double of_weight;               // total / weight
    double friction_coefficient;    // C_V = (1 + k) C_F
    double wave_coefficient;        // C_W
    double total_coefficient;       // C_T
} lw_hull_drive;

extern const lw_table lw_hull_afloat_table, lw_hull_drive_table;

lw_hull_afloat lw_hull_afloat_of(const lw_hull_cut *cut, double density);

// Water that is moved through, and the form factor k.
typedef struct lw_hull_water {
    double density, viscosity, form_factor;  // [kg/m^3], [m^2/s], [-]
} lw_hull_water;

// Friction and waves at a speed [m/s]; the speed of a Froude number on the length of the cut.
lw_hull_drive lw_hull_drive_at(const lw_hull_cut *cut, lw_hull_water water, double speed);
double lw_hull_speed_at(const lw_hull_cut *cut, double froude);

#endif
