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
    LW_LAYER_SETTLED,    // speeds change by less than 2e-4 from sweep to sweep
    LW_LAYER_SWINGS,     // by less than 0.25 at one place: lift and drag are good to some per cent
    LW_LAYER_NO_ANSWER,  // stalled, or lost: loads of the perfect fluid, without drag
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
    double change;          //     [-]  of speeds in the last sweep
    int sweeps;
    lw_layer_outcome outcome;
} lw_layer_load;

// A profile made ready: how the speed at every node follows from the mass that the layers push
// aside. About 1 MB, the caller's. It keeps the last answer, from which the next one starts.
typedef struct lw_layer {
    lw_profile profile;
    lw_profile_flow flow;
    int nodes, all;  // on the surface; with those of the wake, the first of which is at the tail
    double s[LW_FLOW_NODES];              // length along the surface, and along the wake
    double wake_along[LW_WAKE_NODES][2];  // velocity in the wake for the two unit flows
    double wake_across[LW_WAKE_NODES][2];
    double response[LW_FLOW_NODES * LW_FLOW_NODES];
    double mass[LW_FLOW_NODES];  // U delta, with the sign of U along the surface
    double theta[LW_FLOW_NODES], delta[LW_FLOW_NODES], stress[LW_FLOW_NODES];
    double speed[LW_FLOW_NODES];
    bool has_answer;
} lw_layer;

lw_profile_status lw_layer_of(const lw_profile *profile, lw_profile_room *room, lw_layer *layer);

// Two equations of momentum and energy, a lag equation for the turbulent stress and the e^n
// envelope for transition [drela-giles-1987], solved downstream, station by station, together
// with the outer flow's answer to the mass at that station; swept until it no longer changes
// [veldman-1981]. Drag from the end of a wake one chord long [squire-young].
//
// Holds for    Re 1e5..1e7, attached flow and a separated tail of less than a third.
// Leaves out   cavities; roughness but for the trip. Below Re 5e5 with free transition bubbles make
//              it swing; the stall of thin noses is a limit apart, below.
// How good     drag within 8 % of NACA 0012 tripped at Re 6e6 to 17 degrees, 11 to 19 % low with
//              free transition; lift 2 to 5 % high: doc/section.md.
lw_layer_load lw_layer_load_of(lw_layer *layer, const lw_layer_conditions *conditions);

// How long to look: for rows of many angles less than usual will do.
typedef struct lw_layer_effort {
    int sweeps;     // most of them from one start; usually 100
    double change;  // of speeds at which they have settled; usually 2e-4
    bool again;     // where that fails, from a fresh start and by way of smaller angles
} lw_layer_effort;

lw_layer_load lw_layer_load_with(lw_layer *layer, const lw_layer_conditions *conditions,
                                 const lw_layer_effort *effort);

// Suction -C_p that a nose bears before the flow leaves it all at once.
//
//     13 + 3.2 lg(Re / 6e6), 14 at most       a limit to the suction peak: [valarezo-chin-1994]
//
// The numbers are ours [judged]: NACA 0009 stalls at 9, 12 and 13.5 degrees at Re 1e5, 1e6 and 3e6,
// NACA 0012 at a lift of 1.59 at Re 6e6.
double lw_layer_nose_limit(double reynolds);

typedef enum lw_stall_cause {
    LW_STALL_NOT_FOUND,  // lift still rose 24 degrees on, or there was no answer any more
    LW_STALL_TAIL,       // separation from the tail has eaten what the angle brings
    LW_STALL_NOSE,       // the suction peak reached its limit
} lw_stall_cause;

typedef struct lw_layer_stall {
    double alpha, lift;  // [rad], [-]; the greatest lift found
    lw_stall_cause cause;
} lw_layer_stall;

// Searches upwards from the conditions' angle, by half degrees, for the first greatest lift.
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
    double settled;           // 1: the layers agree with the flow outside; 0: they swing
} lw_section_point;

extern const lw_table lw_section_table;

// A section with its flap set, ready for any angle. About 2 MB, the caller's.
typedef struct lw_section_flow {
    lw_profile profile;
    lw_profile_flow flow;
    lw_profile_room room;
    lw_layer layer;
    bool has_layer;  // made ready when friction is first asked for
    double last;     // [rad] angle of the layer's last answer, from which the next is approached
} lw_section_flow;

lw_profile_status lw_section_flow_of(lw_section_flow *flow, const lw_outline *outline,
                                     lw_profile_flap flap);

// Where a section is: the water, how deep it lies, and its friction.
typedef struct lw_section_water {
    const lw_medium *medium;
    double depth;     // [m]
    double reynolds;  // of the chord; 0: a perfect fluid
    double trip;      // x from which both layers are turbulent at the latest; 1: free
} lw_section_water;

lw_section_point lw_section_point_at(lw_section_flow *flow, lw_section_water water, double alpha);

// The same, with the pressure coefficients at the profile's nodes; NaN where there is no answer.
lw_section_point lw_section_pressures(lw_section_flow *flow, lw_section_water water, double alpha,
                                      double pressures[LW_NODES_MOST]);

// Angle [rad] within 30 degrees at which a section lifts so much in a perfect fluid.
double lw_section_angle(const lw_section_flow *flow, double lift);

// Greatest lift with friction, searched upwards from 0 degrees.
lw_layer_stall lw_section_stall(lw_section_flow *flow, lw_section_water water);

#endif
