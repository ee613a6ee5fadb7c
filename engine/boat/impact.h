// impact.h - a hull that comes down on the water, and a bow that goes under.
// SPDX-License-Identifier: MIT

#ifndef LW_IMPACT_H
#define LW_IMPACT_H

#include "boat/loads.h"

// Water on a hull that comes down on it, and on a bow under it.
LW_INLINE void lw_add_impact(const lw_craft *craft, lw_loads *loads, lw_sum *sum)
{
    const lw_inflow *in = &loads->inflow;
    const double rho = craft->medium.water_density;
    const lw_hull_craft *hull = &craft->hull;
    const lw_lanes zero = lw_all(0.0), bow_down = in->spin.y;
    const lw_hull_slap slap = lw_hull_slap_of(hull, rho, in->hull, in->through.z, bow_down);
    sum->force.z += slap.force;
    sum->moment.y -= slap.moment;
    const lw_lanes d = loads->hull.stem;
    const lw_vector at = {lw_all(hull->stem_x), zero, craft->main_strut.length + 0.5 * d};
    const lw_lanes bow = -lw_hull_bow_drag(hull, rho, d, in->through.x + bow_down * at.z);
    lw_sum_add(sum, at, (lw_vector){bow, zero, zero});
    loads->slap = slap.force, loads->bow_drag = bow;
}

#endif
