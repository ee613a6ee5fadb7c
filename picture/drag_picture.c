// drag_picture.c - hull and main foil against the speed: why a boat wants to fly.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/drawn.h"
#include "picture/boat_picture.h"
#include "picture/plot.h"

#define POINTS 23
#define FIRST  (2.0 * LW_KN)
#define STEP   (1.0 * LW_KN)

typedef struct curves {
    double speed[POINTS];  // [kn]
    double hull[POINTS];   // [N]; NaN where not to be had
    double foil[POINTS];
} curves;

static void fill(curves *c, const lw_boat *boat, const lw_craft *craft)
{
    double speeds[POINTS];
    lw_drag drag[POINTS];
    for (int i = 0; i < POINTS; i++) {
        c->speed[i] = (FIRST + i * STEP) / LW_KN;
        speeds[i] = c->speed[i] * LW_KN;
    }
    lw_drag_curve(boat, craft, speeds, drag, POINTS);
    for (int i = 0; i < POINTS; i++) c->hull[i] = drag[i].hull, c->foil[i] = drag[i].foil;
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
    lw_craft_prepare(&craft, boat, sections, person, medium);
    fill(&c, boat, &craft);

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
