// sweep.h - inside the section folder: the layers of a profile, swept until the flow agrees.
// SPDX-License-Identifier: MIT

#ifndef LW_SWEEP_H
#define LW_SWEEP_H

#include "foil/section/march.h"
#include "lullwise/boundary_layer.h"

// One solution in the making.
typedef struct lw_sweep {
    lw_layer *layer;
    const lw_layer_conditions *at;
    lw_layer_flow flow[3];              // of each kind of layer
    double undisturbed[LW_FLOW_NODES];  // speed without layers, with its sign on the surface
    double transition[2], separation[2];
    lw_march_memory memory[LW_FLOW_NODES];
    double taken;    // part of the change of mass that is taken
    double more[2];  // mass at the tail less that at the last station
    double change;
    int unsolved;  // stations
} lw_sweep;

// Speed of the outer flow at a node for the mass there is; along s positive on the surface.
double lw_sweep_speed(const lw_sweep *sweep, int node);

// Speeds without layers; layers of flat plates to begin with.
void lw_sweep_start(lw_sweep *sweep);
void lw_sweep_guess(lw_sweep *sweep);

// Mass at the tail from that of the last stations, without or with a new look at its rise.
void lw_sweep_join_tail(lw_sweep *sweep);
void lw_sweep_draw_out(lw_sweep *sweep);

// False when there is no stagnation point.
bool lw_sweep_once(lw_sweep *sweep);

#endif
