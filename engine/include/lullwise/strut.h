// strut.h - struts that stand through the surface: spray, junctions, air drawn down.
// SPDX-License-Identifier: MIT

#ifndef LW_STRUT_H
#define LW_STRUT_H

#include "lullwise/base.h"

// Drag area [m^2] of the spray where a strut pierces the surface.
//
//     D = 0.24 q t^2,   t: thickness [m]                              [hoerner-fdd] ch. 10
//
// Holds for    V / sqrt(g c) above 3; streamlined sections, 40 % each way.
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

// Angles of a surface-piercing strut to the flow, measured on one strut with a depth of one chord.
#define LW_VENTILATION_REWETS   (4.0 * LW_DEG)   // air leaves below it              [harwood-2016]
#define LW_VENTILATION_POSSIBLE (6.0 * LW_DEG)   // wetted or ventilated, as it came [harwood-2016]
#define LW_VENTILATION_CERTAIN  (14.5 * LW_DEG)  // ventilates when disturbed        [harwood-2016]

// Cavitation number of air at the surface's own pressure: suction beyond it can hold a cavity open.
//
//     sigma_c = 2 g h / V^2                                           [young-2017]
double lw_ventilation_number(double depth, double speed);

// Lift that stays when one side of a strut has ventilated, as a part of the wetted lift.
//
//     1.33 - 4.75 alpha, between 0.53 and 1                           [damley-strnad-2019]
//
// Our own fit to four measured points (6, 10, 14 and 18 deg), within 0.07.
// Holds for    depth of one chord, V / sqrt(g h) = 2.5.
double lw_ventilation_lift_left(double angle);

#endif
