// side_picture.c - the boat from the side in flight, to scale, with the forces on her.
// SPDX-License-Identifier: MIT

#include "picture/side_picture.h"

#include <math.h>

#include "lullwise/drawn.h"
#include "picture/side.h"

#define ALONE  720.0  // [px] wide, one alone
#define BESIDE 520.0  // and each of several
#define LEAST  340.0  // each of several that stand side by side
#define MARGIN 12.0
#define BELOW  42.0  // [px] of water below the foils, for words
#define SEA    "#e3edf2"

static void draw_water(const lw_side_view *s)
{
    const lw_svg_point from = lw_side_pixel(s, (lw_side_point){s->left, 0.0}),
                       to = lw_side_pixel(s, (lw_side_point){s->right, 0.0});
    const lw_svg_point deep = lw_side_pixel(s, (lw_side_point){s->right, s->bottom});
    const lw_svg_point sea[] = {from, to, deep, {from.x, deep.y}, from};
    lw_svg_path(s->out, sea, 5, (lw_svg_stroke){.width = 0.0, .colour = "none", .fill = SEA});
}

// Over the boat, so that it is seen what is under water.
static void draw_surface(lw_side_view *s)
{
    const lw_svg_point from = lw_side_pixel(s, (lw_side_point){s->left, 0.0}),
                       to = lw_side_pixel(s, (lw_side_point){s->right, 0.0});
    lw_svg_line(s->out, from, to, (lw_svg_stroke){.width = 1.6, .colour = "#345"});
    lw_labels_keep_off_line(&s->labels, from, to, 1.0);
    if (!(s->at.trough > 0.0)) return;
    const lw_svg_point low = lw_side_pixel(s, (lw_side_point){s->left, -s->at.trough});
    lw_labels_keep_off_line(&s->labels, low, (lw_svg_point){to.x, low.y}, 1.0);
    lw_svg_line(s->out, low, (lw_svg_point){to.x, low.y},
                (lw_svg_stroke){.width = 0.8, .colour = "#345", .dashes = "3 4"});
}

// --- the picture

// Of a foil, or of the tip of the arrow with which it pulls down.
static double depth_of(const lw_side_view *s, const lw_strut *strut, double lift)
{
    return lw_side_posed(s, (lw_side_point){strut->x, -strut->length}).y +
           fmin(lift, 0.0) * lw_side_per_newton(s);
}

static double deepest(const lw_side_view *s)
{
    const lw_flight *f = s->of->flight;
    return fmin(depth_of(s, &s->of->boat->main_strut, f->main_lift),
                depth_of(s, &s->of->boat->rudder_strut, f->rudder_lift));
}

static lw_side_view side_of(FILE *out, const lw_side_drawn *of, lw_svg_point corner, double width)
{
    const lw_boat *boat = of->boat;
    const lw_craft *craft = of->craft;
    const double incidence = boat->pins[of->pin].incidence;
    lw_side_view s = {.out = out, .of = of, .corner = corner};
    s.at = lw_craft_drawn_of(craft, incidence, of->flight->place_x + craft->transom_x,
                             of->flight->wind);
    s.left = fmin(boat->rudder_strut.x - boat->rudder_strut.chord, 0.0) - 0.45;
    s.right = fmax(boat->hull.length, boat->linkage.wand_x) + 0.4;
    s.top = s.at.sail_height + 0.8;
    s.scale = width / (s.right - s.left);
    s.bottom = fmin(deepest(&s), 0.0) - fmax(0.3, BELOW / s.scale);
    return s;
}

double lw_side_height(const lw_side_drawn *of, double width)
{
    if (!of->flight) return 0.0;
    const lw_side_view s = side_of(NULL, of, (lw_svg_point){0.0, 0.0}, width);
    return (s.top - s.bottom) * s.scale;
}

void lw_side_draw_at(FILE *out, lw_svg_point corner, double width, const lw_side_drawn *of)
{
    if (!of->flight) return;
    lw_side_view s = side_of(out, of, corner, width);
    const double height = (s.top - s.bottom) * s.scale;
    s.labels = (lw_labels){.out = out,
                           .bounds = {corner.x, corner.y, corner.x + width, corner.y + height}};
    draw_water(&s);
    lw_side_boat(&s);
    draw_surface(&s);
    lw_side_key(&s);
    lw_side_tell_height(&s);
    lw_side_tell_trim(&s);
    lw_side_tell_rest(&s);
    lw_side_forces(&s);
    lw_side_set_words(&s);
}

