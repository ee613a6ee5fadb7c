// ventilated_foil.h - lift, drag and moment of a foil whose back stands in air, in lanes.
// SPDX-License-Identifier: MIT

#ifndef LW_VENTILATED_FOIL_H
#define LW_VENTILATED_FOIL_H

#include "foil/foil_force.h"

// Part of the theory's lift that a face of some thickness has: what [harwood-2016] measured of a
// strut, foil/ventilation/ventilated_strut.h.
#define LW_FACE_SHARE 0.75

// Positive part of x with a corner so wide.
LW_INLINE lw_lanes lw_face_positive(lw_lanes x, double corner)
{
    return 0.5 * (x + lw_lanes_sqrt(x * x + corner * corner));
}

// Angle of a plate with a cavity without end that lifts like `angle` does with this cavity.
LW_INLINE lw_lanes lw_face_angle(lw_lanes angle, lw_lanes number)
{
    const lw_lanes q = number / (2.0 + number);
    const lw_lanes p = lw_face_positive(angle / q, 0.1);  // [judged] corner
    const lw_lanes longer = 2.0 * (1.0 + p * p) / (p + lw_lanes_sqrt(1.0 + p * p));
    const lw_lanes wet = 4.0 * p, ratio = wet / longer, square = ratio * ratio;
    return q * wet / lw_lanes_sqrt(lw_lanes_sqrt(1.0 + square * square));  // the lesser, rounded
}

// C / x of a face of slope a at the plate's angle x: face.h.
LW_INLINE lw_lanes lw_face_rise(lw_lanes a, lw_lanes k, lw_lanes x)
{
    const lw_lanes all = a * x, half = 1.0 + a * k + 0.5 * all;
    return 2.0 * a / (half + lw_lanes_sqrt(half * half - 2.0 * a * k * all));
}

// Force on the face of a foil, square to it, or on its back where the flow meets that, nose and
// all; the moment about the quarter chord.
LW_INLINE lw_foil_load lw_foil_ventilated_force(const lw_foil_craft *foil, double density,
                                                lw_foil_flow flow)
{
    const lw_lanes u = flow.forward, w = flow.upward, V_2 = u * u + w * w;
    const lw_interval at_depth = lw_interval_of(0.0, LW_DEPTH_STEP, flow.depth);
    const lw_lanes depth = lw_lanes_max(flow.depth, lw_all(0.02));
    const lw_lanes sigma = 2.0 * LW_GRAVITY * depth / V_2;
    const lw_lanes flap = foil->flap_lift * flow.flap;
    const lw_lanes alpha = lw_lanes_atan(-w / u) + flow.incidence;
    const lw_lanes by_flap = lw_curve_read(&foil->face_flap, at_depth) * flap;
    const lw_lanes turned = alpha + by_flap, back = -lw_lanes_max(alpha, turned);
    const lw_lanes a = LW_FACE_SHARE * lw_curve_read(&foil->face, at_depth);
    const lw_lanes k = lw_curve_read(&foil->induced, at_depth);
    const lw_lanes x = lw_face_angle(turned, sigma), y = lw_face_angle(back, sigma);
    const lw_lanes rise = lw_face_rise(a, k, x);
    const lw_lanes C_L = rise * x - lw_face_rise(a, k, y) * y;

    const lw_lanes slant = alpha + lw_curve_read(&foil->face_drag, at_depth) * flap;
    const lw_lanes C_D = rise * slant * slant + 0.5 * lw_curve_read(&foil->profile, flow.at_speed);
    const lw_lanes centre = lw_curve_read(&foil->face_centre, at_depth);
    const lw_lanes hinged = lw_curve_read(&foil->face_flap_centre, at_depth);
    const lw_lanes C_M = (0.25 - centre) * C_L + (centre - hinged) * rise * by_flap;

    const lw_lanes q = 0.5 * density * V_2;
    const lw_lanes qS = q * foil->area * lw_foil_wetted(foil, flow.depth, flow.tip_rise);
    return (lw_foil_load){.lift = qS * C_L,
                          .drag = qS * C_D + q * foil->junction_drag,
                          .moment = qS * foil->chord * C_M,
                          .coefficient = C_L,
                          .face = alpha + by_flap};
}

// A load that is as much of the way from wet to ventilated as the flow tells. What it asked of the
// section stays.
LW_INLINE void lw_foil_ventilate(const lw_foil_craft *foil, double density, lw_foil_flow flow,
                                 lw_foil_load *load)
{
    const lw_mask some = flow.ventilated > 0.0;
    if (!lw_any(some)) return;
    const lw_foil_load dry = lw_foil_ventilated_force(foil, density, flow);
    const lw_lanes part = lw_select(some, flow.ventilated, lw_all(0.0));
    load->lift += part * (dry.lift - load->lift);
    load->drag += part * (dry.drag - load->drag);
    load->moment += part * (dry.moment - load->moment);
    load->coefficient += part * (dry.coefficient - load->coefficient);
    load->face = lw_select(some, dry.face, lw_all(0.0));
}

#endif
