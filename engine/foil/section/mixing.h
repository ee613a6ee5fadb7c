// mixing.h - inside the section folder: what the last sweeps tell about where they are going.
// SPDX-License-Identifier: MIT

#ifndef LW_MIXING_H
#define LW_MIXING_H

#include "foil/section/sweep.h"

#define LW_MIXED_MOST 5  // sweeps remembered

// What a sweep starts from: mass at every node, and its rise at both sides of the tail.
typedef struct lw_swept {
    double at[LW_FLOW_NODES + 2];
} lw_swept;

typedef struct lw_mixing {
    int count;
    lw_swept from[LW_MIXED_MOST], step[LW_MIXED_MOST];  // before a sweep, and what it changed
} lw_mixing;

lw_swept lw_swept_of(const lw_sweep *sweep);

// After a sweep that started at `from`: puts the sweep where the changes of the last ones, weighed
// by least squares, would add up to none [anderson-1965].
void lw_mixing_take(lw_mixing *mixing, lw_sweep *sweep, const lw_swept *from);

#endif
