// track_picture.c - a track as pictures: its map by speed, speed over time, speed by angle.
// SPDX-License-Identifier: MIT

#include "picture/track_picture.h"

#include <math.h>

#include "lullwise/elementary.h"
#include "picture/labels.h"
#include "picture/plot.h"
#include "records/fault.h"

#define WIDTH  1040.0
#define LEFT   60.0
#define HEAD   92.0
#define MAP    560.0  // [px] high, and as wide at most
#define PANEL  190.0  // of speed over time
#define KEY    700.0  // [px] where what stands beside the map begins
#define FINE   0.7    // [px] from point to point
#define RUN    600    // points of a path
#define INK    "#222"
#define FLIGHT "#dbe7f0"
#define FALL   "#b03030"

// From slow to fast: darker to lighter, for those who see few colours too; viridis without its
// lightest end [viridis].
static const char *const colours[] = {"#440154", "#472d7b", "#3b528b", "#2c728e",
                                      "#21918c", "#28ae80", "#5ec962", "#addc30"};
#define COLOURS ((int)(sizeof colours / sizeof colours[0]))

typedef struct picture {
    FILE *out;
    const lw_track_drawn *of;
    double fastest, unit;  // [m/s] the scale's end; one of the unit
    double scale;          // [px/m] of the map
    double east, north;    // [m] its middle
    lw_svg_point middle;   // [px]
} picture;

// --- the map

static void set_map(picture *p)
{
    const lw_track *track = p->of->track;
    double west = INFINITY, east = -INFINITY, south = INFINITY, north = -INFINITY;
    for (size_t i = 0; i < track->count; i++) {
        west = fmin(west, track->fixes[i].east), east = fmax(east, track->fixes[i].east);
        south = fmin(south, track->fixes[i].north), north = fmax(north, track->fixes[i].north);
        p->fastest = fmax(p->fastest, track->ways[i].speed);
    }
    const double step = ceil(2.0 * p->fastest / COLOURS / p->unit) / 2.0;  // of whole halves
    p->fastest = COLOURS * step * p->unit;
    p->east = 0.5 * (west + east);
    p->north = 0.5 * (south + north);
    p->scale = (MAP - 30.0) / fmax(fmax(east - west, north - south), 10.0);
    p->middle = (lw_svg_point){LEFT + 0.5 * MAP, HEAD + 0.5 * MAP};
}

static lw_svg_point at_fix(const picture *p, size_t i)
{
    const lw_fix *fix = &p->of->track->fixes[i];
    return (lw_svg_point){p->middle.x + p->scale * (fix->east - p->east),
                          p->middle.y - p->scale * (fix->north - p->north)};
}

static int colour_of(const picture *p, double speed)
{
    const int colour = (int)(COLOURS * speed / p->fastest);
    return colour < COLOURS ? colour : COLOURS - 1;
}

typedef struct run {
    lw_svg_point points[RUN];
    int count, colour;
    double width;
} run;

static void end_run(const picture *p, run *r)
{
    if (r->count > 1)
        lw_svg_path(p->out, r->points, r->count,
                    (lw_svg_stroke){.width = r->width, .colour = colours[r->colour]});
    r->count = 0;
}

static bool is_near(lw_svg_point a, lw_svg_point b)
{
    return fabs(a.x - b.x) < FINE && fabs(a.y - b.y) < FINE;
}

// Paths of one colour, each from where the last ended.
static void draw_track(const picture *p)
{
    const lw_track *track = p->of->track;
    run r = {.width = 1.8};
    for (size_t i = 0; i < track->count; i++) {
        const lw_svg_point at = at_fix(p, i);
        const int colour = colour_of(p, track->ways[i].speed);
        if (track->ways[i].starts) end_run(p, &r);
        if (r.count && colour == r.colour && is_near(at, r.points[r.count - 1])) continue;
        if (r.count && (colour != r.colour || r.count == RUN)) {
            const lw_svg_point last = r.points[r.count - 1];
            end_run(p, &r);
            r.points[r.count++] = last;
        }
        r.points[r.count++] = at;
        r.colour = colour;
    }
    end_run(p, &r);
}

