// hull_force.h - buoyancy, friction and wave drag of the hull from rest to lift-off.
// SPDX-License-Identifier: MIT

#ifndef LW_HULL_FORCE_H
#define LW_HULL_FORCE_H

#include "lullwise/craft.h"
#include "solve/curve.h"
#include "solve/lanes.h"

typedef struct lw_hull_load {
    lw_lanes buoyancy;      // [N] up
    lw_lanes pitch_moment;  // [N m] bow up, about the main foil's station
    lw_lanes roll_moment;   // [N m] against windward heel, for each sin(heel)
    lw_lanes drag;          // [N]
    lw_lanes immersed;      // [m^3]
} lw_hull_load;

// Forces on a hull whose bottom at the main foil's station stands `height` above the water.
//
//     section area = B T^2 / (T + t_0)         V bottom, then wall-sided; fits C_B and C_WP
//     R_f = 1/2 rho V^2 S (1 + k) C_f          [ittc-57]
//     R_w = thin-ship integral of a hull of the same L, B, T, scaled by volume^2  [michell-1898]
//     R_t = 1/2 rho V^2 A_t 0.2 (1 - 0.2 F_t),  F_t = V / sqrt(2 g A_t / (2 B_t))  [holtrop-1982]
//
// Holds for    pitch within 8 deg; speed from rest to lift-off; the last term while F_t < 5.
// Leaves out   planing lift, rocker, spray, side force.
LW_INLINE lw_hull_load lw_hull_force(const lw_hull_craft *hull, double density, lw_lanes speed,
                                     lw_knot at_speed, lw_lanes height, lw_lanes sin_pitch)
{
    const double t_0 = hull->flare;
    lw_lanes volume = lw_all(0.0), moment = volume, stiffness = volume, wetted = volume;
    if (!lw_any(height < hull->reach * lw_lanes_abs(sin_pitch))) {  // all clear of the water
        return (lw_hull_load){volume, volume, volume, volume, volume};
    }

    for (int i = 0; i < LW_HULL_STRIPS; i++) {
        const double B = hull->width[i], dx = hull->run[i];
        const lw_lanes T = lw_lanes_max(-height - hull->x[i] * sin_pitch, lw_all(0.0));
        const lw_lanes fullness = T / (T + t_0);
        const lw_lanes part = dx * B * T * fullness;
        volume += part;
        moment += hull->x[i] * part;
        stiffness += dx * (B * B * B / 12.0) * fullness;
        wetted += dx * (B * fullness + 2.0 * T);
    }

    const lw_lanes q = 0.5 * density * speed * speed;
    const lw_lanes friction = q * wetted * lw_curve_read(&hull->friction, at_speed);
    const lw_lanes wave = q * volume * volume * lw_curve_read(&hull->wave, at_speed);

    // what is left of the transom in the water drags
    const lw_lanes T_t = lw_lanes_max(-height - hull->transom_x * sin_pitch, lw_all(1e-9));
    const lw_lanes A_t = hull->transom_beam * T_t * T_t / (T_t + t_0);
    const lw_lanes F_t = speed / lw_lanes_sqrt(LW_GRAVITY / hull->transom_beam * A_t);
    const lw_lanes transom = q * A_t * 0.2 * lw_lanes_max(1.0 - 0.2 * F_t, lw_all(0.0));

    const double weight = density * LW_GRAVITY;
    return (lw_hull_load){.buoyancy = weight * volume,
                          .pitch_moment = weight * moment,
                          .roll_moment = weight * stiffness,
                          .drag = friction + wave + transom,
                          .immersed = volume};
}

#endif
