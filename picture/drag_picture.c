// drag_picture.c - hull and main foil against the speed: why a boat wants to fly.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/foil.h"
#include "lullwise/hull_shape.h"
#include "picture/boat_picture.h"
#include "picture/plot.h"

#define POINTS     23
#define FIRST      (2.0 * LW_KN)
#define STEP       (1.0 * LW_KN)
#define DEPTH      0.5  // [m]
#define FREEBOARD  0.25
#define FROUDE_MAX 1.5  // thin-ship theory's last

typedef struct curves {
    double speed[POINTS];  // [kn]
    double hull[POINTS];   // [N]; NaN where not to be had
    double foil[POINTS];
} curves;

static void add_hull(curves *c, const lw_boat *boat, double mass, const lw_medium *medium)
{
    static lw_hull_shape shape;
    static lw_hull_cut cut;
    const lw_hull *hull = &boat->hull;
    const lw_hull_dimensions dimensions = {hull->length,       hull->beam,  hull->draft,
                                           hull->transom_beam, hull->block, hull->waterplane,
                                           FREEBOARD};
    const double volume = mass / medium->water_density;
    if (lw_hull_shape_of_dimensions(&shape, dimensions) != LW_HULL_OK) return;
    if (lw_hull_float(&cut, &shape, volume, 0.47 * hull->length) != LW_HULL_OK) return;
    for (int i = 0; i < POINTS; i++) {
        const double speed = c->speed[i] * LW_KN;
        if (speed > FROUDE_MAX * sqrt(LW_GRAVITY * hull->length)) break;
        const double area =
            lw_hull_wave_area(&cut, speed) +
            lw_hull_friction_area(&cut, speed, medium->water_viscosity, hull->form_factor);
        c->hull[i] = 0.5 * medium->water_density * speed * speed * area;
    }
}

static void add_foil(curves *c, const lw_foil_craft *foil, double weight, double density)
{
    for (int i = 0; i < POINTS; i++) {
        lw_foil_place place = {.speed = c->speed[i] * LW_KN, .depth = DEPTH};
        place.incidence = lw_foil_incidence(foil, density, place, weight);
        const lw_foil_forces f = lw_foil_at(foil, density, place);
        if (f.lift >= 0.999 * weight) c->foil[i] = f.section + f.induced + f.junction;
    }
}

static double greatest(const curves *c)
{
    double most = 0.0;
    for (int i = 0; i < POINTS; i++) most = fmax(most, fmax(c->hull[i], c->foil[i]));
    return most;
}

void lw_boat_draw_drag(FILE *out, const lw_boat *boat, const lw_sections *sections,
                       const lw_person *person, const lw_medium *medium)
{
    static lw_craft craft;
    static curves c;
    for (int i = 0; i < POINTS; i++) {
        c.speed[i] = (FIRST + i * STEP) / LW_KN;
        c.hull[i] = c.foil[i] = NAN;
    }
    const double mass = boat->hull.mass + person->mass + person->gear;
    lw_craft_prepare(&craft, boat, sections, person, medium);
    add_hull(&c, boat, mass, medium);
    add_foil(&c, &craft.main_foil, mass * LW_GRAVITY, medium->water_density);

    lw_svg_begin(out, 720.0, 360.0, "Drag over the speed: the hull afloat, the main foil flying");
    const lw_plot plot = {.out = out,
                          .corner = {64.0, 16.0},
                          .width = 632.0,
                          .height = 288.0,
                          .x = lw_axis_over(0.0, c.speed[POINTS - 1], 8, "speed [kn]"),
                          .y = lw_axis_over(0.0, greatest(&c), 5, "drag [N]")};
    lw_plot_frame(&plot);
    lw_plot_curve(&plot, c.speed, c.hull, POINTS, 0);
    lw_plot_curve(&plot, c.speed, c.foil, POINTS, 1);
    lw_plot_key(&plot, 0, 0, "hull");
    lw_plot_key(&plot, 1, 1, "main foil");
    lw_svg_end(out);
}
