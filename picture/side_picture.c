// side_picture.c - the boat from the side in flight, to scale, with the forces on her.
// SPDX-License-Identifier: MIT

#include "picture/side_picture.h"

#include <assert.h>
#include <math.h>

#include "lullwise/drawn.h"
#include "lullwise/elementary.h"
#include "picture/labels.h"
#include "records/fault.h"

#define ALONE      720.0  // [px] wide, one alone
#define BESIDE     520.0  // and each of several
#define MARGIN     12.0
#define LETTERS    13.0
#define WORDS_MOST 16
#define WEIGHT     0.8  // [m] that boat and sailor together are drawn long as a force
#define LONGEST    0.9  // [m] that a force along may be
#define HULL       "#f4f4f4"
#define SEA        "#e3edf2"
#define GREY       "#777"
#define INK        "#111"

// A flight that is being drawn. In the boat x is forward from the transom and z up from the hull's
// bottom at the main strut; on the page x the same and z up from the water.
typedef struct side {
    FILE *out;
    const lw_side_drawn *of;
    lw_craft_drawn at;
    double left, right, top, bottom;  // [m] of the page
    double scale;                     // [px/m]
    lw_svg_point corner;              // [px]
    lw_labels labels;
    size_t word_count;
    struct words {
        lw_svg_point near;
        char text[60];
    } words[WORDS_MOST];  // to be set once all else is drawn
} side;

typedef lw_svg_point point;  // in metres, z up

static const lw_svg_stroke solid = {.width = 1.4, .colour = INK, .fill = HULL};
static const lw_svg_stroke dark = {.width = 1.0, .colour = INK, .fill = INK};
static const lw_svg_stroke spar = {.width = 2.0, .colour = GREY};
static const lw_svg_stroke thin = {.width = 1.0, .colour = GREY};

// --- where things are

static point turned(point p, point about, double angle)
{
    const double c = lw_cos(angle), s = lw_sin(angle), x = p.x - about.x, z = p.y - about.y;
    return (point){about.x + x * c - z * s, about.y + x * s + z * c};
}

// Of a point of the boat on the page: heights shortened by heel, turned by pitch.
static point posed(const side *s, point p)
{
    const lw_flight *f = s->of->flight;
    const double x = p.x - s->of->boat->main_strut.x, upright = lw_cos(f->heel);
    const double c = lw_cos(f->pitch), sn = lw_sin(f->pitch);
    return (point){s->of->boat->main_strut.x + x * c - p.y * sn * upright,
                   f->ride_height + x * sn + p.y * c * upright};
}

static lw_svg_point pixel(const side *s, point p)
{
    return (lw_svg_point){s->corner.x + (p.x - s->left) * s->scale,
                          s->corner.y + (s->top - p.y) * s->scale};
}

static lw_svg_point on(const side *s, double x, double z)
{
    return pixel(s, posed(s, (point){x, z}));
}

static void line(const side *s, point from, point to, lw_svg_stroke how)
{
    lw_svg_line(s->out, on(s, from.x, from.y), on(s, to.x, to.y), how);
}

#define CORNERS_MOST 32
static void shape(const side *s, const point *corners, int count, lw_svg_stroke how)
{
    lw_svg_point points[CORNERS_MOST + 1] = {{0}};
    for (int i = 0; i < count; i++) points[i] = on(s, corners[i].x, corners[i].y);
    points[count] = points[0];
    lw_svg_path(s->out, points, count + 1, how);
}

