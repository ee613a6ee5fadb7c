// foil_force.h - lift, drag and moment of the main or rudder foil below the surface.
// SPDX-License-Identifier: MIT

#ifndef LW_FOIL_FORCE_H
#define LW_FOIL_FORCE_H

#include "lullwise/craft.h"
#include "solve/curve.h"
#include "solve/elementary.h"
#include "solve/lanes.h"

typedef struct lw_foil_flow {
    lw_lanes forward, upward;  // velocity of the foil through the water, in its own plane [m/s]
    lw_knot at_speed;          // ln(V) among the knots of the drag curves
    lw_lanes incidence;        // chord line to the boat's level line, less the downwash [rad]
    lw_lanes flap;             // trailing edge down positive [rad]
    lw_lanes depth;            // of the middle [m]
    lw_lanes tip_rise;         // of the higher tip above the middle [m]
} lw_foil_flow;

typedef struct lw_foil_load {
    lw_lanes lift, drag, moment;  // [N], [N], [N m] bow up positive
    lw_lanes coefficient;         // C_L
    lw_lanes load_share;          // C_L asked / greatest C_L: 1 at stall
    lw_lanes angle;               // from the zero-lift angle, flap counted [rad]
} lw_foil_load;

// Growing without bound in, held between -1 and 1 out, with rounded corners.  [judged] 0.3 % below
// x at 0.6, 1.7 % at 0.9 and 4.4 % at 1: the lift curve bends before the stall.
LW_INLINE lw_lanes lw_foil_stall(lw_lanes x)
{
    const double corner_2 = 0.01, half = 0.50249378105604451;  // slope 1 at x = 0
    const lw_lanes up = x + 1.0, down = x - 1.0;
    return half * (lw_lanes_sqrt(up * up + corner_2) - lw_lanes_sqrt(down * down + corner_2));
}

// Lift angle that a flap angle is worth, as a part of thin-aerofoil theory.
//
//     eta = 0.86 / (1 + (delta / 41 deg)^2)                 [mccormick] [datcom-6.1.1]
//
// Holds for    sealed plain flaps up to 30 deg; a fit to values from memory, within 0.07.
LW_INLINE lw_lanes lw_foil_flap_effect(lw_lanes flap)
{
    const lw_lanes x = flap * (1.0 / (41.0 * LW_DEG));
    return 0.86 / (1.0 + x * x);
}

// Part of the span below the surface, from 0 to 1, smooth as the higher tip comes out.
// [judged] A quarter chord is taken on either side for the pile-up and the hollow.
LW_INLINE lw_lanes lw_foil_wetted(const lw_foil_craft *foil, lw_lanes depth, lw_lanes tip_rise)
{
    const double rim = 0.25 * foil->chord;
    const lw_lanes part = (depth + tip_rise + rim) / (2.0 * (tip_rise + rim));
    const lw_lanes x = lw_lanes_clamp(part, lw_all(0.0), lw_all(1.0));
    return x * x * (3.0 - 2.0 * x);
}

// Forces on a foil.
//
//     C_L = a(h) (alpha - alpha_0 + eta tau_f delta), bent at the stall
//     C_D = 2 C_f form + k (C_L - C_Li)^2 + flap + k_i(h) C_L^2
//
// The slope a and the induced drag k_i follow the depth h, as a lattice under the surface found them
// when the craft was prepared (boat/foil_curves.c).
// Holds for    U / sqrt(g h) above about 3; angles within 25 deg.
// Leaves out   the foil's own waves, unsteady lift, load shift along a heeled span.
LW_INLINE lw_foil_load lw_foil_force(const lw_foil_craft *foil, double density, lw_foil_flow flow)
{
    const double c = foil->chord;
    const lw_lanes u = flow.forward, w = flow.upward;
    const lw_lanes q = 0.5 * density * (u * u + w * w);

    // the surface above
    const lw_knot at_depth = lw_knot_of(0.0, LW_DEPTH_STEP, flow.depth);
    const lw_lanes a = lw_curve_read(&foil->slope, at_depth);
    const lw_lanes k_i = lw_curve_read(&foil->induced, at_depth);

    // lift, with the flap raising the angle and half as much the greatest lift  [judged]
    const lw_lanes eta = lw_foil_flap_effect(flow.flap);
    const lw_lanes from_flap = eta * foil->flap_lift * flow.flap;
    const lw_lanes alpha =
        lw_lanes_atan(-w / u) + flow.incidence - foil->zero_lift_angle + from_flap;
    const lw_lanes most =
        lw_lanes_max(foil->greatest_lift + 0.5 * a * from_flap, lw_all(0.4 * foil->greatest_lift));
    const lw_lanes share = a * alpha / most;
    const lw_lanes C_L = most * lw_foil_stall(share);

    // drag
    const double k = 0.008;  // growth of section drag from its least, per C_L^2  [judged]
    const lw_lanes off = C_L - foil->ideal_lift;
    const lw_lanes sin_2 = flow.flap * flow.flap;  // within 1 % of sin^2 below 10 deg
    const lw_lanes over = lw_lanes_max(lw_lanes_abs(share) - 0.9, lw_all(0.0));  // past the stall
    const lw_lanes C_D = lw_curve_read(&foil->profile, flow.at_speed) + k * off * off +
                         foil->flap_drag * sin_2 + k_i * C_L * C_L + 0.5 * over * over;

    const lw_lanes qS = q * foil->area * lw_foil_wetted(foil, flow.depth, flow.tip_rise);
    const lw_lanes c_m = foil->moment + foil->flap_moment * eta * flow.flap;
    return (lw_foil_load){.lift = qS * C_L,
                          .drag = qS * C_D + q * foil->junction_drag,
                          .moment = qS * c * c_m,
                          .coefficient = C_L,
                          .load_share = share,
                          .angle = alpha};
}

#endif
