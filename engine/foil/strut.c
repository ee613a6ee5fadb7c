// strut.c - spray and junctions of struts.
// SPDX-License-Identifier: MIT

#include "foil/strut.h"

#include <math.h>

double lw_strut_spray_area(double thickness) { return 0.24 * thickness * thickness; }

double lw_strut_junction_area(double thickness, double thickness_over_chord)
{
    const double t = thickness, part = thickness_over_chord;
    return t * t * fmax(17.0 * part * part - 0.05, 0.0);
}

double lw_strut_wall_area(double thickness, double thickness_over_chord)
{
    const double t = thickness, part = fmax(thickness_over_chord, 0.01);
    return t * t * fmax(0.75 * part - 0.0003 / (part * part), 0.0);
}
