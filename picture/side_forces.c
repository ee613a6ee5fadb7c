// side_forces.c - the forces on a boat that is drawn from the side, as arrows to one scale.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "picture/side.h"
#include "records/fault.h"

#define WEIGHT  0.8  // [m] that boat and sailor together are drawn long as a force
#define LONGEST 0.9  // [m] that a force along may be

static const lw_svg_stroke dark = {.width = 1.0, .colour = LW_SIDE_INK, .fill = LW_SIDE_INK};

// An arrow as long as a force, in pixels to the right and down; its words near its tip.
static void draw_arrow(lw_side_view *s, lw_svg_point from, lw_svg_point by, const char *text)
{
    const double length = sqrt(by.x * by.x + by.y * by.y), head = fmin(9.0, length);
    const lw_svg_point to = {from.x + by.x, from.y + by.y};
    if (length < 1.0) return;
    const double x = by.x / length, y = by.y / length;  // along it
    const lw_svg_point neck = {to.x - head * x, to.y - head * y};
    const lw_svg_point tip[] = {to,
                                {neck.x - 0.45 * head * y, neck.y + 0.45 * head * x},
                                {neck.x + 0.45 * head * y, neck.y - 0.45 * head * x},
                                to};
    lw_svg_line(s->out, from, neck, (lw_svg_stroke){.width = 2.6, .colour = "#000"});
    lw_svg_path(s->out, tip, 4, dark);
    lw_labels_keep_off_line(&s->labels, from, to, 5.0);
    lw_side_say(s, to, text);
}

// Less where a foil lifts far more than the weight.
double lw_side_per_newton(const lw_side_view *s)
{
    const lw_flight *f = s->of->flight;
    const double most = fmax(fabs(f->main_lift), fabs(f->rudder_lift));
    return WEIGHT / fmax(s->at.weight, most / 1.5);
}

static double per_newton(const lw_side_view *s) { return lw_side_per_newton(s) * s->scale; }

static double drag_of(const lw_flight *f) { return f->foil_drag + f->strut_drag + f->hull_drag; }

// Forces along are small: drawn five times as long as those up, or less where that is too long.
static double stretch(const lw_side_view *s)
{
    const lw_flight *f = s->of->flight;
    const double most = fmax(fabs(f->drive), fabs(drag_of(f))) * lw_side_per_newton(s);
    return 5.0 * most <= LONGEST ? 5.0 : 2.0 * most <= LONGEST ? 2.0 : 1.0;
}

static void draw_up(lw_side_view *s, lw_svg_point at, double force, const char *name)
{
    char text[60];
    LW_FIT(text, "%s %.0f N", name, fabs(force));
    draw_arrow(s, at, (lw_svg_point){0.0, -force * per_newton(s)}, text);
}

static void draw_along(lw_side_view *s, lw_svg_point at, double force, const char *name)
{
    char text[60];
    LW_FIT(text, "%s %.0f N", name, fabs(force));
    draw_arrow(s, at, (lw_svg_point){force * per_newton(s) * stretch(s), 0.0}, text);
}

static void draw_weights(lw_side_view *s)
{
    char text[60];
    const lw_craft *c = s->of->craft;
    const double up = c->main_strut.length, g = LW_GRAVITY;
    const double boat = c->hull_mass * g, body = c->body_mass * g;
    const lw_svg_point hull = lw_side_on(s, c->hull_x - c->transom_x, c->hull_z - up);
    const lw_svg_point sailor = lw_side_on(s, s->of->flight->place_x, c->body_z - up);
    LW_FIT(text, "boat %.0f N", boat);
    draw_arrow(s, hull, (lw_svg_point){0.0, boat * per_newton(s)}, text);
    LW_FIT(text, "sailor %.0f N", body);
    draw_arrow(s, sailor, (lw_svg_point){0.0, body * per_newton(s)}, text);
}

void lw_side_forces(lw_side_view *s)
{
    const lw_boat *boat = s->of->boat;
    const lw_flight *f = s->of->flight;
    const lw_svg_point main = lw_side_on(s, boat->main_strut.x, -boat->main_strut.length);
    const lw_svg_point rudder = lw_side_on(s, boat->rudder_strut.x, -boat->rudder_strut.length);
    draw_weights(s);
    draw_up(s, main, f->main_lift, f->main_lift < 0.0 ? "pulls down" : "lift");
    draw_up(s, rudder, f->rudder_lift, f->rudder_lift < 0.0 ? "pulls down" : "lift");
    if (f->buoyancy > 0.5)
        draw_up(s, lw_side_on(s, 0.45 * boat->hull.length, 0.0), f->buoyancy, "hull");
    draw_along(s, lw_side_on(s, s->at.sail_x, s->at.sail_height), f->drive, "drive");
    draw_along(s, main, -drag_of(f), "drag");
}

// 1, 2 or 5 times a power of ten, at most this.
static double even(double x)
{
    double power = 1e-3;
    while (10.0 * power <= x) power *= 10.0;
    return power * (5.0 * power <= x ? 5.0 : 2.0 * power <= x ? 2.0 : 1.0);
}

void lw_side_key(lw_side_view *s)
{
    char text[60];
    const double up = even(0.5 * s->at.weight), along = even(0.5 * s->at.weight / stretch(s));
    const double right = s->labels.bounds.right - 10.0, low = s->labels.bounds.top + 70.0;
    LW_FIT(text, "%.0f N", up);
    draw_arrow(s, (lw_svg_point){right, low}, (lw_svg_point){0.0, -up * per_newton(s)}, text);
    LW_FIT(text, "%.0f N", along);
    const double wide = along * per_newton(s) * stretch(s);
    draw_arrow(s, (lw_svg_point){right - wide, low + 14.0}, (lw_svg_point){wide, 0.0}, text);
}
