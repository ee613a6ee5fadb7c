// arc.h - inside the section folder: roots followed along a curve, past angles where it turns back.
// SPDX-License-Identifier: MIT

#ifndef LW_SECTION_ARC_H
#define LW_SECTION_ARC_H

#include "foil/section/newton.h"

// A walk along the roots of a layer. The angle is an unknown of each, and so the curve may turn:
// where a bubble bursts, an angle has several roots. Lengths are of angle [rad] and of all masses.
typedef struct lw_arc_walk {
    lw_system system;
    lw_arc arc;
    double length;  // walked so far
    double stride;  // the next
    int steps;      // of Newton's
} lw_arc_walk;

// From the root that the layer holds, to greater angles or to lesser.
void lw_arc_begin(lw_arc_walk *walk, lw_layer *layer, const lw_layer_conditions *at, bool is_up);

// The next root; false when none is found, however near: the layer then holds the last one.
bool lw_arc_next(lw_arc_walk *walk);

#endif
