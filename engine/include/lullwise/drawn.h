// drawn.h - what pictures of a boat show: where sail and sailor stand, and why she flies.
// SPDX-License-Identifier: MIT

#ifndef LW_DRAWN_H
#define LW_DRAWN_H

#include "lullwise/craft.h"

// Every x forward of the transom, every height above the hull's bottom at the main strut.
typedef struct lw_craft_drawn {
    double weight;                          // [N] boat and sailor
    double sail_x, sail_height;             // [m] where the full sail acts
    double place_x;                         // [m] the sailor's middle
    double body_in, body_out, body_height;  // [m] to windward: sitting in, hiked
    double strut_turn;                      // [rad] by the pin, bow up
    double trough;                          // [m] of the chop in the wind
} lw_craft_drawn;

// incidence: of the pin [rad]; place: the sailor's, forward of the main foil [m]; wind [m/s].
lw_craft_drawn lw_craft_drawn_of(const lw_craft *craft, double incidence, double place,
                                 double wind);

// --- hull afloat and main foil flying, each with the whole weight

typedef struct lw_drag {
    double hull;  // [N] friction and waves; NaN beyond Fn 1.5, where thin-ship theory ends
    double foil;  // [N] the main foil half a metre deep; NaN where it is too slow to carry her
} lw_drag;

// At each of n speeds [m/s]; the craft is the boat's.
void lw_drag_curve(const lw_boat *boat, const lw_craft *craft, const double *speeds, lw_drag *drag,
                   size_t n);

#endif
