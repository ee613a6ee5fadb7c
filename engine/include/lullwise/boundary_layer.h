// boundary_layer.h - a foil section in water that has friction: drag, separation, loads, greatest
// lift.
// SPDX-License-Identifier: MIT

#ifndef LW_BOUNDARY_LAYER_H
#define LW_BOUNDARY_LAYER_H

#include "lullwise/base.h"
#include "lullwise/medium.h"
#include "lullwise/profile.h"

// --- a foil section in water that has friction: drag, separation, greatest lift

#define LW_WAVE_GROWTH_USUAL 9.0  // e^9: a quiet tunnel; 4 or less in rough water [judged]

// Below is side 0, above side 1.
typedef struct lw_layer_conditions {
    double reynolds;     // Re    [-]   of the chord; 5e4 to 2e7
    double alpha;        //       [rad] angle of attack, within 30 degrees
    double wave_growth;  // n     [-]   waves e^n times as large turn the layer turbulent
    double trip[2];      // x     [-]   turbulent from here at the latest; 1: not forced
} lw_layer_conditions;

// Free transition in a quiet flow.
lw_layer_conditions lw_layer_free(double reynolds, double alpha);

typedef enum lw_layer_outcome {
    LW_LAYER_SETTLED,    // a root: of no equation more than 1e-8 is left
    LW_LAYER_NO_ANSWER,  // none was found: loads of the perfect fluid, without drag
    LW_LAYER_OUTSIDE,    // conditions outside their range, or not numbers: all loads are 0
} lw_layer_outcome;

typedef struct lw_layer_load {
    double lift;            // c_l [-]
    double drag;            // c_d [-]  of friction and pressure
    double moment;          // c_m [-]  about the quarter chord, bow up positive
    double least_pressure;  // C_p [-]  lowest on the surface
    double least_at;        // x   [-]
    double transition[2];   // x   [-]  where the layer turns turbulent
    double separation[2];   // x   [-]  where the turbulent layer leaves for good; 1: nowhere
    double left;            //     [-]  greatest of what is left of all equations
    int steps;              // of Newton's, in all
    lw_layer_outcome outcome;
} lw_layer_load;

// A row over the mass at every node, and 1; a multiple of four.
#define LW_FLOW_ROW 188

// Unknowns of a layer's equations at every node.
typedef struct lw_layer_state {
    double alpha;                     // [rad]
    double mass[LW_FLOW_NODES];       // U delta, with the sign of U along the surface
    double speed[LW_FLOW_NODES];      // U at the edge, along the surface or the wake
    double log_theta[LW_FLOW_NODES];  // ln of the momentum thickness
    double third[LW_FLOW_NODES];      // laminar: n; turbulent, wake: ln of the stress
    int nose;                         // node before the stagnation point
    int turns[2];                     // station of each side before which it turns turbulent
} lw_layer_state;

// A profile made ready: how the speed at every node follows from the mass that the layers push
// aside. About 1 MB, the caller's.
typedef struct lw_layer {
    lw_profile profile;
    lw_profile_flow flow;
    int nodes, all;  // on the surface; with those of the wake, the first of which is at the tail
    double s[LW_FLOW_NODES];                             // length along the surface, and the wake
    double along[LW_FLOW_NODES], across[LW_FLOW_NODES];  // speed for the two unit flows
    double response[LW_FLOW_NODES * LW_FLOW_ROW];
    double matrix[LW_FLOW_NODES * LW_FLOW_ROW];
    lw_layer_state state;
    bool has_root;  // and where the state is one
} lw_layer;

lw_profile_status lw_layer_of(const lw_profile *profile, lw_profile_room *room, lw_layer *layer);

// Outer flow, both layers and the wake as one set of equations, solved by Newton's method with all
// slopes [drela-1989]: momentum and energy, a lag equation for the turbulent stress and the e^n
// envelope for transition [drela-giles-1987]; the outer flow answers to the mass at all stations.
// The start hangs on nothing but the conditions; where it fails, the way leads by an angle where it
// does not. So the answer does not hang on what was asked before. Drag from the end of a wake one
// chord long [squire-young].
//
// Holds for    Re 1e5..1e7, attached flow and a separated tail of less than a third.
// Leaves out   cavities; roughness but for the trip; the stall of thin noses is a limit apart,
//              below.
// How good     doc/section.md.
lw_layer_load lw_layer_load_of(lw_layer *layer, const lw_layer_conditions *conditions);

// The same, but on from the layer's last root where it has one: faster, for rows of angles that are
// always the same.
lw_layer_load lw_layer_load_next(lw_layer *layer, const lw_layer_conditions *conditions);

