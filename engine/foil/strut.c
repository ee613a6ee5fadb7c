// strut.c - spray, junctions and ventilation of struts.
// SPDX-License-Identifier: MIT

#include "lullwise/strut.h"

#include <math.h>

#include "foil/strut_force.h"

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

double lw_ventilated_side(double aspect, double number, double angle)
{
    return lw_strut_ventilated(lw_all(aspect), lw_all(number), lw_all(angle))[0];
}

double lw_ventilation_washout(double aspect, double number)
{
    return lw_strut_washout(lw_all(aspect), lw_all(number))[0];
}

// Angle at which the ventilated coefficient is `side`, to 0.0001 deg.
static double angle_of(double aspect, double number, double side)
{
    double low = 0.0, high = 0.5 * LW_PI;
    if (lw_ventilated_side(aspect, number, high) <= side) return high;
    for (int i = 0; i < 20; i++) {
        const double middle = 0.5 * (low + high);
        const bool above = lw_ventilated_side(aspect, number, middle) > side;
        *(above ? &high : &low) = middle;
    }
    return 0.5 * (low + high);
}

lw_ventilation lw_ventilation_of(double aspect, double number)
{
    const double stays = angle_of(aspect, number, lw_ventilation_washout(aspect, number));
    return (lw_ventilation){.forms = fmax(14.5 * LW_DEG, stays),
                            .forms_least = stays,
                            .forms_most = fmax(25.0 * LW_DEG, stays),
                            .stays = stays,
                            .stays_least = 0.8 * stays,
                            .stays_most = 1.3 * stays};
}

bool lw_ventilated_next(const lw_ventilation *limit, bool ventilated, double angle)
{
    return fabs(angle) > (ventilated ? limit->stays : limit->forms);
}