// Its edge, for words to keep off.
static void keep_off(side *s, const point *corners, int count)
{
    for (int i = 0; i < count; i++) {
        const point to = corners[(i + 1) % count];
        lw_labels_keep_off_line(&s->labels, on(s, corners[i].x, corners[i].y), on(s, to.x, to.y),
                                1.0);
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

static void draw_hull(side *s)
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
static void draw_rig(side *s)
{
    const lw_rig *rig = &s->of->boat->rig;
    const double foot = 1.25 * rig->sail_area / rig->luff;
    const double mast = rig->centre_x + 0.35 * foot, head = rig->foot_height + rig->luff;
    const point tack = {mast, rig->foot_height}, clew = {mast - foot, rig->foot_height};
    point leech[BOW];
    int count;
    bend(leech, clew, (point){mast - 0.9 * foot, rig->foot_height + 0.5 * rig->luff},
         (point){mast, head});
    lw_svg_point edge[BOW + 2] = {on(s, tack.x, tack.y), on(s, clew.x, clew.y)};
    for (count = 2; count < BOW + 2; count++) {
        const point above = posed(s, leech[count - 2]);
        edge[count] = pixel(s, above);
        if (above.y > s->top) break;
    }
    if (count < BOW + 2) cut(&edge[count - 1], &edge[count], s->corner.y), count++;
    lw_svg_path(s->out, edge, count, thin);
    const lw_svg_point at_deck = on(s, mast, deck_of(s->of->boat));
    lw_svg_point at_top = on(s, mast, head);
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

static void draw_fin(side *s, fin f)
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
    shape(s, section, 8, (lw_svg_stroke){.width = 2.0, .colour = INK, .fill = INK});
    keep_off(s, blade, 4);
}

static void draw_foils(side *s)
{
    const lw_boat *boat = s->of->boat;
    const double wound = lw_craft_rudder(s->of->craft, s->of->flight->turns);
    draw_fin(s, (fin){&boat->main_strut, &boat->main_foil, boat->linkage.pin_pivot_height,
                      s->at.strut_turn, s->of->craft->pin_middle});
    draw_fin(s, (fin){&boat->rudder_strut, &boat->rudder_foil, 0.0, 0.0, wound});
}

// The middle of the sailor as measured; head, back, thigh, and shin ahead of it.
static void draw_sailor(side *s)
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
    shape(s, body, 8, (lw_svg_stroke){.width = 1.2, .colour = INK, .fill = "#ddd"});
    shape(s, head, 12, (lw_svg_stroke){.width = 1.2, .colour = INK, .fill = "#ddd"});
    const lw_place *place = &s->of->boat->place;
    const point rack[] = {{place->aft_x - 0.25, seat}, {place->forward_x + 0.25, seat}};
    line(s, rack[0], rack[1], (lw_svg_stroke){.width = 3.0, .colour = INK});
    keep_off(s, rack, 2);
    keep_off(s, body, 8);
}

static point wand_tip(const side *s)
{
    const lw_linkage *l = &s->of->boat->linkage;
    const double angle = s->of->flight->wand;
    return (point){l->wand_x - l->wand_length * lw_sin(angle),
                   l->wand_height - l->wand_length * lw_cos(angle)};
}

static void draw_wand(side *s)
{
    const lw_linkage *l = &s->of->boat->linkage;
    const point pivot = {l->wand_x, l->wand_height}, tip = wand_tip(s);
    line(s, pivot, tip, (lw_svg_stroke){.width = 2.4, .colour = INK});
    lw_labels_keep_off_line(&s->labels, on(s, pivot.x, pivot.y), on(s, tip.x, tip.y), 2.0);
}

static void draw_water(const side *s)
{
    const lw_svg_point from = pixel(s, (point){s->left, 0.0}),
                       to = pixel(s, (point){s->right, 0.0});
    const lw_svg_point deep = pixel(s, (point){s->right, s->bottom});
    const lw_svg_point sea[] = {from, to, deep, {from.x, deep.y}, from};
    lw_svg_path(s->out, sea, 5, (lw_svg_stroke){.width = 0.0, .colour = "none", .fill = SEA});
}

// Over the boat, so that it is seen what is under water.
static void draw_surface(side *s)
{
    const lw_svg_point from = pixel(s, (point){s->left, 0.0}),
                       to = pixel(s, (point){s->right, 0.0});
    lw_svg_line(s->out, from, to, (lw_svg_stroke){.width = 1.6, .colour = "#345"});
    lw_labels_keep_off_line(&s->labels, from, to, 1.0);
    if (!(s->at.trough > 0.0)) return;
    const lw_svg_point low = pixel(s, (point){s->left, -s->at.trough});
    lw_labels_keep_off_line(&s->labels, low, (lw_svg_point){to.x, low.y}, 1.0);
    lw_svg_line(s->out, low, (lw_svg_point){to.x, low.y},
                (lw_svg_stroke){.width = 0.8, .colour = "#345", .dashes = "3 4"});
}

// --- the words

static void say(side *s, lw_svg_point near, const char *text)
{
    assert(s->word_count < WORDS_MOST);
    s->words[s->word_count].near = near;
    LW_FIT(s->words[s->word_count].text, "%s", text);
    s->word_count++;
}

static void set_words(side *s)
{
    for (size_t i = 0; i < s->word_count; i++) {
        lw_labels_put(&s->labels, s->words[i].near, LETTERS, s->words[i].text);
    }
}

// --- the forces

// An arrow as long as a force, in pixels to the right and down; its words near its tip.
static void draw_arrow(side *s, lw_svg_point from, lw_svg_point by, const char *text)
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
    say(s, to, text);
}