static void draw_frame(const picture *p)
{
    const double right = LEFT + MAP, bottom = HEAD + MAP;
    const lw_svg_point corners[] = {
        {LEFT, HEAD}, {right, HEAD}, {right, bottom}, {LEFT, bottom}, {LEFT, HEAD}};
    lw_svg_path(p->out, corners, 5, (lw_svg_stroke){.width = 0.8, .colour = "#999"});
}

static void mark(const picture *p, lw_svg_point at, double size, lw_svg_stroke how)
{
    const lw_svg_point corners[] = {{at.x - size, at.y - size},
                                    {at.x + size, at.y - size},
                                    {at.x + size, at.y + size},
                                    {at.x - size, at.y + size},
                                    {at.x - size, at.y - size}};
    lw_svg_path(p->out, corners, 5, how);
}

// A red box where she seems to have swum, a hollow one where she stopped.
static void draw_stops(const picture *p)
{
    const lw_track_events *events = p->of->events;
    for (size_t i = 0; i < events->count; i++) {
        const lw_track_what what = events->list[i].what;
        if (what != LW_TRACK_SWIM && what != LW_TRACK_STOP) continue;
        mark(p, at_fix(p, events->list[i].fix), 3.5,
             (lw_svg_stroke){
                 .width = 1.2, .colour = FALL, .fill = what == LW_TRACK_SWIM ? FALL : "white"});
    }
}

// A length of 1, 2 or 5 with zeros, about a quarter of the map.
static double ruler_of(const picture *p)
{
    const lw_axis axis = lw_axis_over(0.0, MAP / p->scale, 4, NULL);
    return axis.step;
}

static void draw_ruler(const picture *p)
{
    char text[40];
    const double metres = ruler_of(p), length = metres * p->scale, y = HEAD + 206.0;
    LW_FIT(text, "%g %s", metres < 1000.0 ? metres : metres / 1000.0, metres < 1000.0 ? "m" : "km");
    lw_svg_line(p->out, (lw_svg_point){KEY, y}, (lw_svg_point){KEY + length, y},
                (lw_svg_stroke){.width = 2.0, .colour = INK});
    lw_svg_text(p->out, (lw_svg_point){KEY, y - 6.0}, (lw_svg_words){.size = 12.0}, text);
}

// --- beside the map

static void draw_arrow(const picture *p, lw_svg_point middle, double to, const char *colour)
{
    const lw_svg_stroke line = {.width = 2.0, .colour = colour};
    const double x = lw_sin(to), y = -lw_cos(to), half = 24.0, head = 9.0;
    const lw_svg_point tip = {middle.x + half * x, middle.y + half * y};
    const lw_svg_point neck = {tip.x - head * x, tip.y - head * y};
    lw_svg_line(p->out, (lw_svg_point){middle.x - half * x, middle.y - half * y}, tip, line);
    const lw_svg_point sides[] = {
        {neck.x - 0.5 * head * y, neck.y + 0.5 * head * x},
        tip,
        {neck.x + 0.5 * head * y, neck.y - 0.5 * head * x},
    };
    lw_svg_path(p->out, sides, 3, line);
}

static void draw_arrows(const picture *p)
{
    const lw_svg_words words = {.size = 12.0, .anchor = "middle"};
    draw_arrow(p, (lw_svg_point){KEY + 30.0, HEAD + 40.0}, 0.0, INK);
    lw_svg_text(p->out, (lw_svg_point){KEY + 30.0, HEAD + 86.0}, words, "north");
    if (isnan(p->of->from)) return;
    draw_arrow(p, (lw_svg_point){KEY + 120.0, HEAD + 40.0}, p->of->from + LW_PI, "#0072b2");
    lw_svg_text(p->out, (lw_svg_point){KEY + 120.0, HEAD + 86.0}, words, "wind blows");
}

