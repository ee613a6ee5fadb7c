// horseshoe.h - the flow about horseshoe vortices and about the far wake they leave.
// SPDX-License-Identifier: MIT
//
// All for unit circulation. The stream runs towards -x; so do the trailing legs. Circulation is
// positive when the vortex lifts along z: it runs from the port end to the starboard end.

#ifndef LW_HORSESHOE_H
#define LW_HORSESHOE_H

#include <math.h>

#include "lullwise/wing.h"

typedef struct lw_space_vector {
    double x, y, z;
} lw_space_vector;

static inline lw_space_vector lw_space_between(lw_wing_point from, lw_wing_point to)
{
    return (lw_space_vector){to.x - from.x, to.y - from.y, to.z - from.z};
}

static inline double lw_space_dot(lw_space_vector a, lw_space_vector b)
{
    return a.x * b.x + a.y * b.y + a.z * b.z;
}

static inline lw_space_vector lw_space_cross(lw_space_vector a, lw_space_vector b)
{
    return (lw_space_vector){a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

static inline lw_space_vector lw_space_sum(lw_space_vector a, double k,
                                           lw_space_vector b)  // a + k b
{
    return (lw_space_vector){a.x + k * b.x, a.y + k * b.y, a.z + k * b.z};
}

// Straight vortex from where r_1 begins to where r_2 begins, both ending at the point looked at.
//
//     v = r_1 x r_2 (1/|r_1| + 1/|r_2|) / (4 pi (|r_1||r_2| + r_1 . r_2))           Biot-Savart
//
// Nothing on the vortex's own line.
static inline lw_space_vector lw_segment_flow(lw_space_vector r_1, lw_space_vector r_2)
{
    const lw_space_vector cross = lw_space_cross(r_1, r_2);
    const double l_1 = sqrt(lw_space_dot(r_1, r_1)), l_2 = sqrt(lw_space_dot(r_2, r_2));
    const double product = l_1 * l_2, bottom = product * (product + lw_space_dot(r_1, r_2));
    if (!(lw_space_dot(cross, cross) > 1e-20 * product * product)) return (lw_space_vector){0};
    const double k = (l_1 + l_2) / (4.0 * LW_PI * bottom);
    return (lw_space_vector){k * cross.x, k * cross.y, k * cross.z};
}

// Leg from where r begins to far behind, the vortex running backward.
//
//     v = (0, r_z, -r_y) / (4 pi |r| (|r| + r_x)),  |r| + r_x = (r_y^2 + r_z^2) / (|r| - r_x)
static inline lw_space_vector lw_leg_flow(lw_space_vector r)
{
    const double across = r.y * r.y + r.z * r.z, l = sqrt(across + r.x * r.x);
    if (!(across > 1e-20 * l * l)) return (lw_space_vector){0};
    const double k = (l - r.x) / (4.0 * LW_PI * l * across);
    return (lw_space_vector){0.0, k * r.z, -k * r.y};
}

static inline lw_space_vector lw_horseshoe_flow(const lw_wing_panel *panel, lw_wing_point at)
{
    const lw_space_vector r_1 = lw_space_between(panel->port, at);
    const lw_space_vector r_2 = lw_space_between(panel->starboard, at);
    const lw_space_vector legs = lw_space_sum(lw_leg_flow(r_2), -1.0, lw_leg_flow(r_1));
    return lw_space_sum(legs, 1.0, lw_segment_flow(r_1, r_2));
}

// Far behind, where the legs have no beginning: v = (0, r_z, -r_y) / (2 pi r^2) each.
static inline lw_space_vector lw_wake_flow(const lw_wing_panel *panel, lw_wing_point at)
{
    lw_space_vector sum = {0};
    for (int side = -1; side <= 1; side += 2) {
        const lw_space_vector r = lw_space_between(side < 0 ? panel->port : panel->starboard, at);
        const double across = r.y * r.y + r.z * r.z;
        if (!(across > 0.0)) continue;
        const double k = side / (2.0 * LW_PI * across);
        sum.y += k * r.z, sum.z -= k * r.y;
    }
    return sum;
}

// The image above the surface keeps the pressure there: its potential is that of the vortex,
// mirrored, with the other sign, so the flow at a point follows from that at the mirrored point.
static inline lw_wing_point lw_mirrored(lw_wing_point at)
{
    return (lw_wing_point){at.x, at.y, -at.z};
}

static inline lw_space_vector lw_image_flow(lw_space_vector at_mirrored)
{
    return (lw_space_vector){-at_mirrored.x, -at_mirrored.y, at_mirrored.z};
}

#endif
