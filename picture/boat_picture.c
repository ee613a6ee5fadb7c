// boat_picture.c - a boat from the side and its foils from above, to scale.
// SPDX-License-Identifier: MIT

#include "picture/boat_picture.h"

#include <math.h>

#include "lullwise/elementary.h"
#include "records/fault.h"
#include "records/svg.h"

#define WIDTH  720.0
#define MARGIN 24.0
#define WATER  "#0072b2"
#define INK    "#222"
#define PALE   "#dfe8ec"

// A view in metres: x to the right, z up.
typedef struct view {
    FILE *out;
    double left, top;  // [m] at the picture's upper left corner
    double scale;      // [px/m]
} view;

static lw_svg_point at(const view *v, double x, double z)
{
    return (lw_svg_point){(x - v->left) * v->scale, (v->top - z) * v->scale};
}

static void line(const view *v, lw_svg_point from, lw_svg_point to, lw_svg_stroke how)
{
    lw_svg_line(v->out, at(v, from.x, from.y), at(v, to.x, to.y), how);
}

static void shape(const view *v, const lw_svg_point *corners, int count, lw_svg_stroke how)
{
    lw_svg_point points[16] = {{0}};
    for (int i = 0; i < count; i++) points[i] = at(v, corners[i].x, corners[i].y);
    points[count] = points[0];
    lw_svg_path(v->out, points, count + 1, how);
}

static void words(const view *v, double x, double z, const char *anchor, const char *text)
{
    lw_svg_text(v->out, at(v, x, z), (lw_svg_words){.size = 13.0, .anchor = anchor, .colour = INK},
                text);
}

static const lw_svg_stroke solid = {.width = 1.5, .colour = INK, .fill = PALE};
static const lw_svg_stroke thin = {.width = 1.0, .colour = INK};

// --- from the side; heights from the hull's bottom at the main strut

static void draw_hull(const view *v, const lw_boat *boat)
{
    const double L = boat->hull.length, deck = fmax(boat->hull.rack_height, 0.15);
    const double stem = 0.4 * boat->hull.draft;
    const lw_svg_point outline[] = {{0.0, 0.8 * deck}, {0.0, 0.3 * stem}, {0.3 * L, 0.0},
                                    {0.7 * L, 0.0},    {L, stem},         {L, 0.9 * deck}};
    shape(v, outline, 6, solid);
    const lw_svg_point rack[] = {{boat->place.aft_x, boat->hull.rack_height},
                                 {boat->place.forward_x, boat->hull.rack_height}};
    line(v, rack[0], rack[1], (lw_svg_stroke){.width = 5.0, .colour = INK});
    words(v, 0.5 * (rack[0].x + rack[1].x), rack[0].y + 0.06, "middle", "where the sailor can be");
}

// A strut and the foil's section at its foot: nose forward, quarter chords one above the other.
static void draw_strut(const view *v, const lw_strut *strut, const lw_foil *foil, double top)
{
    const double nose = strut->x + 0.25 * strut->chord, tail = strut->x - 0.75 * strut->chord;
    const double z = -strut->length, c = foil->root_chord, half = 0.5 * foil->thickness * c;
    const double x = strut->x;
    const lw_svg_point blade[] = {{nose, top}, {tail, top}, {tail, z}, {nose, z}};
    const lw_svg_point section[] = {{x + 0.25 * c, z},        {x + 0.2 * c, z + 0.7 * half},
                                    {x - 0.05 * c, z + half}, {x - 0.4 * c, z + 0.7 * half},
                                    {x - 0.75 * c, z},        {x - 0.4 * c, z - 0.7 * half},
                                    {x - 0.05 * c, z - half}, {x + 0.2 * c, z - 0.7 * half}};
    char text[40];
    shape(v, blade, 4, solid);
    shape(v, section, 8, (lw_svg_stroke){.width = 1.5, .colour = INK, .fill = INK});
    LW_FIT(text, "%.2f m", strut->length);
    words(v, x, z - 0.12, "middle", text);
}

static void draw_wand(const view *v, const lw_linkage *linkage)
{
    const double angle = linkage->neutral_angle, x = linkage->wand_x, z = linkage->wand_height;
    const double reach = linkage->wand_length;
    line(v, (lw_svg_point){x, z},
         (lw_svg_point){x - reach * lw_sin(angle), z - reach * lw_cos(angle)},
         (lw_svg_stroke){.width = 3.0, .colour = INK});
    words(v, x, z + 0.05, "middle", "wand");
}

