// horseshoe.c - the flow about horseshoe vortices.
// SPDX-License-Identifier: MIT

#include "foil/horseshoe.h"

LW_INLINE lw_lanes dot(lw_vector a, lw_vector b) { return a.x * b.x + a.y * b.y + a.z * b.z; }

// Straight vortex from where r_1 begins to where r_2 begins, both ending at the point looked at.
//
//     v = r_1 x r_2 (1/|r_1| + 1/|r_2|) / (4 pi (|r_1||r_2| + r_1 . r_2))           Biot-Savart
//
// Nothing on the vortex's own line.
LW_INLINE lw_vector segment_flow(lw_vector r_1, lw_vector r_2)
{
    const lw_vector cross = lw_cross(r_1, r_2);
    const lw_lanes l_1 = lw_lanes_sqrt(dot(r_1, r_1)), l_2 = lw_lanes_sqrt(dot(r_2, r_2));
    const lw_lanes product = l_1 * l_2, bottom = product * (product + dot(r_1, r_2));
    const lw_mask is_off = dot(cross, cross) > 1e-20 * product * product;
    const lw_lanes k = lw_select(is_off, (l_1 + l_2) / (4.0 * LW_PI * bottom), lw_all(0.0));
    return (lw_vector){k * cross.x, k * cross.y, k * cross.z};
}

// Leg from where r begins to far behind, the vortex running backward.
//
//     v = (0, r_z, -r_y) / (4 pi |r| (|r| + r_x)),  |r| + r_x = (r_y^2 + r_z^2) / (|r| - r_x)
LW_INLINE lw_vector leg_flow(lw_vector r)
{
    const lw_lanes across = r.y * r.y + r.z * r.z, l = lw_lanes_sqrt(across + r.x * r.x);
    const lw_mask is_off = across > 1e-20 * l * l;
    const lw_lanes k = lw_select(is_off, (l - r.x) / (4.0 * LW_PI * l * across), lw_all(0.0));
    return (lw_vector){lw_all(0.0), k * r.z, -k * r.y};
}

LW_CLONES
void lw_horseshoe_flow(const lw_panel_lanes *panel, const lw_vector *at, lw_vector *flow)
{
    const lw_vector r_1 = lw_between(panel->port, *at), r_2 = lw_between(panel->starboard, *at);
    const lw_vector legs = lw_vector_sum(leg_flow(r_2), lw_all(-1.0), leg_flow(r_1));
    *flow = lw_vector_sum(legs, lw_all(1.0), segment_flow(r_1, r_2));
}
