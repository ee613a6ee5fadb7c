// side_boat.c - the boat from the side with her sailor, part by part.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/elementary.h"
#include "picture/side.h"

typedef lw_side_point point;

static const lw_svg_stroke solid = {.width = 1.4, .colour = LW_SIDE_INK, .fill = "#f4f4f4"};
static const lw_svg_stroke spar = {.width = 2.0, .colour = LW_SIDE_GREY};
static const lw_svg_stroke thin = {.width = 1.0, .colour = LW_SIDE_GREY};

// --- where things are

static point turned(point p, point about, double angle)
{
    const double c = lw_cos(angle), s = lw_sin(angle), x = p.x - about.x, z = p.y - about.y;
    return (point){about.x + x * c - z * s, about.y + x * s + z * c};
}

lw_side_point lw_side_posed(const lw_side_view *s, point p)
{
    const lw_flight *f = s->of->flight;
    const double x = p.x - s->of->boat->main_strut.x, upright = lw_cos(f->heel);
    const double c = lw_cos(f->pitch), sn = lw_sin(f->pitch);
    return (point){s->of->boat->main_strut.x + x * c - p.y * sn * upright,
                   f->ride_height + x * sn + p.y * c * upright};
}

lw_svg_point lw_side_pixel(const lw_side_view *s, point p)
{
    return (lw_svg_point){s->corner.x + (p.x - s->left) * s->scale,
                          s->corner.y + (s->top - p.y) * s->scale};
}

lw_svg_point lw_side_on(const lw_side_view *s, double x, double z)
{
    return lw_side_pixel(s, lw_side_posed(s, (point){x, z}));
}

static void line(const lw_side_view *s, point from, point to, lw_svg_stroke how)
{
    lw_svg_line(s->out, lw_side_on(s, from.x, from.y), lw_side_on(s, to.x, to.y), how);
}

#define CORNERS_MOST 32
static void shape(const lw_side_view *s, const point *corners, int count, lw_svg_stroke how)
{
    lw_svg_point points[CORNERS_MOST + 1] = {{0}};
    for (int i = 0; i < count; i++) points[i] = lw_side_on(s, corners[i].x, corners[i].y);
    points[count] = points[0];
    lw_svg_path(s->out, points, count + 1, how);
}

// Its edge, for words to keep off.
static void keep_off(lw_side_view *s, const point *corners, int count)
{
    for (int i = 0; i < count; i++) {
        const point to = corners[(i + 1) % count];
        lw_labels_keep_off_line(&s->labels, lw_side_on(s, corners[i].x, corners[i].y),
                                lw_side_on(s, to.x, to.y), 1.0);
    }
}

// Points along a bow from one to another that bends towards a third; the first is left out.
#define BOW 12
static void bend(point *to, point from, point towards, point end)
{
    for (int i = 1; i <= BOW; i++) {
        const double t = (double)i / BOW, u = 1.0 - t;
        to[i - 1] = (point){u * u * from.x + 2.0 * u * t * towards.x + t * t * end.x,
                            u * u * from.y + 2.0 * u * t * towards.y + t * t * end.y};
    }
}

// --- the boat

static double deck_of(const lw_boat *boat) { return 0.75 * boat->hull.rack_height; }

static void draw_hull(lw_side_view *s)
{
    const lw_boat *boat = s->of->boat;
    const double L = boat->hull.length, deck = deck_of(boat);
    const point middle = {0.5 * L, 0.0}, stem = {L, deck + 0.04};
    point outline[3 + 2 * BOW] = {{0.0, deck}, {0.0, 0.03}};
    bend(outline + 2, outline[1], (point){0.25 * L, 0.0}, middle);
    bend(outline + 2 + BOW, middle, (point){0.85 * L, 0.0}, stem);
    outline[2 + 2 * BOW] = (point){0.6 * L, deck};
    shape(s, outline, 3 + 2 * BOW, solid);
    keep_off(s, outline, 3 + 2 * BOW);
    const double back = boat->rudder_strut.x;
    if (back >= 0.0) return;
    line(s, (point){0.0, deck}, (point){back, deck}, spar);
    line(s, (point){back, deck}, (point){back, 0.0}, spar);
}

// Ends a line that rises where it leaves the page at the top.
static void cut(const lw_svg_point *from, lw_svg_point *to, double top)
{
    const double part = (top - from->y) / (to->y - from->y);
    *to = (lw_svg_point){from->x + part * (to->x - from->x), top};
}

// Mast and sail as high as the page is.
static void draw_rig(lw_side_view *s)
{
    const lw_rig *rig = &s->of->boat->rig;
    const double foot = 1.25 * rig->sail_area / rig->luff;
    const double mast = rig->centre_x + 0.35 * foot, head = rig->foot_height + rig->luff;
    const point tack = {mast, rig->foot_height}, clew = {mast - foot, rig->foot_height};
    point leech[BOW];
    int count;
    bend(leech, clew, (point){mast - 0.9 * foot, rig->foot_height + 0.5 * rig->luff},
         (point){mast, head});
    lw_svg_point edge[BOW + 2] = {lw_side_on(s, tack.x, tack.y), lw_side_on(s, clew.x, clew.y)};
    for (count = 2; count < BOW + 2; count++) {
        const point above = lw_side_posed(s, leech[count - 2]);
        edge[count] = lw_side_pixel(s, above);
        if (above.y > s->top) break;
    }
    if (count < BOW + 2) cut(&edge[count - 1], &edge[count], s->corner.y), count++;
    lw_svg_path(s->out, edge, count, thin);
    const lw_svg_point at_deck = lw_side_on(s, mast, deck_of(s->of->boat));
    lw_svg_point at_top = lw_side_on(s, mast, head);
    if (at_top.y < s->corner.y) cut(&at_deck, &at_top, s->corner.y);
    lw_svg_line(s->out, at_deck, at_top, spar);
    lw_labels_keep_off_line(&s->labels, at_deck, at_top, 2.0);
}

