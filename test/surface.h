// surface.h - closed forms of what the free surface does to a foil at speed; a craft is prepared
// with
// a lattice instead (boat/foil_curves.c), and the tests hold one against the other.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_SURFACE_H
#define LW_TEST_SURFACE_H

#include "lullwise/base.h"
#include "solve/lanes.h"

// Lift slope of a thin section at depth h, as a part of its slope far below the surface.
//
//     K = (1 + 16 (h/c)^2) / (2 + 16 (h/c)^2)        [hough-moran]
//
// Holds for    h/c >= 0, U / sqrt(g h) above about 5.
// Leaves out   thickness, incidence; 2.5 % low at h/c = 0.5 against the exact thin plate.
LW_INLINE lw_lanes lw_surface_slope_factor(lw_lanes depth_in_chords)
{
    const lw_lanes h_2 = 16.0 * depth_in_chords * depth_in_chords;
    return (1.0 + h_2) / (2.0 + h_2);
}

// Interference of two equal elliptic loads, one above the other, in the induced drag of each:
// C_Di = C_L^2 (1 + delta + sigma) / (pi A). For a foil at depth h the image lies at G = 2 h.
//
//     sigma = (1 + n_1 x + n_2 x^2) / (1 + d_1 x + d_2 x^2 + d_3 x^3 + 8 n_2 x^4),   x = G / b
//
// The coefficients are our own fit to the Trefftz-plane integral [prandtl-116]; the form has its
// right limits: 1 at x = 0, and 1 / (8 x^2) far away.
// Holds for    x >= 0, within 0.5 % of the integral from x = 0.05 to 1.6, 0.004 anywhere.
LW_INLINE lw_lanes lw_surface_interference(lw_lanes gap_over_span)
{
    const double n_1 = 5.07818, n_2 = 0.665357;
    const double d_1 = 11.06103, d_2 = 17.28953, d_3 = 37.85409;
    const lw_lanes x = gap_over_span;
    return (1.0 + x * (n_1 + x * n_2)) / (1.0 + x * (d_1 + x * (d_2 + x * (d_3 + x * 8.0 * n_2))));
}

// Downwash angle at the rudder foil for each unit of the main foil's lift coefficient, from a
// horseshoe vortex of span pi b / 4 and from its image of the same sign above the surface.
//
//     eps / C_L = S / (4 pi s^2) / 2 [1 + sqrt(x^2 + s^2) / x]          own vortex
//               + the same vortex at height z = h_m + h_r               image     [glauert-1926]
//
// `half` s = pi b / 8; `behind` x: from quarter chord to quarter chord.
// Holds for    x > s / 2; the rudder foil near the main foil's level.
// Leaves out   roll-up, the spread of downwash along the rudder foil's span.
LW_INLINE lw_lanes lw_surface_downwash(double area, double half, lw_lanes behind, lw_lanes height)
{
    const double s = half;
    const lw_lanes x = behind, z = height;
    const lw_lanes own = 1.0 + lw_lanes_sqrt(x * x + s * s) / x;

    const lw_lanes trail = s * s + z * z, bound = x * x + z * z;
    const lw_lanes far = lw_lanes_sqrt(bound + s * s);
    const lw_lanes image = s * s * ((far + x) * bound + x * trail) / (far * bound * trail);
    return area / (8.0 * LW_PI * s * s) * (own + image);
}

#endif
