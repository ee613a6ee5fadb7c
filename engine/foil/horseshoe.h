// horseshoe.h - the flow about horseshoe vortices and about the far wake they leave.
// SPDX-License-Identifier: MIT
//
// All for unit circulation. The stream runs towards -x; so do the trailing legs. Circulation is
// positive when the vortex lifts along z: it runs from the port end to the starboard end.

#ifndef LW_HORSESHOE_H
#define LW_HORSESHOE_H

#include "lullwise/wing.h"
#include "solve/vector.h"

// Panels side by side, in the axes of the water.
typedef struct lw_panel_lanes {
    lw_vector port, starboard;  // ends of the bound vortex
} lw_panel_lanes;

LW_INLINE lw_vector lw_point_lanes(lw_wing_point at)
{
    return (lw_vector){lw_all(at.x), lw_all(at.y), lw_all(at.z)};
}

LW_INLINE lw_panel_lanes lw_panel_in_all(const lw_wing_panel *panel)
{
    return (lw_panel_lanes){lw_point_lanes(panel->port), lw_point_lanes(panel->starboard)};
}

// Flow of horseshoes at points: each lane of its own.
void lw_horseshoe_flow(const lw_panel_lanes *panel, const lw_vector *at, lw_vector *flow);

LW_INLINE lw_vector lw_between(lw_vector from, lw_vector to)
{
    return (lw_vector){to.x - from.x, to.y - from.y, to.z - from.z};
}

LW_INLINE lw_vector lw_vector_sum(lw_vector a, lw_lanes k, lw_vector b)  // a + k b
{
    return (lw_vector){a.x + k * b.x, a.y + k * b.y, a.z + k * b.z};
}

// Far behind, where the legs have no beginning: v = (0, r_z, -r_y) / (2 pi r^2) each.
LW_INLINE lw_vector lw_wake_flow(const lw_panel_lanes *panel, lw_vector at)
{
    lw_vector sum = lw_vector_zero();
    for (int side = -1; side <= 1; side += 2) {
        const lw_vector r = lw_between(side < 0 ? panel->port : panel->starboard, at);
        const lw_lanes across = r.y * r.y + r.z * r.z;
        const lw_lanes k = lw_select(across > 0.0, side / (2.0 * LW_PI * across), lw_all(0.0));
        sum.y += k * r.z, sum.z -= k * r.y;
    }
    return sum;
}

// The image above the surface keeps the pressure there: its potential is that of the vortex,
// mirrored, with the other sign, so the flow at a point follows from that at the mirrored point.
LW_INLINE lw_vector lw_mirrored(lw_vector at) { return (lw_vector){at.x, at.y, -at.z}; }

LW_INLINE lw_vector lw_image_flow(lw_vector at_mirrored)
{
    return (lw_vector){-at_mirrored.x, -at_mirrored.y, at_mirrored.z};
}

#endif
