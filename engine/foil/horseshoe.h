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

LW_INLINE lw_vector lw_between(lw_vector from, lw_vector to)
{
    return (lw_vector){to.x - from.x, to.y - from.y, to.z - from.z};
}

LW_INLINE lw_lanes lw_dot(lw_vector a, lw_vector b) { return a.x * b.x + a.y * b.y + a.z * b.z; }

LW_INLINE lw_vector lw_vector_sum(lw_vector a, lw_lanes k, lw_vector b)  // a + k b
{
    return (lw_vector){a.x + k * b.x, a.y + k * b.y, a.z + k * b.z};
}

// Straight vortex from where r_1 begins to where r_2 begins, both ending at the point looked at.
//
//     v = r_1 x r_2 (1/|r_1| + 1/|r_2|) / (4 pi (|r_1||r_2| + r_1 . r_2))           Biot-Savart
//
// Nothing on the vortex's own line.
LW_INLINE lw_vector lw_segment_flow(lw_vector r_1, lw_vector r_2)
{
    const lw_vector cross = lw_cross(r_1, r_2);
    const lw_lanes l_1 = lw_lanes_sqrt(lw_dot(r_1, r_1)), l_2 = lw_lanes_sqrt(lw_dot(r_2, r_2));
    const lw_lanes product = l_1 * l_2, bottom = product * (product + lw_dot(r_1, r_2));
    const lw_mask is_off = lw_dot(cross, cross) > 1e-20 * product * product;
    const lw_lanes k = lw_select(is_off, (l_1 + l_2) / (4.0 * LW_PI * bottom), lw_all(0.0));
    return (lw_vector){k * cross.x, k * cross.y, k * cross.z};
}

// Leg from where r begins to far behind, the vortex running backward.
//
//     v = (0, r_z, -r_y) / (4 pi |r| (|r| + r_x)),  |r| + r_x = (r_y^2 + r_z^2) / (|r| - r_x)
LW_INLINE lw_vector lw_leg_flow(lw_vector r)
{
    const lw_lanes across = r.y * r.y + r.z * r.z, l = lw_lanes_sqrt(across + r.x * r.x);
    const lw_mask is_off = across > 1e-20 * l * l;
    const lw_lanes k = lw_select(is_off, (l - r.x) / (4.0 * LW_PI * l * across), lw_all(0.0));
    return (lw_vector){lw_all(0.0), k * r.z, -k * r.y};
}

LW_INLINE lw_vector lw_horseshoe_flow(const lw_panel_lanes *panel, lw_vector at)
{
    const lw_vector r_1 = lw_between(panel->port, at), r_2 = lw_between(panel->starboard, at);
    const lw_vector legs = lw_vector_sum(lw_leg_flow(r_2), lw_all(-1.0), lw_leg_flow(r_1));
    return lw_vector_sum(legs, lw_all(1.0), lw_segment_flow(r_1, r_2));
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
