// face.h - lift of a foil whose back stands in air: that of its wetted face.
// SPDX-License-Identifier: MIT

#ifndef LW_FACE_H
#define LW_FACE_H

// A flat plate with a flap below the surface, its back in a cavity as long as one likes at the
// surface's pressure, so fast that gravity does not matter.
//
//     C_L = a (alpha + t_L delta),   C_D = a (alpha + t_D delta)^2,   without friction
//
// Thin-plate theory of [green-1936] and [johnson-1961], with the flap as [tulin-burkart-1955] have
// it deep; ours is the closed form between (doc/theory.md, Air on a foil):
//
//     a = pi (s - 1)^2 / (s^2 - 1 - 2 ln s),   c / h = (s^2 - 1 - 2 ln s) / pi
//
// pi/2 deep, pi at the surface, where it is the planing plate of [wagner-1932]. A flap of 30 % of
// the chord is worth 0.89 of its angle deep and 0.66 at the surface.
// Leaves out   thickness and camber of the face; the cavity's closing.
typedef struct lw_face {
    double slope;        // a   [1/rad]
    double flap_share;   // t_L [-] angle of the plate that a flap angle lifts as
    double flap_drag;    // t_D [-] and drags as
    double centre;       // of the plate's lift, chords from the nose: 5/16 deep, 1/4 at the surface
    double flap_centre;  // of the flap's
} lw_face;

// depth: of the nose [chords], at least 1e-4; flap_chord: E, 0..1, 0 is none.
lw_face lw_face_of(double depth, double flap_chord);

// Lift coefficient of a face of slope a with a cavity of pressure number sigma = 2 g h / V^2, which
// is shorter the greater that is:
//
//     C / (1 - C / 2) = a (q f(alpha / q) - k C),   q = sigma / (2 + sigma)
//     f(p) = 2 (1 + p^2) / (p + sqrt(1 + p^2))                              [geurst-1960]
//
// below p = 0.4, where it would lift more than a wetted plate, 4 p as that does, and nothing below
// zero. C / 2: [rayleigh-1876] deep, [green-1936] at the surface. k: induced angle / C.
double lw_face_lift(double slope, double induced, double angle, double number);

#endif
