// newton.h - inside the section folder: the root of the whole system.
// SPDX-License-Identifier: MIT

#ifndef LW_SECTION_NEWTON_H
#define LW_SECTION_NEWTON_H

#include "foil/section/system.h"

// How a search ended.
typedef struct lw_sought {
    bool is_found;
    int steps;
    double left;  // greatest of what is left of all equations
} lw_sought;

// A state that hangs on nothing but the conditions: layers laid along the speeds of the perfect
// fluid. False when there is no stagnation point.
bool lw_newton_start(lw_system *system);

// From the layer's state; alpha of the conditions is held.
lw_sought lw_newton(lw_system *system, int steps_most);

#endif