// A strut with the section of the foil at its foot: quarter chords one above the other, all turned
// about a height of the strut, the foil by more.
typedef struct fin {
    const lw_strut *strut;
    const lw_foil *foil;
    double pivot;        // [m] height that the strut is turned about
    double turn, chord;  // [rad] bow up: of the strut; of the foil to the strut
} fin;

static void draw_fin(lw_side_view *s, fin f)
{
    const double x = f.strut->x, c = f.strut->chord, r = f.foil->root_chord;
    const double half = 0.5 * f.foil->thickness * r, foot = -f.strut->length;
    const point about = {x, f.pivot}, quarter = {x, foot};
    point blade[] = {
        {x + 0.25 * c, 0.0}, {x - 0.75 * c, 0.0}, {x - 0.75 * c, foot}, {x + 0.25 * c, foot}};
    point section[] = {{0.25, 0.0},  {0.2, 0.7},   {-0.05, 1.0},  {-0.4, 0.7},
                       {-0.75, 0.0}, {-0.4, -0.7}, {-0.05, -1.0}, {0.2, -0.7}};
    for (int i = 0; i < 4; i++) blade[i] = turned(blade[i], about, f.turn);
    for (int i = 0; i < 8; i++) {
        const point at = {x + r * section[i].x, foot + half * section[i].y};
        section[i] = turned(turned(at, quarter, f.chord), about, f.turn);
    }
    shape(s, blade, 4, solid);
    shape(s, section, 8, (lw_svg_stroke){.width = 2.0, .colour = LW_SIDE_INK, .fill = LW_SIDE_INK});
    keep_off(s, blade, 4);
}

static void draw_main(lw_side_view *s)
{
    const lw_boat *boat = s->of->boat;
    draw_fin(s, (fin){&boat->main_strut, &boat->main_foil, boat->linkage.pin_pivot_height,
                      s->at.strut_turn, s->of->craft->pin_middle});
}

static void draw_rudder(lw_side_view *s)
{
    const lw_boat *boat = s->of->boat;
    const double wound = lw_craft_rudder(s->of->craft, s->of->flight->turns);
    draw_fin(s, (fin){&boat->rudder_strut, &boat->rudder_foil, 0.0, 0.0, wound});
}

// The middle of the sailor as measured; head, back, thigh, and shin ahead of it.
static void draw_sailor(lw_side_view *s)
{
    const lw_hull *hull = &s->of->boat->hull;
    const double x = s->of->flight->place_x, seat = hull->rack_height;
    const point body[] = {{x - 0.09, seat},        {x - 0.13, seat + 0.36}, {x - 0.07, seat + 0.48},
                          {x + 0.07, seat + 0.48}, {x + 0.13, seat + 0.36}, {x + 0.09, seat + 0.14},
                          {x + 0.34, seat + 0.1},  {x + 0.34, seat}};
    point head[12];
    for (int i = 0; i < 12; i++) {
        const double angle = i * LW_PI / 6.0;
        head[i] = (point){x + 0.01 + 0.11 * lw_cos(angle), seat + 0.62 + 0.11 * lw_sin(angle)};
    }
    shape(s, body, 8, (lw_svg_stroke){.width = 1.2, .colour = LW_SIDE_INK, .fill = "#ddd"});
    shape(s, head, 12, (lw_svg_stroke){.width = 1.2, .colour = LW_SIDE_INK, .fill = "#ddd"});
    keep_off(s, body, 8);
}

static void draw_racks(lw_side_view *s)
{
    const lw_place *place = &s->of->boat->place;
    const double seat = s->of->boat->hull.rack_height;
    const point rack[] = {{place->aft_x - 0.25, seat}, {place->forward_x + 0.25, seat}};
    line(s, rack[0], rack[1], (lw_svg_stroke){.width = 3.0, .colour = LW_SIDE_INK});
    keep_off(s, rack, 2);
}

static point wand_tip(const lw_side_view *s)
{
    const lw_linkage *l = &s->of->boat->linkage;
    const double angle = s->of->flight->wand;
    return (point){l->wand_x - l->wand_length * lw_sin(angle),
                   l->wand_height - l->wand_length * lw_cos(angle)};
}

static void draw_wand(lw_side_view *s)
{
    const lw_linkage *l = &s->of->boat->linkage;
    const point pivot = {l->wand_x, l->wand_height}, tip = wand_tip(s);
    line(s, pivot, tip, (lw_svg_stroke){.width = 2.4, .colour = LW_SIDE_INK});
    lw_labels_keep_off_line(&s->labels, lw_side_on(s, pivot.x, pivot.y),
                            lw_side_on(s, tip.x, tip.y), 2.0);
}

static void draw_part(lw_side_view *s, const char *name, void (*draw)(lw_side_view *))
{
    lw_svg_group(s->out, name);
    draw(s);
    lw_svg_group_end(s->out);
}

void lw_side_boat(lw_side_view *s)
{
    draw_part(s, "rig", draw_rig);
    draw_part(s, "main", draw_main);
    draw_part(s, "rudder", draw_rudder);
    draw_part(s, "hull", draw_hull);
    draw_part(s, "sailor", draw_sailor);
    draw_part(s, "racks", draw_racks);
    draw_part(s, "wand", draw_wand);
}
