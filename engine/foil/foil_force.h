// foil_force.h - lift, drag and moment of the main or rudder foil below the surface.
// SPDX-License-Identifier: MIT

#ifndef LW_FOIL_FORCE_H
#define LW_FOIL_FORCE_H

#include "foil/polar_read.h"
#include "lullwise/craft.h"
#include "solve/curve.h"
#include "solve/elementary.h"
#include "solve/lanes.h"

typedef struct lw_foil_flow {
    lw_lanes forward, upward;  // velocity of the foil through the water, in its own plane [m/s]
    lw_lanes log_speed;        // ln V
    lw_interval at_speed;      // the same among the knots of the drag curves
    lw_lanes incidence;        // chord line to the boat's level line, less the downwash [rad]
    lw_lanes flap;             // trailing edge down positive [rad]
    lw_lanes depth;            // of the middle [m]
    lw_lanes tip_rise;         // of the higher tip above the middle [m]
    lw_lanes ventilated;       // 0 wet, 1 ventilated: foil/ventilation/ventilated_foil.h
} lw_foil_flow;

typedef struct lw_foil_load {
    lw_lanes lift, drag, moment;  // [N], [N], [N m] bow up positive
    lw_lanes coefficient;         // C_L
    lw_lanes load_share;          // C_L asked / greatest C_L: 1 at stall
    lw_lanes angle;               // from the zero-lift angle, flap counted [rad]
    lw_lanes face;  // of the face to the flow, flap counted; only with air on it [rad]
} lw_foil_load;

#define LW_TIP_BEND 0.06

// x from 0 to 1, level where it begins at 0.
LW_INLINE lw_lanes lw_foil_bend_in(lw_lanes x)
{
    return (1.0 + LW_TIP_BEND) * x * x / (x + LW_TIP_BEND);
}

// Lift that is left as the higher tip comes near the surface and out of it, from 0 to 1: the part
// of the span below it, level at both ends. A third of a chord counts as wet above the surface, for
// the pile-up and the hollow. Both numbers so that it lifts as a lattice of what is left below the
// surface does (test/test_craft.c).
LW_INLINE lw_lanes lw_foil_wetted(const lw_foil_craft *foil, lw_lanes depth, lw_lanes tip_rise)
{
    const double rim = foil->chord / 3.0;
    const lw_lanes part = (depth + tip_rise + rim) / (2.0 * (tip_rise + rim));
    const lw_lanes dry = lw_foil_bend_in(1.0 - lw_lanes_clamp(part, lw_all(0.0), lw_all(1.0)));
    return lw_foil_bend_in(1.0 - dry);
}

// Forces on a foil.
//
//     C_L = most s(a(h) (alpha - alpha_0 + t_f E(delta)) / most)      s: polar_read.h
//     C_D = c_d(C_L, delta, Re) + k_i(h) C_L^2
//
// The slope a and the induced drag k_i follow the depth h, as a lattice under the surface found
// them when the craft was prepared (boat/foil_curves.c); E, c_d, the moment and the most lift of
// the section are those of its boundary layer (lullwise/polar.h).
// Holds for    U / sqrt(g h) above about 3; angles within 25 deg.
// Leaves out   the foil's own waves, unsteady lift, the load's middle off the foil's once a tip is
//              out.
LW_INLINE lw_foil_load lw_foil_force(const lw_foil_craft *foil, double density, lw_foil_flow flow)
{
    const lw_polar *polar = &foil->polar;
    const lw_lanes u = flow.forward, w = flow.upward;
    const lw_lanes q = 0.5 * density * (u * u + w * w);

    // the surface above, and the speed
    const lw_interval at_depth = lw_interval_of(0.0, LW_DEPTH_STEP, flow.depth);
    const lw_lanes r = lw_polar_speed(flow.log_speed + foil->log_re);
    const lw_lanes a = lw_curve_read(&foil->slope, at_depth) * (1.0 + polar->slope_growth * r);
    const lw_lanes k_i = lw_curve_read(&foil->induced, at_depth);

    // lift
    const lw_polar_flap flap = lw_polar_flap_at(polar, flow.flap);
    const lw_lanes alpha = lw_lanes_atan(-w / u) + flow.incidence - foil->zero_lift_angle +
                           foil->flap_lift * flap.worth;
    const lw_lanes most = foil->span_share * lw_polar_most(polar, &flap, alpha, r);
    const lw_lanes x = a * alpha / most;
    const lw_lanes C_L = most * lw_polar_bend(polar, x);

    // drag
    const lw_lanes y = lw_polar_beyond(polar, &flap, C_L);
    const lw_lanes share = (1.0 / polar->stall_share) * x;
    const lw_lanes over = lw_lanes_max(lw_lanes_abs(share) - 1.0, lw_all(0.0));  // past the stall
    const lw_lanes C_D =
        lw_curve_read(&foil->profile, flow.at_speed) * lw_polar_drag(polar, &flap, y, r) +
        k_i * C_L * C_L + 0.5 * over * over;

    const lw_lanes qS = q * foil->area * lw_foil_wetted(foil, flow.depth, flow.tip_rise);
    return (lw_foil_load){.lift = qS * C_L,
                          .drag = qS * C_D + q * foil->junction_drag,
                          .moment = qS * foil->chord * lw_polar_moment(polar, &flap, y),
                          .coefficient = C_L,
                          .load_share = share,
                          .angle = alpha};
}

// Turning rolls a foil's tips up and down through the water.
//
//     M = -1/2 rho u p S b^2 / 16 a (1 + x) / (1 + 2 x),  x = 2 / A      [glauert-1926]
//
// of an elliptic foil, whose slope is a = 2 pi / (1 + x).
LW_INLINE lw_lanes lw_foil_roll(const lw_foil_craft *foil, double density, lw_lanes forward,
                                lw_lanes spin)
{
    const double x = 2.0 * foil->area / (foil->span * foil->span);
    const double a = foil->slope.value[LW_CURVE_KNOTS / 2] * (1.0 + x) / (1.0 + 2.0 * x);
    return -(density / 32.0 * foil->area * foil->span * foil->span * a) * forward * spin;
}

// Lowest pressure coefficient on the most loaded part of the span.
LW_INLINE lw_lanes lw_foil_least_pressure(const lw_foil_craft *foil, lw_lanes C_L, lw_lanes delta)
{
    const lw_polar *polar = &foil->polar;
    const lw_polar_flap flap = lw_polar_flap_at(polar, delta);
    const lw_lanes c_l = (1.0 / foil->span_share) * C_L;
    return -lw_polar_suction(polar, &flap, lw_polar_beyond(polar, &flap, c_l));
}

#endif
