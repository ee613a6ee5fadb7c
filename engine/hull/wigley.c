// wigley.c - hydrostatics of Wigley's hull.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/hull_shape.h"

// Both sides, by the midpoint rule over the sides' projection.
static double wetted_area(lw_hull_form form)
{
    const int along = 80, down = 40;
    const double L = form.length, B = form.beam, T = form.draft;
    double sum = 0.0;
    for (int i = 0; i < along; i++) {
        const double s = (i + 0.5) / along;  // 2x / L, fore half
        for (int k = 0; k < down; k++) {
            const double r = (k + 0.5) / down;  // z / T
            const double y_x = -2.0 * B / L * s * (1.0 - r * r);
            const double y_z = -B / T * r * (1.0 - s * s);
            sum += sqrt(1.0 + y_x * y_x + y_z * y_z);
        }
    }
    return 2.0 * L * T * sum / (along * down);
}

lw_hydrostatics lw_hull_form_hydrostatics(lw_hull_form form)
{
    const double L = form.length, B = form.beam, T = form.draft;
    return (lw_hydrostatics){.volume = 4.0 / 9.0 * L * B * T,
                             .waterplane = 2.0 / 3.0 * L * B,
                             .wetted = wetted_area(form),
                             .centre_height = 5.0 / 8.0 * T,
                             .metacentre_across = 9.0 / 105.0 * B * B / T,
                             .metacentre_along = 3.0 / 40.0 * L * L / T};
}

double lw_hull_form_wedge_drag(double half_angle)
{
    return 4.0 / LW_PI * half_angle / (1.0 + 0.65 * half_angle);
}
