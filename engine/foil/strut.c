// strut.c - spray, junctions and ventilation of struts.
// SPDX-License-Identifier: MIT

#include "lullwise/strut.h"

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

double lw_ventilation_number(double depth, double speed)
{
    return 2.0 * LW_GRAVITY * depth / (speed * speed);
}

double lw_ventilation_lift_left(double angle)
{
    return fmin(fmax(1.33 - 4.75 * fabs(angle), 0.53), 1.0);
}
