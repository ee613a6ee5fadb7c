// ventilated_strut.h - side force of a strut whose back stands in air, in lanes.
// SPDX-License-Identifier: MIT

#ifndef LW_VENTILATED_STRUT_H
#define LW_VENTILATED_STRUT_H

#include "foil/strut_force.h"

// Side-force coefficient of a strut with its back in air: strut_limits.h.
LW_INLINE lw_lanes lw_strut_ventilated(lw_lanes aspect, lw_lanes number, lw_lanes angle)
{
    const double share = 0.75, level = 20.0 * LW_DEG;  // fitted [harwood-2016]
    const lw_lanes alpha = lw_lanes_abs(angle);
    const lw_lanes per_slope =
        (0.5 + lw_lanes_sqrt(aspect * aspect + 0.25)) / (0.5 * LW_PI * aspect);
    const lw_lanes plate =
        2.0 * alpha / (per_slope + lw_lanes_sqrt(per_slope * per_slope + (4.0 / LW_PI) * alpha));
    const lw_lanes head = 0.5 * number * alpha / lw_lanes_sqrt(alpha * alpha + level * level);
    const lw_lanes side = lw_lanes_min(share * plate + head, lw_strut_slope(aspect) * alpha);
    return lw_select(angle < 0.0, -side, side);
}

// Coefficient at which a ventilated strut is wetted again: strut_limits.h.
LW_INLINE lw_lanes lw_strut_washout(lw_lanes aspect, lw_lanes number)
{
    const double q = 0.25 * LW_PI;
    const lw_lanes A = aspect;
    const lw_lanes top = A * (8.0 + A * (18.0 + A * (0.5 * LW_PI * A - 4.0)));
    const lw_lanes bottom = 2.31 * (4.0 + LW_PI * A * (3.0 + A * (A - 2.0)));
    return 0.5 * q * q * number * top / bottom;
}

// Side force of a strut that is ventilated in part.
LW_INLINE void lw_strut_ventilate(const lw_strut_craft *strut, double density, lw_strut_flow flow,
                                  lw_strut_load *load)
{
    const lw_lanes part = flow.ventilated, wet = flow.wet;
    if (!lw_any(part > 0.0)) return;
    const lw_lanes speed = lw_strut_speed(&flow);
    const lw_lanes s = lw_lanes_max(wet, lw_all(0.02)), V_2 = speed * speed;
    const lw_lanes C =
        lw_strut_ventilated(s / strut->chord, 2.0 * LW_GRAVITY * s / V_2, load->angle);
    const lw_lanes dry = 0.5 * density * strut->chord * V_2 * wet * C;
    const lw_lanes mixed = load->side + part * (dry - load->side);
    load->side = lw_select(part > 0.0, mixed, load->side);
}

#endif
