// friction.h - friction lines: drag coefficient of one side of a smooth flat plate.
// SPDX-License-Identifier: MIT
//
// Each takes ln(Re), because a force knows ln(V) and adds the constant ln(l / nu). Below Re = 1000
// every line is held at its value there, so that a boat at rest has a finite coefficient.

#ifndef LW_FRICTION_H
#define LW_FRICTION_H

#include "solve/elementary.h"
#include "solve/lanes.h"

#define LW_FRICTION_LEAST 6.907755278982137  // ln(1000)
#define LW_LOG10_E        0.4342944819032518

LW_INLINE lw_lanes lw_friction_log10(lw_lanes log_re)
{
    return LW_LOG10_E * lw_lanes_max(log_re, lw_all(LW_FRICTION_LEAST));
}

// Correlation line of ship models, for the hull.
//
//     C_F = 0.075 / (lg Re - 2)^2                               [ittc-57]
//
// Holds for    Re above 1e5, turbulent from the bow. It holds some form effect: not a plate's own.
LW_INLINE lw_lanes lw_friction_ittc57(lw_lanes log_re)
{
    const lw_lanes x = lw_friction_log10(log_re) - 2.0;
    return 0.075 / (x * x);
}

// Laminar plate.
//
//     C_f = 1.328 / sqrt(Re)                                    [blasius-1908]
LW_INLINE lw_lanes lw_friction_blasius(lw_lanes log_re)
{
    return 1.328 * lw_lanes_exp(-0.5 * lw_lanes_max(log_re, lw_all(LW_FRICTION_LEAST)));
}

// Turbulent plate from its nose on.
//
//     C_f = 0.455 / (lg Re)^2.58                                [schlichting]
//
// Holds for    Re 1e5..1e9.
LW_INLINE lw_lanes lw_friction_schlichting(lw_lanes log_re)
{
    return 0.455 * lw_lanes_exp(-2.58 * lw_lanes_log(lw_friction_log10(log_re)));
}

// Plate that is laminar up to Re = 5e5 and turbulent beyond: foils and struts.
//
//     C_f = max(1.328 / sqrt(Re), 0.455 / (lg Re)^2.58 - 1700 / Re)        [schlichting]
//
// Holds for    a smooth surface in clear water; dirt or chop moves the transition forward.
LW_INLINE lw_lanes lw_friction_foil(lw_lanes log_re)
{
    const lw_lanes x = lw_lanes_max(log_re, lw_all(LW_FRICTION_LEAST));
    const lw_lanes turbulent = lw_friction_schlichting(x) - 1700.0 * lw_lanes_exp(-x);
    return lw_lanes_max(lw_friction_blasius(x), turbulent);
}

// Plate of infinite span, with no form effect in it.
//
//     C_F = 0.066 / (lg Re - 2.03)^2                            [hughes-1954]
LW_INLINE lw_lanes lw_friction_hughes(lw_lanes log_re)
{
    const lw_lanes x = lw_friction_log10(log_re) - 2.03;
    return 0.066 / (x * x);
}

// Mean line of turbulent plates, by six steps of Newton in y = 1 / sqrt(C_F).
//
//     0.242 / sqrt(C_F) = lg(Re C_F)                            [schoenherr-1932]
LW_INLINE lw_lanes lw_friction_schoenherr(lw_lanes log_re)
{
    const lw_lanes lg_re = lw_friction_log10(log_re);
    lw_lanes y = lw_all(16.0);
    for (int i = 0; i < 6; i++) {
        const lw_lanes miss = 0.242 * y - lg_re + 2.0 * LW_LOG10_E * lw_lanes_log(y);
        y -= miss / (0.242 + 2.0 * LW_LOG10_E / y);
    }
    return 1.0 / (y * y);
}

#endif