void lw_boat_draw_side(FILE *out, const lw_boat *boat)
{
    const double aft = fmin(0.0, boat->rudder_strut.x - boat->rudder_strut.chord);
    const double fore = fmax(boat->hull.length, boat->linkage.wand_x);
    const double deep = fmax(boat->main_strut.length, boat->rudder_strut.length) + 0.25;
    const double high = fmax(boat->hull.rack_height, boat->linkage.wand_height) + 0.35;
    const double scale = (WIDTH - 2.0 * MARGIN) / (fore - aft);
    const view v = {out, aft - MARGIN / scale, high, scale};
    char text[80];
    lw_svg_begin(out, WIDTH, (high + deep) * scale,
                 "The boat from the side, to scale, afloat with the hull level");
    draw_strut(&v, &boat->main_strut, &boat->main_foil, 0.0);
    draw_strut(&v, &boat->rudder_strut, &boat->rudder_foil, 0.5 * boat->hull.rack_height);
    draw_hull(&v, boat);
    draw_wand(&v, &boat->linkage);
    const double water = boat->hull.draft;
    line(&v, (lw_svg_point){v.left, water}, (lw_svg_point){v.left + WIDTH / scale, water},
         (lw_svg_stroke){.width = 2.0, .colour = WATER, .dashes = "10 5"});
    LW_FIT(text, "hull %.2f m; water with the sailor aboard, dashed", boat->hull.length);
    words(&v, v.left + 8.0 / scale, high - 18.0 / scale, "start", text);
    lw_svg_end(out);
}

// --- the foils from above: x to port, z forward

static void draw_foil(const view *v, const lw_foil *foil, double z, const char *name)
{
    const double half = 0.5 * foil->span, r = foil->root_chord, t = foil->tip_chord;
    const lw_svg_point plan[] = {{-half, z + 0.25 * t}, {0.0, z + 0.25 * r}, {half, z + 0.25 * t},
                                 {half, z - 0.75 * t},  {0.0, z - 0.75 * r}, {-half, z - 0.75 * t}};
    const double end = foil->flap_span * half, E = foil->flap_chord;
    const double tip = r + (t - r) * foil->flap_span;  // chord at the flap's end
    char text[120];
    shape(v, plan, 6, solid);
    if (E > 0.0 && end > 0.0) {
        const lw_svg_point flap[] = {{-end, z - (0.75 - E) * tip}, {0.0, z - (0.75 - E) * r},
                                     {end, z - (0.75 - E) * tip},  {end, z - 0.75 * tip},
                                     {0.0, z - 0.75 * r},          {-end, z - 0.75 * tip}};
        shape(v, flap, 6, (lw_svg_stroke){.width = 1.0, .colour = INK, .fill = "#9fb6c0"});
    }
    line(v, (lw_svg_point){0.0, z + 0.3 * r}, (lw_svg_point){0.0, z - 0.85 * r}, thin);
    LW_FIT(text, "%s: span %.2f m, chord %.0f mm, at the tip %.0f mm; %.3f m²", name, foil->span,
           1000.0 * r, 1000.0 * t, 0.5 * foil->span * (r + t));
    words(v, 0.0, z - 0.75 * r - 0.05, "middle", text);
}

void lw_boat_draw_foils(FILE *out, const lw_boat *boat)
{
    const lw_foil *main_foil = &boat->main_foil, *rudder = &boat->rudder_foil;
    const double span = fmax(main_foil->span, rudder->span);
    const double scale = (WIDTH - 2.0 * MARGIN) / span;
    const double first = 0.3 * main_foil->root_chord + 0.02;
    const double second = first + 0.75 * main_foil->root_chord + 0.3 * rudder->root_chord + 0.09;
    const double deep = second + 0.75 * rudder->root_chord + 0.08;
    const view v = {out, -0.5 * span - MARGIN / scale, 0.0, scale};
    lw_svg_begin(out, WIDTH, deep * scale, "Both foils from above, to one scale, flap darker");
    draw_foil(&v, main_foil, -first, "main foil");
    draw_foil(&v, rudder, -second, "rudder foil");
    lw_svg_end(out);
}
