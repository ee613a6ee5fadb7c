// strut_limits.h - ventilated struts: side force, and the angles between which they stay so.
// SPDX-License-Identifier: MIT

#ifndef LW_STRUT_LIMITS_H
#define LW_STRUT_LIMITS_H

#include <stdbool.h>

#include "solve/lanes.h"

// Ventilation: air runs down a strut from the surface, and a part of its side force is lost.

// Cavitation number of air at the surface's own pressure: suction beyond it can hold a cavity open.
//
//     sigma_c = 2 g h / V^2 = 2 / Fn_h^2                              [young-2017]
double lw_ventilation_number(double depth, double speed);

// Angles of a strut to the flow [rad]: above `forms` air runs down a wetted strut, below `stays` a
// ventilated one is wetted again. Between them it is as it was. `least` and `most` are the scatter.
typedef struct lw_ventilation {
    double forms, forms_least, forms_most;
    double stays, stays_least, stays_most;
} lw_ventilation;

// Both angles of a strut `aspect` chords deep, at the cavitation number of its foot.
//
//     forms   14.5 deg, gathering way or disturbed, at any speed      [harwood-2016]
//             least: `stays`, with air let in by a wave, weed or spray; most: 25 deg, turned slowly
//             and undisturbed, where 20 to more than 25 was measured  [aguiar-ferreira-2026]
//     stays   where the ventilated coefficient falls to that of washout; seen at 4 to 6 deg at
//             Fn_h 2.5, one chord deep, where this gives 4.9: the scatter of -20 and +30 %
// [judged]
//
// A cavity that cannot stay does not form: forms >= stays.
// Holds for    sections that stall near 14 deg; measured 0.5 to 1.5 chords deep, Fn_h 1 to 4.5.
// Leaves out   cavities that reach down a part of the strut only; rake; the foil below.
lw_ventilation lw_ventilation_of(double aspect, double number);

// The same in two parts: the angle `stays` of some struts side by side, and all of them from it.
void lw_ventilation_stays(const lw_lanes *aspect, const lw_lanes *number, lw_lanes *stays);
lw_ventilation lw_ventilation_at(double stays);

// Whether a strut is ventilated now: the hysteresis of the two angles.
bool lw_ventilated_next(const lw_ventilation *limit, bool ventilated, double angle);

// Side-force coefficient of a ventilated strut, on its wetted area; odd in the angle.
//
//     C = 0.75 C_p + sigma_c / 2 * alpha / sqrt(alpha^2 + alpha_1^2),  alpha_1 = 20 deg
//     C_p^2 / pi + C_p / a = alpha,  a = pi/2 A / (1/2 + sqrt(A^2 + 1/4))
//
// and never more than wetted. C_p: a plate with its back in air [rayleigh-1876], (pi/2) alpha when
// small, with the downwash of [helmbold]. Second term: the water's own pressure, which air does not
// balance; 1 / Fn_h^2 at most. 0.75 and 20 deg are our fit to 64 measured points [harwood-2016],
// 1 and 1.5 chords deep at Fn_h 1.5 to 3.5: 9 % rms, at worst 0.06 and 31 % (at 5 deg).
// The force stands square to the chord: drag is C tan(alpha), and friction on one side.
// Holds for    to 30 deg. At half a chord it is up to 40 % low.
double lw_ventilated_side(double aspect, double number, double angle);

// Coefficient at which a ventilated strut is wetted again: the jet at the cavity's end turns
// forward.
//
//     Fn_h^2 C = (pi/4)^2 (pi/2 A^4 - 4 A^3 + 18 A^2 + 8 A)
//                / (2.31 (pi A^3 - 2 pi A^2 + 3 pi A + 4))            [harwood-2016] eq. 4.5
//
// An older boundary, above which cavities were stable, is 5 / Fn_h^2 and Fn_h > 3
// [breslin-skalak-1959]; it lies above all data.
double lw_ventilation_washout(double aspect, double number);

#endif
