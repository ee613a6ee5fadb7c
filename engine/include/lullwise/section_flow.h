// section_flow.h - a foil section in the water at an angle: loads, pressures, greatest lift.
// SPDX-License-Identifier: MIT
//
// What profile.h and boundary_layer.h work out, asked for angle by angle, with or without friction.

#ifndef LW_SECTION_FLOW_H
#define LW_SECTION_FLOW_H

#include "lullwise/base.h"
#include "lullwise/boundary_layer.h"
#include "lullwise/medium.h"

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