// [m/N] of forces up and down; less where a foil lifts far more than the weight.
static double per_newton_up(const side *s)
{
    const lw_flight *f = s->of->flight;
    const double most = fmax(fabs(f->main_lift), fabs(f->rudder_lift));
    return WEIGHT / fmax(s->at.weight, most / 1.5);
}

static double per_newton(const side *s) { return per_newton_up(s) * s->scale; }

static double drag_of(const lw_flight *f) { return f->foil_drag + f->strut_drag + f->hull_drag; }

// Forces along are small: drawn five times as long as those up, or less where that is too long.
static double stretch(const side *s)
{
    const lw_flight *f = s->of->flight;
    const double most = fmax(fabs(f->drive), fabs(drag_of(f))) * per_newton_up(s);
    return 5.0 * most <= LONGEST ? 5.0 : 2.0 * most <= LONGEST ? 2.0 : 1.0;
}

static void draw_up(side *s, lw_svg_point at, double force, const char *name)
{
    char text[60];
    LW_FIT(text, "%s %.0f N", name, fabs(force));
    draw_arrow(s, at, (lw_svg_point){0.0, -force * per_newton(s)}, text);
}

static void draw_along(side *s, lw_svg_point at, double force, const char *name)
{
    char text[60];
    LW_FIT(text, "%s %.0f N", name, fabs(force));
    draw_arrow(s, at, (lw_svg_point){force * per_newton(s) * stretch(s), 0.0}, text);
}

static void draw_weights(side *s)
{
    char text[60];
    const lw_craft *c = s->of->craft;
    const double up = c->main_strut.length, g = LW_GRAVITY;
    const double boat = c->hull_mass * g, body = c->body_mass * g;
    const lw_svg_point hull = on(s, c->hull_x - c->transom_x, c->hull_z - up);
    const lw_svg_point sailor = on(s, s->of->flight->place_x, c->body_z - up);
    LW_FIT(text, "boat %.0f N", boat);
    draw_arrow(s, hull, (lw_svg_point){0.0, boat * per_newton(s)}, text);
    LW_FIT(text, "sailor %.0f N", body);
    draw_arrow(s, sailor, (lw_svg_point){0.0, body * per_newton(s)}, text);
}

static void draw_forces(side *s)
{
    const lw_boat *boat = s->of->boat;
    const lw_flight *f = s->of->flight;
    const lw_svg_point main = on(s, boat->main_strut.x, -boat->main_strut.length);
    const lw_svg_point rudder = on(s, boat->rudder_strut.x, -boat->rudder_strut.length);
    draw_weights(s);
    draw_up(s, main, f->main_lift, f->main_lift < 0.0 ? "pulls down" : "lift");
    draw_up(s, rudder, f->rudder_lift, f->rudder_lift < 0.0 ? "pulls down" : "lift");
    if (f->buoyancy > 0.5) draw_up(s, on(s, 0.45 * boat->hull.length, 0.0), f->buoyancy, "hull");
    draw_along(s, on(s, s->at.sail_x, s->at.sail_height), f->drive, "drive");
    draw_along(s, main, -drag_of(f), "drag");
}