static void draw_scale(const picture *p)
{
    char text[40];
    const double y = HEAD + 118.0, wide = 34.0;
    for (int c = 0; c <= COLOURS; c++) {
        const double x = KEY + wide * c;
        const lw_svg_point box[] = {{x, y}, {x + wide, y}, {x + wide, y + 14.0}, {x, y + 14.0}};
        if (c < COLOURS)
            lw_svg_path(p->out, box, 4,
                        (lw_svg_stroke){.width = 0.0, .colour = "none", .fill = colours[c]});
        LW_FIT(text, "%.3g", p->fastest * c / COLOURS / p->unit);
        lw_svg_text(p->out, (lw_svg_point){x, y + 28.0},
                    (lw_svg_words){.size = 12.0, .anchor = "middle"}, text);
    }
    LW_FIT(text, "speed over ground [%s]", lw_unit_text(p->of->unit));
    lw_svg_text(p->out, (lw_svg_point){KEY, y - 6.0}, (lw_svg_words){.size = 12.0}, text);
    const lw_svg_point swim = {KEY + 5.0, y + 46.0}, stop = {KEY + 185.0, y + 46.0};
    mark(p, swim, 3.5, (lw_svg_stroke){.width = 1.2, .colour = FALL, .fill = FALL});
    mark(p, stop, 3.5, (lw_svg_stroke){.width = 1.2, .colour = FALL, .fill = "white"});
    lw_svg_text(p->out, (lw_svg_point){KEY + 15.0, y + 50.0}, (lw_svg_words){.size = 12.0},
                "stop that looks like a swim");
    lw_svg_text(p->out, (lw_svg_point){KEY + 195.0, y + 50.0}, (lw_svg_words){.size = 12.0},
                "other stop");
}

// --- speed by angle

static double fastest_by_angle(const lw_track_drawn *of)
{
    double fastest = 0.0;
    for (int i = 0; i < LW_TRACK_ANGLES; i++) {
        if (of->angles[i].seconds >= 1.0) fastest = fmax(fastest, of->angles[i].fast);
        if (of->has_model) fastest = fmax(fastest, of->model[i]);
    }
    return fastest;
}

// In the middles of the angles; where nothing is known the curve has a gap.
static void draw_by_angle(const picture *p)
{
    char label[40];
    const lw_track_drawn *of = p->of;
    if (isnan(of->from)) return;
    double x[LW_TRACK_ANGLES], mean[LW_TRACK_ANGLES], fast[LW_TRACK_ANGLES], model[LW_TRACK_ANGLES];
    LW_FIT(label, "speed [%s]", lw_unit_text(of->unit));
    const double top = fastest_by_angle(of) / p->unit;
    const lw_plot plot = {.out = p->out,
                          .corner = {KEY + 10.0, HEAD + 246.0},
                          .width = WIDTH - KEY - 34.0,
                          .height = MAP - 290.0,
                          .x = lw_axis_over(0.0, 180.0, 6, "course from the wind [°]"),
                          .y = lw_axis_over(0.0, 1.25 * top, 5, label)};
    for (int i = 0; i < LW_TRACK_ANGLES; i++) {
        const bool is_there = of->angles[i].seconds >= 1.0;
        x[i] = 10.0 * i + 5.0;
        mean[i] = is_there ? of->angles[i].mean / p->unit : NAN;
        fast[i] = is_there ? of->angles[i].fast / p->unit : NAN;
        model[i] = of->has_model ? of->model[i] / p->unit : NAN;
    }
    lw_plot_frame(&plot);
    lw_plot_curve(&plot, x, mean, LW_TRACK_ANGLES, 0);
    lw_plot_curve(&plot, x, fast, LW_TRACK_ANGLES, 2);
    lw_plot_key(&plot, 0, 0, "mean");
    lw_plot_key(&plot, 1, 2, "fast");
    if (!of->has_model) return;
    lw_plot_curve(&plot, x, model, LW_TRACK_ANGLES, 1);
    lw_plot_key(&plot, 2, 1, "model");
}

// --- speed over time

// Every time flown as a field behind the curve.
static void draw_flights(const picture *p, const lw_plot *plot)
{
    const lw_track *track = p->of->track;
    for (size_t i = 0; i < track->count; i++) {
        if (!track->ways[i].flies) continue;
        const size_t first = i;
        while (i + 1 < track->count && track->ways[i + 1].flies && !track->ways[i + 1].starts) i++;
        const double from = track->fixes[first].time / 60.0, to = track->fixes[i].time / 60.0;
        const lw_svg_point field[] = {
            lw_plot_place(plot, from, plot->y.low), lw_plot_place(plot, to, plot->y.low),
            lw_plot_place(plot, to, plot->y.high), lw_plot_place(plot, from, plot->y.high)};
        lw_svg_path(p->out, field, 4,
                    (lw_svg_stroke){.width = 0.0, .colour = "none", .fill = FLIGHT});
    }
}

