// system.h - inside the section folder: outer flow and layers as one system of equations.
// SPDX-License-Identifier: MIT

#ifndef LW_SYSTEM_H
#define LW_SYSTEM_H

#include "foil/section/interval.h"
#include "lullwise/boundary_layer.h"

// How a change at a station follows from those at the stations before it (two of them: of theta,
// third, mass, speed), from mass and speed at its own, and from the stagnation point.
typedef struct lw_link {
    lw_four by_0, by_1;
    double by_mass, by_speed, by_nose, rest;
} lw_link;

// A station's links; of the mass nothing is to be left over.
typedef struct lw_links {
    int node_0, node_1, node;  // node_0: -1 where it plays no part
    lw_link theta, third, mass;
} lw_links;

// Shape of the flow to a stagnation point, by the closures.
#define LW_STAGNATION_SHAPE 2.229507759055277

// A side: stations from the stagnation point on, and distances from there.
typedef struct lw_side {
    int number;                    // 0 below, 1 above
    int count;                     // stations
    double sign;                   // of the flow along s
    int turns;                     // station before which the layer turns turbulent; count: nowhere
    double turn;                   // where that is
    double place;                  // the profile's x there
    double turn_least, turn_most;  // where it is kept while a root is sought
    bool is_held;                  // it would lie beyond these
} lw_side;

// A change of all unknowns, by node.
typedef struct lw_change {
    double mass[LW_FLOW_NODES], speed[LW_FLOW_NODES];
    double theta[LW_FLOW_NODES], third[LW_FLOW_NODES];
} lw_change;

// The angle is an unknown, too, where a root lies so far along a direction from another:
//
//     by_alpha (alpha - alpha_0) + sum by_mass (m - m_0) = length
typedef struct lw_arc {
    double alpha, by_alpha, length;
    double mass[LW_FLOW_NODES], by_mass[LW_FLOW_NODES];
} lw_arc;

typedef struct lw_system {
    lw_layer *layer;
    const lw_layer_conditions *at;
    const lw_arc *arc;  // NULL: the conditions' angle is given
    double log_reynolds;
    double undisturbed[LW_FLOW_NODES];
    int nose;       // the node before the stagnation point
    int passes;     // steps of a search in which it passed a node
    double origin;  // s of the stagnation point
    lw_side side[2];
    lw_station station[LW_FLOW_NODES];  // by node
    lw_links links[LW_FLOW_NODES];      // in the order in which they are worked out
    double left, sum;                   // of all equations: the greatest, the sum of squares
    double arc_left;                    // of the arc's
    lw_change step;                     // that would leave nothing over,
    double alpha_step;                  // with that of the angle
} lw_system;

// Node of a station of a side.
int lw_side_node(const lw_system *system, const lw_side *side, int k);

// Begins at conditions, with the layer's state.
void lw_system_begin(lw_system *system, lw_layer *layer, const lw_layer_conditions *at);

// Where the stagnation point is, by the speeds; false when there is none.
bool lw_system_flow(lw_system *system);

// Equations at the state there is.
void lw_system_assemble(lw_system *system);

// Parts of that, for layers that are laid: the first stations, whose places are then right.
void lw_begin_side(lw_system *system, const lw_side *side);
void lw_begin_wake(lw_system *system);

// The wake's part.
void lw_wake_assemble(lw_system *system, lw_links *links);

// Distance from the stagnation point of a side's trip; far off where nothing is forced.
double lw_trip_of(const lw_system *system, const lw_side *side);

// Where in the interval before station k the layer turns, if it does: a part above 1 is none.
lw_turn lw_turn_at(const lw_system *system, lw_side *side, int k, double trip);

// The step that would leave nothing over; false when there is none.
bool lw_system_solve(lw_system *system);

#endif
