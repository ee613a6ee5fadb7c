// sail.h - published sail coefficients over the apparent wind angle, and induced drag.
// SPDX-License-Identifier: MIT

#ifndef LW_SAIL_H
#define LW_SAIL_H

typedef enum lw_sail_kind {
    LW_SAIL_HAZEN_MAIN,  // mainsail of [hazen-1980]
    LW_SAIL_HIGH_LIFT,   // mainsail of [orc-2013] ("main high"), fitted to full-scale fleets
} lw_sail_kind;

typedef struct lw_sail_coefficients {
    double lift;  // C_L  [-]  best trim, full power
    double drag;  // C_Dp [-]  without induced drag
} lw_sail_coefficients;

// Coefficients at an apparent wind angle [rad], on the sail's own area.
//
// Between the published angles a cubic that is smooth and never overshoots [fritsch-butland];
// the end values beyond them. HAZEN starts at 27 deg: below it the lift falls to nothing at 0
// and the drag stays, which is ours [judged].
// Holds for    sails of slow boats with soft battens. A foiling boat sails at 15 to 40 deg with a
//              flatter, fully battened sail: there treat the sail as a wing.
lw_sail_coefficients lw_sail_coefficients_at(lw_sail_kind kind, double angle);

// Induced and lift-dependent drag.
//
//     C_Di = C_L^2 (1 / (pi A) + 0.005)                               [hazen-1980]
//
// A: effective aspect ratio, gap at the deck counted. 0.005: growth of section drag with lift.
double lw_sail_induced_drag(double lift, double aspect);

#endif