// Where many fixes stand in one column of pixels, its least and its most.
typedef struct column {
    double time, low, high;
    bool is_there;
} column;

static void put_column(const picture *p, const lw_plot *plot, run *r, const column *c)
{
    if (!c->is_there) return;
    if (r->count + 2 > RUN) {
        const lw_svg_point last = r->points[r->count - 1];
        end_run(p, r);
        r->points[r->count++] = last;
    }
    r->points[r->count++] = lw_plot_place(plot, c->time, c->low / p->unit);
    r->points[r->count++] = lw_plot_place(plot, c->time, c->high / p->unit);
}

static void draw_speeds(const picture *p, const lw_plot *plot)
{
    const lw_track *track = p->of->track;
    const double width = (plot->x.high - plot->x.low) / plot->width;
    run r = {.width = 0.8};
    column c = {.is_there = false};
    for (size_t i = 0; i < track->count; i++) {
        const double time = track->fixes[i].time / 60.0, speed = track->ways[i].speed;
        const bool is_new = track->ways[i].starts || !c.is_there || time - c.time > width;
        if (is_new) {
            put_column(p, plot, &r, &c);
            if (track->ways[i].starts) end_run(p, &r);
            c = (column){time, speed, speed, true};
        }
        c.low = fmin(c.low, speed), c.high = fmax(c.high, speed);
    }
    put_column(p, plot, &r, &c);
    end_run(p, &r);
}

static void draw_swims(const picture *p, const lw_plot *plot)
{
    const lw_track_events *events = p->of->events;
    for (size_t i = 0; i < events->count; i++) {
        if (events->list[i].what != LW_TRACK_SWIM) continue;
        const double time = events->list[i].time / 60.0;
        mark(p, lw_plot_place(plot, time, plot->y.low + 0.04 * (plot->y.high - plot->y.low)), 3.0,
             (lw_svg_stroke){.width = 1.0, .colour = FALL, .fill = FALL});
    }
}

static void draw_over_time(const picture *p)
{
    char label[40];
    const lw_track *track = p->of->track;
    const double minutes = track->fixes[track->count - 1].time / 60.0;
    LW_FIT(label, "speed [%s]", lw_unit_text(p->of->unit));
    lw_plot plot = {.out = p->out,
                    .corner = {LEFT, HEAD + MAP + 44.0},
                    .width = WIDTH - LEFT - 20.0,
                    .height = PANEL,
                    .x = lw_axis_over(0.0, minutes, 12, "minutes from the first fix"),
                    .y = lw_axis_over(0.0, p->fastest / p->unit, 5, label)};
    draw_flights(p, &plot);
    lw_plot_frame(&plot);
    draw_speeds(p, &plot);
    draw_swims(p, &plot);
    for (int i = 0; i < 2; i++) {
        const double limit = (i ? p->of->limits.down : p->of->limits.up) / p->unit;
        if (limit > plot.y.high) continue;
        lw_svg_line(p->out, lw_plot_place(&plot, plot.x.low, limit),
                    lw_plot_place(&plot, plot.x.high, limit),
                    (lw_svg_stroke){.width = 0.8, .colour = "#555", .dashes = "5 4"});
    }
    lw_svg_text(p->out, (lw_svg_point){LEFT, plot.corner.y - 8.0}, (lw_svg_words){.size = 12.0},
                "Shaded: flying. Dashed: from where she flies, and below which she has come down.");
}

void lw_track_draw(FILE *out, const lw_track_drawn *drawn)
{
    picture p = {.out = out, .of = drawn, .fastest = LW_KN, .unit = lw_unit_in_si(drawn->unit)};
    const lw_svg_words words = {.size = 13.0, .room = WIDTH - LEFT - 20.0};
    set_map(&p);
    lw_svg_begin(out, WIDTH, HEAD + MAP + PANEL + 100.0, drawn->head);
    const double down = lw_words_wrapped(out, (lw_svg_point){LEFT, 24.0}, words, drawn->head);
    lw_words_wrapped(out, (lw_svg_point){LEFT, 24.0 + down}, words, drawn->wind);
    draw_frame(&p);
    draw_track(&p);
    draw_stops(&p);
    draw_ruler(&p);
    draw_arrows(&p);
    draw_scale(&p);
    draw_by_angle(&p);
    draw_over_time(&p);
    lw_svg_end(out);
}
