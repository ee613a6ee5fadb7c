// strut.h - struts that stand through the surface: spray and junctions.
// SPDX-License-Identifier: MIT

#ifndef LW_STRUT_H
#define LW_STRUT_H

// Drag area [m^2] of the spray where a strut pierces the surface.
//
//     D = 0.24 q t^2,   t: thickness [m]                              [hoerner-fdd] eq. 10-31
//
// Holds for    V / sqrt(g c) above 3, upright. How sure: between a third of it [chapman-1971] and
// 1.6
//              times it, waves included, on struts of a dinghy [beaver-2009].
double lw_strut_spray_area(double thickness);

// Drag area [m^2] of the corner where a strut meets a foil on both its sides (two crossing bodies),
// or a plane wall (hull, end plate).
//
//     foil   D = q t^2 (17 (t/c)^2 - 0.05)                            [hoerner-fdd] ch. 8
//     wall   D = q t^2 (0.75 t/c - 0.0003 / (t/c)^2)
//
// None below t/c = 0.054 and 0.074, where the formulas turn negative: thin bodies shelter each
// other.
// Holds for    no fillet, no lift.
double lw_strut_junction_area(double thickness, double thickness_over_chord);
double lw_strut_wall_area(double thickness, double thickness_over_chord);

#endif