// --- heights and angles

// Depth of a foil's middle under water, beneath it.
static void tell_depth(side *s, const lw_strut *strut)
{
    char text[60];
    const point foot = posed(s, (point){strut->x, -strut->length});
    lw_svg_point under = pixel(s, foot);
    if (foot.y >= 0.0) return;
    LW_FIT(text, "%.0f cm deep", -100.0 * foot.y);
    under.y += 6.0;
    say(s, under, text);
}

// From the water to the hull, where nothing else is: between the main strut and the wand.
static void tell_height(side *s)
{
    char text[60];
    const lw_svg_point hull = on(s, 0.62 * s->of->boat->hull.length, 0.0);
    const lw_svg_point water = {hull.x, pixel(s, (point){0.0, 0.0}).y}, ends[] = {hull, water};
    if (water.y - hull.y < 4.0) return;
    lw_svg_line(s->out, hull, water, thin);
    for (int i = 0; i < 2; i++) {
        lw_svg_line(s->out, (lw_svg_point){ends[i].x - 5.0, ends[i].y},
                    (lw_svg_point){ends[i].x + 5.0, ends[i].y}, thin);
    }
    lw_labels_keep_off_line(&s->labels, hull, water, 2.0);
    LW_FIT(text, "%.0f cm up", 100.0 * s->of->flight->ride_height);
    say(s, (lw_svg_point){hull.x, 0.5 * (hull.y + water.y)}, text);
}

static void tell_wand(side *s)
{
    char text[60];
    const lw_linkage *l = &s->of->boat->linkage;
    LW_FIT(text, "wand %.0f°", s->of->flight->wand / LW_DEG);
    say(s, on(s, l->wand_x, l->wand_height), text);
}

// "bow 1.3° up"; the last of the ways where it reads 0.
static void fit_way(char text[60], const char *name, double angle, const char *const ways[3])
{
    const double degrees = fabs(angle) / LW_DEG;
    if (degrees < 0.05)
        lw_text_fit(text, 60, "%s %s", name, ways[2]);
    else
        lw_text_fit(text, 60, "%s %.1f° %s", name, degrees, ways[angle < 0.0]);
}

// What is held and how the flap stands, in the upper left corner.
static void tell_trim(side *s)
{
    static const char *const up[] = {"up", "down", "level"};
    static const char *const down[] = {"down", "up", "in line"};
    static const char *const windward[] = {"to windward", "to leeward", "none"};
    const lw_flight *f = s->of->flight;
    const lw_box *bounds = &s->labels.bounds;
    char text[4][60];
    fit_way(text[0], "bow", f->pitch, up);
    fit_way(text[1], "heel", f->heel, windward);
    fit_way(text[2], "flap", f->flap, down);
    LW_FIT(text[3], "rudder lift %+.1f turns", f->turns);
    for (int i = 0; i < 4; i++) {
        const lw_svg_point at = {bounds->left + 4.0, bounds->top + (i + 1) * 1.35 * LETTERS};
        lw_svg_text(s->out, at, (lw_svg_words){.size = LETTERS, .colour = INK}, text[i]);
    }
    lw_labels_keep_off(&s->labels, (lw_box){bounds->left, bounds->top, bounds->left + 15 * LETTERS,
                                            bounds->top + 5.8 * LETTERS});
}

// 1, 2 or 5 times a power of ten, at most this.
static double even(double x)
{
    double power = 1e-3;
    while (10.0 * power <= x) power *= 10.0;
    return power * (5.0 * power <= x ? 5.0 : 2.0 * power <= x ? 2.0 : 1.0);
}

// How long a force is drawn, up and along, in the upper right corner.
static void draw_key(side *s)
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

// --- the picture

// Of a foil, or of the tip of the arrow with which it pulls down.
static double depth_of(const side *s, const lw_strut *strut, double lift)
{
    return posed(s, (point){strut->x, -strut->length}).y + fmin(lift, 0.0) * per_newton_up(s);
}