// --- the boat by herself

#define PER_METRE 100.0  // [px]
#define HIGH      100.0  // [m] above any mast

void lw_side_parts_draw(FILE *out, const lw_boat *boat, const lw_craft *craft)
{
    const lw_flight level = {0};
    const lw_side_drawn of = {.boat = boat, .craft = craft, .flight = &level};
    lw_side_view s = {
        .out = out, .of = &of, .top = HIGH, .scale = PER_METRE, .corner = {0.0, -HIGH * PER_METRE}};
    lw_svg_begin(out, PER_METRE * boat->hull.length, PER_METRE, "The boat from the side");
    lw_side_boat(&s);
    lw_svg_end(out);
}

// --- some of them side by side, or one under another

#define NOTE                                                                                       \
    "To scale. Forces along are drawn longer than those up and down, as the arrows in the corner " \
    "say. Dashed: troughs of the chop."

static lw_svg_words head_words(double width)
{
    return (lw_svg_words){
        .size = LW_SIDE_LETTERS, .anchor = "start", .colour = LW_SIDE_INK, .room = width};
}

static lw_svg_words note_words(double width)
{
    return (lw_svg_words){
        .size = 0.85 * LW_SIDE_LETTERS, .anchor = "start", .colour = "#444", .room = width};
}

static const lw_svg_point nowhere = {0.0, 0.0};

// How several are set: so many beside one another, so wide.
typedef struct layout {
    size_t columns;
    double each, width;
} layout;

static layout layout_of(const lw_sides_drawn *of)
{
    const double natural = of->count == 1 ? ALONE : BESIDE;
    const double wide =
        of->width > 0.0 ? of->width : (double)of->count * (natural + MARGIN) + MARGIN;
    const size_t most = (size_t)fmax((wide - MARGIN) / (LEAST + MARGIN), 1.0);
    const size_t columns = most < of->count ? 1 : of->count;
    return (layout){columns, (wide - MARGIN) / (double)columns - MARGIN, wide};
}

// Height of the words above those of a row, and of the row.
typedef struct row {
    double head, high;
} row;

static row row_of(const lw_sides_drawn *of, layout at, size_t first)
{
    row r = {0.0, 0.0};
    for (size_t i = first; i < first + at.columns && i < of->count; i++) {
        r.head =
            fmax(r.head, lw_words_wrapped(NULL, nowhere, head_words(at.each), of->sides[i].head));
        r.high = fmax(r.high, lw_side_height(&of->sides[i], at.each));
    }
    return r;
}

static double height_of(const lw_sides_drawn *of, layout at)
{
    double high = MARGIN;
    for (size_t i = 0; i < of->count; i += at.columns) {
        const row r = row_of(of, at, i);
        high += r.head + r.high + 2.0 * MARGIN;
    }
    return high - MARGIN;
}

static void draw_rows(FILE *out, const lw_sides_drawn *of, layout at)
{
    double top = MARGIN;
    for (size_t first = 0; first < of->count; first += at.columns) {
        const row r = row_of(of, at, first);
        for (size_t i = first; i < first + at.columns && i < of->count; i++) {
            const double left = MARGIN + (double)(i - first) * (at.each + MARGIN);
            lw_words_wrapped(out, (lw_svg_point){left, top}, head_words(at.each),
                             of->sides[i].head);
            lw_side_draw_at(out, (lw_svg_point){left, top + r.head + MARGIN}, at.each,
                            &of->sides[i]);
        }
        top += r.head + r.high + 2.0 * MARGIN;
    }
}

void lw_sides_draw(FILE *out, const lw_sides_drawn *of)
{
    const layout at = layout_of(of);
    const double room = at.width - 2.0 * MARGIN;
    const bool has_flight = of->sides[0].flight != NULL;
    const lw_svg_point below = {MARGIN, height_of(of, at)};
    const double note = lw_words_wrapped(NULL, below, note_words(room), NOTE);
    lw_svg_begin(out, at.width, below.y + note + MARGIN, of->title);
    draw_rows(out, of, at);
    if (has_flight) lw_words_wrapped(out, below, note_words(room), NOTE);
    lw_svg_end(out);
}

void lw_side_draw_alone(FILE *out, const lw_side_drawn *side, double width)
{
    lw_svg_begin(out, width, lw_side_height(side, width),
                 "The boat from the side, with the forces on her");
    lw_side_draw_at(out, nowhere, width, side);
    lw_svg_end(out);
}
