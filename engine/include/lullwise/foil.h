// foil.h - one foil of a craft by itself: its forces, what it lifts and costs, where its water
// boils.
// SPDX-License-Identifier: MIT

#ifndef LW_FOIL_H
#define LW_FOIL_H

#include "lullwise/boundary_layer.h"
#include "lullwise/craft.h"
#include "lullwise/wing.h"

// --- one foil of a prepared craft by itself: the forces that flight is balanced with

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

// --- a whole foil of a boat: what it lifts and costs, and where its water boils

typedef struct lw_whole_point {
    double speed;             // V [m/s]
    double alpha;             // [rad]
    double coefficient;       // C_L
    double lift;              // [N]
    double section, induced;  // drag [N]; the first with the corner at the strut
    double drag;              // [N]
    double lift_to_drag;
    double moment;             // [N m]
    double load_share;         // of the lift at the stall
    double least_pressure;     // C_p
    double cavitation_number;  // sigma
    double cavitates_at;       // V_c [m/s] at this C_L
} lw_whole_point;

extern const lw_table lw_whole_table;

// One foil at a depth, ready for any speed and angle. About 2.5 MB, the caller's.
typedef struct lw_whole_foil {
    const lw_foil_craft *foil;
    const lw_medium *medium;
    lw_foil_place place;        // depth, heel and flap
    const lw_outline *outline;  // of the section whose pressures count
    lw_section_flow flow;
    lw_wing_lattice lattice;
    double steepest;   // c_l of the most loaded strip / C_L
    double tip_depth;  // [m] of the higher tip
} lw_whole_foil;

// The section that the foil's polar is worked out from: by the boat's designation, or, where it has
// none, four digits as measured; false then.
bool lw_whole_own_section(lw_outline *outline, const lw_polar_shape *shape);

// Lays the lattice and solves the section. `whole` has foil, medium, place and outline; false with
// a sentence in *why.
bool lw_whole_prepare(lw_whole_foil *whole, const lw_foil *foil, const char **why);

// At an angle; or at the angle that carries a load, all but the speed NaN when none does.
lw_whole_point lw_whole_at(lw_whole_foil *whole, double speed, double alpha);
lw_whole_point lw_whole_carrying(lw_whole_foil *whole, double speed, double load);

// The section where the span is loaded most, in a perfect fluid, with the pressures at the
// profile's nodes; all NaN at a C_L of NaN.
lw_section_point lw_whole_pressures(lw_whole_foil *whole, double coefficient,
                                    double pressures[LW_NODES_MOST]);

// Least speed that carries a load, and the first at which carrying it boils the water; NaN when
// there is none up to 80 kn.
double lw_whole_takes_off(const lw_whole_foil *whole, double load);
double lw_whole_cavitates(lw_whole_foil *whole, double load);

// Speed [m/s] below which the surface at the foil's depth makes waves of its own, which are left
// out.
double lw_whole_waves_below(const lw_whole_foil *whole);

#endif