static double deepest(const side *s)
{
    const lw_flight *f = s->of->flight;
    return fmin(depth_of(s, &s->of->boat->main_strut, f->main_lift),
                depth_of(s, &s->of->boat->rudder_strut, f->rudder_lift));
}

static side side_of(FILE *out, const lw_side_drawn *of, lw_svg_point corner, double width)
{
    const lw_boat *boat = of->boat;
    const lw_craft *craft = of->craft;
    const double incidence = boat->pins[of->pin].incidence;
    side s = {.out = out, .of = of, .corner = corner};
    s.at = lw_craft_drawn_of(craft, incidence, of->flight->place_x + craft->transom_x,
                             of->flight->wind);
    s.left = fmin(boat->rudder_strut.x - boat->rudder_strut.chord, 0.0) - 0.45;
    s.right = fmax(boat->hull.length, boat->linkage.wand_x) + 0.4;
    s.top = s.at.sail_height + 0.8;
    s.bottom = fmin(deepest(&s), 0.0) - 0.3;
    s.scale = width / (s.right - s.left);
    return s;
}

double lw_side_height(const lw_side_drawn *of, double width)
{
    if (!of->flight) return 0.0;
    const side s = side_of(NULL, of, (lw_svg_point){0.0, 0.0}, width);
    return (s.top - s.bottom) * s.scale;
}

void lw_side_draw_at(FILE *out, lw_svg_point corner, double width, const lw_side_drawn *of)
{
    if (!of->flight) return;
    side s = side_of(out, of, corner, width);
    const double height = (s.top - s.bottom) * s.scale;
    s.labels = (lw_labels){.out = out,
                           .bounds = {corner.x, corner.y, corner.x + width, corner.y + height}};
    draw_water(&s);
    draw_rig(&s);
    draw_foils(&s);
    draw_hull(&s);
    draw_sailor(&s);
    draw_wand(&s);
    draw_surface(&s);
    draw_key(&s);
    tell_height(&s);
    draw_forces(&s);
    tell_trim(&s);
    tell_depth(&s, &of->boat->main_strut);
    tell_depth(&s, &of->boat->rudder_strut);
    tell_wand(&s);
    set_words(&s);
}

// --- some of them side by side

#define NOTE                                                                                       \
    "To scale. Forces along are drawn longer than those up and down, as the arrows in the corner " \
    "say. Dashed: troughs of the chop."

static lw_svg_words head_words(double width)
{
    return (lw_svg_words){.size = LETTERS, .anchor = "start", .colour = INK, .room = width};
}

static lw_svg_words note_words(double width)
{
    return (lw_svg_words){
        .size = 0.85 * LETTERS, .anchor = "start", .colour = "#444", .room = width};
}

static double head_height(const lw_side_drawn *of, double width)
{
    return lw_words_wrapped(NULL, (lw_svg_point){0.0, 0.0}, head_words(width), of->head);
}

void lw_sides_draw(FILE *out, const lw_side_drawn *sides, size_t count, const char *title)
{
    const double each = count == 1 ? ALONE : BESIDE, columns = (double)count;
    const double width = columns * each + (columns - 1.0) * MARGIN;
    double above = 0.0, high = 0.0;
    for (size_t i = 0; i < count; i++) {
        above = fmax(above, head_height(&sides[i], each));
        high = fmax(high, lw_side_height(&sides[i], each));
    }
    const double top = MARGIN + above + MARGIN;
    const lw_svg_point below = {MARGIN, top + high};
    const double note = lw_words_wrapped(NULL, below, note_words(width), NOTE);
    lw_svg_begin(out, width + 2.0 * MARGIN, below.y + note + MARGIN, title);
    for (size_t i = 0; i < count; i++) {
        const double left = MARGIN + (double)i * (each + MARGIN);
        lw_words_wrapped(out, (lw_svg_point){left, MARGIN}, head_words(each), sides[i].head);
        lw_side_draw_at(out, (lw_svg_point){left, top}, each, &sides[i]);
    }
    if (high > 0.0) lw_words_wrapped(out, below, note_words(width), NOTE);
    lw_svg_end(out);
}
