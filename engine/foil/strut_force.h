// strut_force.h - side force and drag of a strut that stands through the surface.
// SPDX-License-Identifier: MIT

#ifndef LW_STRUT_FORCE_H
#define LW_STRUT_FORCE_H

#include "lullwise/craft.h"
#include "solve/curve.h"
#include "solve/inverse.h"
#include "solve/lanes.h"

typedef struct lw_strut_flow {
    lw_lanes forward, across;  // velocity of the strut through the water, in its plane [m/s]
    lw_interval at_speed;      // ln of the boat's speed among the knots of the drag curves
    lw_lanes turn;             // of the section about the strut's axis, as leeway [rad]
    lw_lanes wet;              // up from the foil [m]
    lw_lanes spray;            // 0 the hull closes the surface, 1 pierced
    lw_lanes ventilated;       // 0 wet, 1 ventilated: foil/ventilation/ventilated_strut.h
} lw_strut_flow;

typedef struct lw_strut_load {
    lw_lanes side, drag;  // [N] across the flow to windward, and along it
    lw_lanes centre;      // of the side force above the foil [m]
    lw_lanes angle;       // to the flow [rad]
} lw_strut_load;

// Lift slope of a strut, on its wetted area.
//
//     a = 2 pi A / (2 + sqrt(A^2 + 4)),   A = E s / c,   E s = min(2 s, s + 0.95 b_f)
//
// [helmbold] with the surface as an image of opposite sign; gives 1.483 at s/c = 1 without a foil,
// where 1.48-1.53 was measured [harwood-2016]. The foil is an end plate [hoerner-fdd].
LW_INLINE lw_lanes lw_strut_aspect(const lw_strut_craft *strut, lw_lanes wet)
{
    return (1.0 / strut->chord) * lw_lanes_min(wet + 0.95 * strut->foil_span, 2.0 * wet);
}

LW_INLINE lw_lanes lw_strut_slope(lw_lanes aspect)
{
    return 2.0 * LW_PI * aspect / (2.0 + lw_lanes_sqrt(aspect * aspect + 4.0));
}

LW_INLINE lw_lanes lw_strut_speed(const lw_strut_flow *flow)
{
    return lw_lanes_sqrt(flow->forward * flow->forward + flow->across * flow->across);
}

// Side force and drag of a strut.
//
// Holds for    attached flow; the side force is greatest, 0.73, at 10 to 12 deg on a deep strut,
// and
//              falls beyond, where a strut may ventilate.
// Leaves out   ventilation (a margin reports it), wave drag, the tilt that a pin gives the strut.
LW_INLINE lw_strut_load lw_strut_force(const lw_strut_craft *strut, double density,
                                       lw_strut_flow flow)
{
    const double most = 0.9;  // where the straight slope would end  [judged]
    const lw_lanes speed = lw_strut_speed(&flow), wet = flow.wet;
    const lw_lanes angle = lw_lanes_atan(flow.across / flow.forward) + flow.turn;
    const lw_lanes q = 0.5 * density * speed * speed;
    const lw_lanes s = lw_lanes_max(wet, lw_all(0.02));
    const lw_lanes A = lw_strut_aspect(strut, s);

    const lw_lanes induced = 2.0 / (2.0 + lw_lanes_sqrt(A * A + 4.0));  // slope / (pi A)
    const lw_lanes slope = LW_PI * A * induced;
    const lw_lanes x = (1.0 / most) * slope * angle, x_2 = x * x;
    const lw_lanes bent = angle / (1.0 + 0.25 * x_2 * x_2);
    const lw_lanes C_S = slope * bent;
    const lw_lanes C_D = lw_curve_read(&strut->profile, flow.at_speed) + C_S * induced * bent;

    const lw_lanes qS = q * strut->chord * lw_lanes_max(wet, lw_all(0.0));
    return (lw_strut_load){.side = qS * C_S,
                           .drag = qS * C_D + q * strut->spray_drag * flow.spray,
                           .centre = 0.42 * s,  // quarter ellipse: 4 / (3 pi) from the foil
                           .angle = angle};
}

#endif
