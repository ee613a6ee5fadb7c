// section.h - foil sections: mean lines, flaps, lift slope, drag, lowest pressure, cavitation.
// SPDX-License-Identifier: MIT

#ifndef LW_SECTION_H
#define LW_SECTION_H

#include "lullwise/medium.h"

// A mean line by thin-aerofoil theory.
typedef struct lw_mean_line {
    double zero_lift_angle;  // alpha_0 [rad]
    double moment;           // c_m0    [-]    about the quarter chord, bow up positive
    double ideal_angle;      // alpha_i [rad]  flow meets the nose without a suction peak
    double ideal_lift;       // c_li    [-]    lift there
} lw_mean_line;

//     alpha_0 = -1/pi int z' (cos t - 1) dt          alpha_i = 1/pi int z' dt
//     c_m0 = -pi/4 (A_1 - A_2)                       c_li = pi A_1
//     A_n = 2/pi int z' cos(n t) dt,   x = (1 - cos t) / 2,  t from 0 to pi       [glauert-1926]
//
// z'(x): slope of the mean line. The integrals are done numerically, within 1e-6.
// Holds for    thin sections, small camber, attached flow.
// Leaves out   thickness (zero-lift angle 3 % more negative at 12 %) and the boundary layer
//              (5 to 10 % less negative).

// Four-digit line: greatest camber m at x = p, as parts of the chord.
lw_mean_line lw_mean_line_four_digit(double m, double p);

// Five-digit line with k_1 and r of its table; the 230 line: k_1 15.957, r 0.2025.
lw_mean_line lw_mean_line_five_digit(double k_1, double r);

// a-series line: load even from the nose to x = a, then falling straight to nothing.   [naca-824]
// Holds for    a 0..1.
lw_mean_line lw_mean_line_a(double a, double ideal_lift);

// A plain flap by thin-aerofoil theory.
typedef struct lw_flap {
    double angle_share;  // tau [-]      angle of the whole section that a flap angle is worth
    double lift;         // a_2 [1/rad]  lift coefficient per flap angle: 2 pi tau
    double moment;       // m   [1/rad]  quarter-chord moment coefficient per flap angle
} lw_flap;

//     cos phi = 2 E - 1,   a_2 = 2 (pi - phi + sin phi),   m = -1/2 sin phi (1 - cos phi)
//                                                                               [glauert-flap]
// E: flap chord / chord, 0..1; 0 is no flap.
// Holds for    small angles, sealed gap.
// Leaves out   the boundary layer: about 0.86 of it is found, less beyond 10 deg.
lw_flap lw_flap_of(double chord_part);

// Lift angle that a flap angle is worth, as a part of thin-aerofoil theory.
//
//     eta = 0.86 / (1 + (delta / 41 deg)^2)                 [mccormick] [datcom-6.1.1]
//
// Holds for    sealed plain flaps up to 30 deg; a fit to values from memory, within 0.07.
double lw_flap_effect(double angle);

// Lift slope of a section [1/rad] in a perfect fluid.
//
//     a_0 = 2 pi (1 + 0.77 t/c)                                             [naca-824] rule
//
// Within 1 % of a panel method up to 12 %.
double lw_section_slope_perfect(double thickness);

// Lift slope of a 12 % section [1/rad] as measured.
//
//     a_0 = 0.1025 + 0.00485 lg(Re / 1e6) per degree                            [mccroskey-1987]
//
// Holds for    Re 3e5..1e7, smooth or tripped, within 2 %.
double lw_section_slope_measured(double reynolds);

// Section drag / drag of two flat plates.
//
//     foil   1 + 2 t/c + 60 (t/c)^4         thickest near 30 %               [hoerner-fdd] ch. 6
//     strut  1 + 1.2 t/c + 70 (t/c)^4       thickest near 40 %, laminar
double lw_section_form_foil(double thickness);
double lw_section_form_strut(double thickness);

// Lowest pressure coefficient on a section (negative) at a lift coefficient.
//
//     1 - C_p = 1 + 3.45 t + 0.59 s c_li + 0.82 d + 0.0455 (d / t)^2,   t: thickness / chord
//     upper side s = 1, d = max(0, c_l - c_li); lower side s = -1, d = max(0, c_li - c_l)
//
// The greater of the two sides. Our own fit to potential flow about 6, 9 and 12 % four-digit
// sections [panel-solution]; the last term is the nose's: (c_l / 2 pi)^2 / (r / 2), r = 1.10 t^2.
// Holds for    0006..0012 within 2 %; 2412 2 % low to 18 % high; c_l up to 1.
// Leaves out   the suction peak at a flap's hinge; roughness; the boundary layer.
double lw_section_least_pressure(double thickness, double ideal_lift, double lift);

// Cavitation number at a depth and speed.
//
//     sigma = (p_a + rho g h - p_v) / (1/2 rho V^2)
double lw_cavitation_number(const lw_medium *medium, double depth, double speed);

// Speed [m/s] above which a section of this lowest pressure coefficient cavitates: -C_p = sigma.
// 1000 m/s where the section has no suction.
double lw_cavitation_speed(const lw_medium *medium, double depth, double least_pressure);

#endif
