// effort.h - what a sailor's effort does: the body goes out, and beyond that power is taken off.
// SPDX-License-Identifier: MIT

#ifndef LW_EFFORT_H
#define LW_EFFORT_H

#include "lullwise/craft.h"
#include "solve/lanes.h"

// Power taken off for an effort: none below 1, all beyond, with a rounded corner, because a sailor
// eases a little before the last of hiking out.  [judged] corner
LW_INLINE lw_lanes lw_effort_taken(lw_lanes effort)
{
    const double corner = 0.1;
    const lw_lanes x = effort - 1.0;
    return 0.5 * (x + lw_lanes_sqrt(x * x + corner * corner));
}

// Middle of the sailor to windward of the centreline for an effort: out by what is not taken off.
LW_INLINE lw_lanes lw_effort_hike(const lw_craft *craft, lw_lanes effort)
{
    const lw_lanes out = effort - lw_effort_taken(effort);
    return craft->body_inboard + out * (craft->body_reach - craft->body_inboard);
}

#endif