// Another root at the same conditions, as where a bubble bursts: sought from starts a degree below
// and above, and walked from there. No answer where neither leads to one with 0.002 of lift or
// 0.5 % of drag between it and the root taken.
lw_layer_load lw_layer_load_other(lw_layer *layer, const lw_layer_conditions *conditions,
                                  const lw_layer_load *taken);

// Suction -C_p that a nose bears before the flow leaves it all at once.
//
//     13 + 3.2 lg(Re / 6e6), 14 at most       a limit to the suction peak: [valarezo-chin-1994]
//
// The numbers are ours [judged]: NACA 0009 stalls at 9, 12 and 13.5 degrees at Re 1e5, 1e6 and 3e6,
// NACA 0012 at a lift of 1.59 at Re 6e6.
double lw_layer_nose_limit(double reynolds);

typedef enum lw_stall_cause {
    LW_STALL_BEYOND,  // not found: it still rose at 28 degrees
    LW_STALL_LOST,    // not found: no root behind the last, or none to begin with
    LW_STALL_TAIL,    // separation from the tail has eaten what the angle brings
    LW_STALL_NOSE,    // the suction peak reached its limit
} lw_stall_cause;

typedef struct lw_layer_stall {
    double alpha, lift;  // [rad], [-]; the greatest lift found
    lw_stall_cause cause;
} lw_layer_stall;

// Follows the roots upwards from that at the conditions' angle, past angles where their curve turns
// back, to the first lift behind which it falls by 0.06.
lw_layer_stall lw_layer_stall_of(lw_layer *layer, const lw_layer_conditions *from);

// --- a foil section in the water at an angle: loads, pressures, greatest lift
//
// What profile.h and boundary_layer.h work out, asked for angle by angle, with or without friction.

// Members that have no answer, as drag without friction, are NaN.
typedef struct lw_section_point {
    double alpha;             // [rad]
    double lift;              // c_l
    double drag;              // c_d
    double lift_to_drag;      // L/D
    double moment;            // c_m   about the quarter chord
    double least_pressure;    // C_p   lowest on the surface
    double least_at;          // x     where, in chords
    double transition_above;  // x     where the layer turns turbulent
    double transition_below;  // x
    double separation_above;  // x     where it leaves for good; 1: nowhere
    double cavitates_at;      // V_c   [m/s]
    double left;              // greatest of what is left of all equations; a root has 1e-8
} lw_section_point;

extern const lw_table lw_section_table;

// A section with its flap set, ready for any angle. About 2 MB, the caller's.
typedef struct lw_section_flow {
    lw_profile profile;
    lw_profile_flow flow;
    lw_profile_room room;
    lw_layer layer;
    bool has_layer;            // made ready when friction is first asked for
    lw_profile coarse;         // with every second of the points given left out,
    lw_profile_flow about_it;  // and the flow about that
    bool has_coarse;
} lw_section_flow;

lw_profile_status lw_section_flow_of(lw_section_flow *flow, const lw_outline *outline,
                                     lw_profile_flap flap);

// Where a section is: the water, how deep it lies, and its friction.
typedef struct lw_section_water {
    const lw_medium *medium;
    double depth;        // [m]
    double reynolds;     // of the chord; 0: a perfect fluid
    double wave_growth;  // n, as in lw_layer_conditions
    double trip;         // x from which both layers are turbulent at the latest; 1: free
} lw_section_water;

lw_section_point lw_section_point_at(lw_section_flow *flow, lw_section_water water, double alpha);

// The same, with the pressure coefficients at the profile's nodes; NaN where there is no answer.
lw_section_point lw_section_pressures(lw_section_flow *flow, lw_section_water water, double alpha,
                                      double pressures[LW_NODES_MOST]);

// The other root with friction where there are two (lw_layer_load_other); NaN where there are not.
lw_section_point lw_section_other(lw_section_flow *flow, lw_section_water water,
                                  const lw_section_point *taken);

// How sure the lowest pressure is of a section from coordinates: the greatest part by which it
// changes, in a perfect fluid within 2 degrees of alpha, when every second point is left out. NaN
// where that cannot be told: of a designation, or of fewer than 40 points.
double lw_section_unsure(const lw_section_flow *flow, double alpha);

// Angle [rad] within 30 degrees at which a section lifts so much in a perfect fluid.
double lw_section_angle(const lw_section_flow *flow, double lift);

// Greatest lift with friction, on the curve of roots from that at 0 degrees.
lw_layer_stall lw_section_stall(lw_section_flow *flow, lw_section_water water);

#endif
