// drag_curve.h - hull afloat and main foil flying, each with the whole weight: why a boat flies.
// SPDX-License-Identifier: MIT

#ifndef LW_DRAG_CURVE_H
#define LW_DRAG_CURVE_H

#include "lullwise/craft.h"

typedef struct lw_drag {
    double hull;  // [N] friction and waves; NaN beyond Fn 1.5, where thin-ship theory ends
    double foil;  // [N] the main foil half a metre deep; NaN where it is too slow to carry her
} lw_drag;

// At each of n speeds [m/s]; the craft is the boat's.
void lw_drag_curve(const lw_boat *boat, const lw_craft *craft, const double *speeds, lw_drag *drag,
                   size_t n);

#endif
