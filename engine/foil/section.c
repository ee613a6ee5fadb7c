// section.c - flap, lift slope, section drag, lowest pressure and cavitation of a section.
// SPDX-License-Identifier: MIT

#include "foil/section.h"

#include <math.h>

#include "lullwise/elementary.h"

lw_flap lw_flap_of(double chord_part)
{
    const double E = chord_part;
    const double phi = lw_acos(2.0 * E - 1.0), sin_phi = 2.0 * sqrt(E * (1.0 - E));
    const double a_2 = 2.0 * (LW_PI - phi + sin_phi);
    return (lw_flap){.angle_share = a_2 / (2.0 * LW_PI),
                     .lift = a_2,
                     .moment = -sin_phi * (1.0 - E)};  // 1 - cos phi = 2 (1 - E)
}

double lw_flap_effect(double angle)
{
    const double x = angle / (41.0 * LW_DEG);
    return 0.86 / (1.0 + x * x);
}

double lw_section_slope_perfect(double thickness) { return 2.0 * LW_PI * (1.0 + 0.77 * thickness); }

double lw_section_slope_measured(double reynolds)
{
    return (0.1025 + 0.00485 * lw_log10(reynolds / 1e6)) / LW_DEG;
}

double lw_section_form_foil(double thickness)
{
    const double t = thickness, t_2 = t * t;
    return 1.0 + 2.0 * t + 60.0 * t_2 * t_2;
}

double lw_section_form_strut(double thickness)
{
    const double t = thickness, t_2 = t * t;
    return 1.0 + 1.2 * t + 70.0 * t_2 * t_2;
}

double lw_section_least_pressure(double thickness, double ideal_lift, double lift)
{
    const double t = thickness, off = lift - ideal_lift;
    const double above = fmax(off, 0.0), below = fmax(-off, 0.0);
    const double camber = 0.59 * ideal_lift;
    const double upper = camber + above * (0.82 + 0.0455 * above / (t * t));
    const double lower = -camber + below * (0.82 + 0.0455 * below / (t * t));
    return -(3.45 * t + fmax(upper, lower));
}

static double pressure_to_spare(const lw_medium *medium, double depth)
{
    return medium->air_pressure + medium->water_density * LW_GRAVITY * depth -
           medium->vapour_pressure;
}

double lw_cavitation_number(const lw_medium *medium, double depth, double speed)
{
    return pressure_to_spare(medium, depth) / (0.5 * medium->water_density * speed * speed);
}

double lw_cavitation_speed(const lw_medium *medium, double depth, double least_pressure)
{
    const double most = 1000.0;
    if (!(least_pressure < 0.0)) return most;
    return fmin(
        sqrt(pressure_to_spare(medium, depth) / (-0.5 * medium->water_density * least_pressure)),
        most);
}
