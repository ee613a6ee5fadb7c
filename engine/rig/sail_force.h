// sail_force.h - drive, side force and centre of effort of the sail, full or with power taken off.
// SPDX-License-Identifier: MIT

#ifndef LW_SAIL_FORCE_H
#define LW_SAIL_FORCE_H

#include "lullwise/craft.h"
#include "solve/curve.h"
#include "solve/elementary.h"
#include "solve/lanes.h"

// How the sail is set: power is taken off by flattening, then by twist, then by letting it luff.
typedef struct lw_sail_set {
    lw_lanes power;  // C_L / C_L full
    lw_lanes twist;  // a: second harmonic of the span load / first
    lw_lanes luff;   // 0 drawing, 1 flagging
} lw_sail_set;

// Set of the sail with `taken` off: 0 full, 1 - F flattened, 1 twisted, beyond 1 luffing.
LW_INLINE lw_sail_set lw_sail_taken(const lw_sail_craft *sail, lw_lanes taken)
{
    const double F = sail->flattest;
    const lw_lanes zero = lw_all(0.0), one = lw_all(1.0);
    const lw_lanes off = lw_lanes_max(taken, zero);
    const lw_lanes luffing = lw_lanes_clamp(off - 1.0, zero, one);
    const lw_lanes twist = lw_lanes_clamp((off - (1.0 - F)) * (1.0 / F), zero, one);
    const lw_lanes flat = lw_lanes_max(1.0 - off, lw_all(F));
    return (lw_sail_set){
        .power = flat * (1.0 - 0.95 * luffing), .twist = sail->most_twist * twist, .luff = luffing};
}

typedef struct lw_sail_load {
    lw_lanes along, across;  // [N] forward and to leeward, in the boat
    lw_lanes height;         // of the centre of effort above the main foil [m]
} lw_sail_load;

// Force of the apparent wind (`a_x` aft negative, `a_y` to leeward positive) on the sail.
//
//     C_D = C_Dp + C_D0 + C_L^2 (1 + 2 a^2) (1 / (pi A_e) + 0.005)      [hazen-1980]
//     z_CE = z_CE0 - (P / 4) a                                          [glauert-1926]
//
// Twist as the second harmonic of the span load: it lowers the centre without losing lift, and
// costs induced drag. A sail that flags keeps a tenth of the table's drag  [judged].
// Holds for    attached flow, apparent wind 10 to 180 deg; heel by its cosine (in a_y).
// Leaves out   mast bend, the gap's change with heel, unsteady flow.
LW_INLINE lw_sail_load lw_sail_force(const lw_sail_craft *sail, double density, lw_lanes a_x,
                                     lw_lanes a_y, lw_sail_set set)
{
    const lw_lanes speed = lw_lanes_sqrt(a_x * a_x + a_y * a_y);
    const lw_lanes angle = lw_lanes_atan2(a_y, -a_x);
    const lw_lanes a = set.twist;

    const lw_lanes C_L = set.power * lw_curve_at(&sail->lift, angle);
    const lw_lanes table = (1.0 - 0.9 * set.luff) * lw_curve_at(&sail->drag, angle);
    const lw_lanes C_D =
        table + sail->profile_drag + C_L * C_L * (1.0 + 2.0 * a * a) * sail->induced;

    const lw_lanes qA = 0.5 * density * sail->area * speed;  // times a_x, a_y: the unit vector
    return (lw_sail_load){.along = qA * (C_L * a_y + C_D * a_x),
                          .across = qA * (C_D * a_y - C_L * a_x),
                          .height = sail->centre_height - 0.25 * sail->luff * a};
}

#endif
