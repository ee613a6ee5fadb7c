// linkage.h - wand angle from ride height and pitch, flap angle from wand angle, and the stops.
// SPDX-License-Identifier: MIT

#ifndef LW_LINKAGE_FORCE_H
#define LW_LINKAGE_FORCE_H

#include <math.h>

#include "lullwise/craft.h"
#include "lullwise/elementary.h"
#include "solve/elementary.h"
#include "solve/lanes.h"
#include "solve/within.h"

#define LW_STOP_EDGE (1.0 * LW_DEG)  // over which a stop is rounded

// A stop with an edge rounded over `edge`: max(x, low), smooth.  [judged] Slack and flex round it
// in the boat too, and the solver needs a slope.
LW_INLINE lw_lanes lw_linkage_above(lw_lanes x, lw_lanes low, double edge)
{
    const lw_lanes d = x - low;
    return 0.5 * (x + low + lw_lanes_sqrt(d * d + edge * edge));
}

LW_INLINE lw_lanes lw_linkage_between(lw_lanes x, double low, double high, double edge)
{
    return -lw_linkage_above(-lw_linkage_above(x, lw_all(low), edge), lw_all(-high), edge);
}

// Wand with the pivot `height` above the water. `bow_up` and `upright` are how far the boat's x and
// z axes point up: sin(pitch), and cos(pitch) cos(heel). The wand swings in the boat's plane:
//
//     l_w (cos(psi) upright + sin(psi) bow_up) = height,  psi between its stops
//
// Holds for    a plain surface; the wand off the water hangs at its forward stop.
// Leaves out   drag of the wand; its lag, which motion has.
LW_INLINE lw_lanes lw_linkage_wand(const lw_linkage_craft *linkage, lw_lanes height,
                                   lw_lanes bow_up, lw_lanes upright, lw_lanes length)
{
    const lw_lanes reach = length * lw_lanes_sqrt(upright * upright + bow_up * bow_up);
    const lw_lanes x = lw_lanes_clamp(height / reach, lw_all(-0.999), lw_all(0.999));
    const lw_lanes hanging = lw_lanes_acos(x) + lw_lanes_atan(bow_up / upright);
    return lw_linkage_between(hanging, linkage->forward_stop, linkage->aft_stop, LW_STOP_EDGE);
}

// Flap of a wand:
//
//     delta = G (psi - psi_0) + r,      delta between its stops
//
// Leaves out   slack, which motion has.
LW_INLINE lw_lanes lw_linkage_flap(const lw_linkage_craft *linkage, lw_lanes wand, lw_lanes gearing,
                                   lw_lanes rod)
{
    const lw_lanes wanted = gearing * (wand - linkage->neutral_angle) + rod;
    return lw_linkage_between(wanted, linkage->flap_up_stop, linkage->flap_down_stop, LW_STOP_EDGE);
}

// Height of the pivot at which a wand of some length holds the flap in the middle of its travel,
// the boat level and upright: from there it moves either way.
LW_INLINE double lw_linkage_middle(const lw_linkage_craft *linkage, double length, double gearing,
                                   double rod)
{
    const double flap = 0.5 * (linkage->flap_up_stop + linkage->flap_down_stop);
    const double wand = linkage->neutral_angle + (flap - rod) / fmax(gearing, 1e-3);
    return length * lw_cos(lw_within(wand, linkage->forward_stop, linkage->aft_stop));
}

#endif
