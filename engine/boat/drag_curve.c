// drag_curve.c - hull afloat and main foil flying, each with the whole weight.
// SPDX-License-Identifier: MIT

#include "lullwise/drawn.h"

#include <math.h>

#include "lullwise/foil.h"
#include "lullwise/hull_shape.h"

#define DEPTH      0.5   // [m]
#define FREEBOARD  0.25  // [m]
#define MIDDLE     0.47  // of the length, from the transom: where the weight acts  [judged]
#define FROUDE_MAX 1.5   // thin-ship theory's last

static bool floats(lw_hull_cut *cut, const lw_hull *hull, double volume)
{
    lw_hull_shape shape;
    const lw_hull_dimensions dimensions = {hull->length,       hull->beam,  hull->draft,
                                           hull->transom_beam, hull->block, hull->waterplane,
                                           FREEBOARD};
    return lw_hull_shape_of_dimensions(&shape, dimensions) == LW_HULL_OK &&
           lw_hull_float(cut, &shape, volume, MIDDLE * hull->length) == LW_HULL_OK;
}

static double hull_drag(const lw_hull_cut *cut, const lw_hull *hull, const lw_medium *medium,
                        double speed)
{
    if (speed > FROUDE_MAX * sqrt(LW_GRAVITY * hull->length)) return NAN;
    const double area =
        lw_hull_wave_area(cut, speed) +
        lw_hull_friction_area(cut, speed, medium->water_viscosity, hull->form_factor);
    return 0.5 * medium->water_density * speed * speed * area;
}

static double foil_drag(const lw_foil_craft *foil, double weight, double density, double speed)
{
    lw_foil_place place = {.speed = speed, .depth = DEPTH};
    place.incidence = lw_foil_incidence(foil, density, place, weight);
    const lw_foil_forces f = lw_foil_at(foil, density, place);
    return f.lift >= 0.999 * weight ? f.section + f.induced + f.junction : NAN;
}

void lw_drag_curve(const lw_boat *boat, const lw_craft *craft, const double *speeds, lw_drag *drag,
                   size_t n)
{
    lw_hull_cut cut;
    const lw_medium *medium = &craft->medium;
    const double mass = craft->hull_mass + craft->body_mass, density = medium->water_density;
    const bool has_hull = floats(&cut, &boat->hull, mass / density);
    for (size_t i = 0; i < n; i++) {
        drag[i].hull = has_hull ? hull_drag(&cut, &boat->hull, medium, speeds[i]) : NAN;
        drag[i].foil = foil_drag(&craft->main_foil, mass * LW_GRAVITY, density, speeds[i]);
    }
}
