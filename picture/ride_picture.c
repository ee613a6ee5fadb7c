// ride_picture.c - a ride as curves over time: wind, ride height, pitch, flap, and what happened.
// SPDX-License-Identifier: MIT

#include "picture/ride_picture.h"

#include <math.h>
#include <string.h>

#include "picture/plot.h"
#include "records/fault.h"

#define WIDTH       1040.0
#define LEFT        56.0
#define PANEL       78.0  // [px] high
#define GAP         26.0  // between panels
#define ABOVE       72.0  // for the letters of events
#define HEAD        96.0
#define STRIP_LEAST 150.0  // [s] that a strip takes, one below the other
#define STRIPS_MOST 8
#define POINTS_MOST 2000  // of a curve in a strip
#define STAGGER     4     // letters one above the other

// One letter an event, in the order of the list.
static const char letters[] = "LTDBbVvSsOWPFXQA";
_Static_assert(sizeof letters == LW_RIDE_EVENTS + 1, "every event has a letter");

typedef struct panel {
    const char *says;
    size_t members[2];  // of lw_trace; the second is the thinner curve behind
    int count;
    double unit, low, high;  // bounds of what is shown
    double lines[3];         // dashed; NAN: none
} panel;

#define MEMBER(name) (offsetof(lw_trace, name))
#define PANELS       4

typedef struct picture {
    FILE *out;
    const lw_ride_drawn *of;
    panel panels[PANELS];
    double strip;  // [s]
} picture;

static double value_of(const lw_trace *row, size_t member, double unit)
{
    const void *place = (const char *)row + member;
    return *(const double *)place / unit;
}

static void set_panels(picture *p)
{
    const lw_wind *wind = &p->of->wind;
    const lw_linkage *linkage = p->of->linkage;
    const panel panels[PANELS] = {
        {"wind [kn]; dashed: lull, mean, puff",
         {MEMBER(wind)},
         1,
         LW_KN,
         0.0,
         60.0,
         {wind->lull / LW_KN, wind->mean / LW_KN, wind->puff / LW_KN}},
        {"hull above the mean water, and the water under it [cm]",
         {MEMBER(ride_height), MEMBER(surface)},
         2,
         0.01,
         -60.0,
         150.0,
         {NAN, NAN, NAN}},
        {"pitch, bow up [°]", {MEMBER(pitch)}, 1, LW_DEG, -30.0, 30.0, {NAN, NAN, NAN}},
        {"flap, trailing edge down [°]; dashed: its stops",
         {MEMBER(flap)},
         1,
         LW_DEG,
         -60.0,
         60.0,
         {linkage->flap_up_stop / LW_DEG, NAN, linkage->flap_down_stop / LW_DEG}}};
    for (int i = 0; i < PANELS; i++) p->panels[i] = panels[i];
}

// The axis that all strips share.
static lw_axis axis_of(const picture *p, const panel *of)
{
    double low = INFINITY, high = -INFINITY;
    for (size_t k = 0; k < p->of->row_count; k++) {
        for (int m = 0; m < of->count; m++) {
            const double value = value_of(&p->of->rows[k], of->members[m], of->unit);
            low = fmin(low, value), high = fmax(high, value);
        }
    }
    for (int i = 0; i < 3; i++) {
        if (isfinite(of->lines[i])) low = fmin(low, of->lines[i]), high = fmax(high, of->lines[i]);
    }
    return lw_axis_over(fmax(low, of->low), fmin(high, of->high), 4, "");
}

static void draw_curve(const picture *p, const lw_plot *plot, const panel *of, int member)
{
    double x[POINTS_MOST], y[POINTS_MOST];
    int count = 0;
    const size_t rows = p->of->row_count;
    const double span = plot->x.high - plot->x.low;
    const double per_row = rows > 1 ? p->of->rows[1].time - p->of->rows[0].time : 1.0;
    const size_t stride = 1 + (size_t)(span / per_row / (POINTS_MOST - 2));
    for (size_t k = 0; k < rows && count < POINTS_MOST; k += stride) {
        const lw_trace *row = &p->of->rows[k];
        if (row->time < plot->x.low || row->time > plot->x.high + per_row) continue;
        x[count] = fmin(row->time, plot->x.high);
        const double value = value_of(row, of->members[member], of->unit);
        y[count++] = fmin(fmax(value, plot->y.low), plot->y.high);
    }
    lw_plot_curve(plot, x, y, count, member == 0 ? 0 : 2);
}

static void draw_panel(const picture *p, const lw_plot *plot, const panel *of)
{
    lw_plot_frame(plot);
    for (int i = 0; i < 3; i++) {
        if (!isfinite(of->lines[i])) continue;
        lw_svg_line(plot->out, lw_plot_place(plot, plot->x.low, of->lines[i]),
                    lw_plot_place(plot, plot->x.high, of->lines[i]),
                    (lw_svg_stroke){.width = 1.0, .colour = "#888", .dashes = "5 4"});
    }
    for (int m = of->count - 1; m >= 0; m--) draw_curve(p, plot, of, m);
    lw_svg_text(plot->out, (lw_svg_point){plot->corner.x, plot->corner.y - 6.0},
                (lw_svg_words){.size = 11.0, .colour = "#333"}, of->says);
}

// Time lying still after a swim, as a grey field behind the curves.
static void draw_swim(const picture *p, const lw_plot *plot, double from, double to, double height)
{
    const double a = fmax(from, plot->x.low), b = fmin(to, plot->x.high);
    if (!(b > a)) return;
    const double left = lw_plot_place(plot, a, plot->y.low).x;
    const double right = lw_plot_place(plot, b, plot->y.low).x, top = plot->corner.y;
    const lw_svg_point field[] = {
        {left, top}, {right, top}, {right, top + height}, {left, top + height}, {left, top}};
    lw_svg_path(p->out, field, 5,
                (lw_svg_stroke){.width = 0.0, .colour = "none", .fill = "#e9e9e9"});
}

static void draw_swims(const picture *p, const lw_plot *plot, double height)
{
    const lw_ride *ride = p->of->ride;
    for (size_t i = 0; i < ride->event_count; i++) {
        if (!lw_ride_event_is_swim(ride->events[i].what)) continue;
        double to = ride->tally.seconds;
        for (size_t k = i + 1; k < ride->event_count && to == ride->tally.seconds; k++) {
            if (ride->events[k].what == LW_RIDE_AGAIN) to = ride->events[k].at.time;
        }
        draw_swim(p, plot, ride->events[i].at.time, to, height);
    }
}

// A line through all panels, its letter above; letters close together stand one above the other.
static void draw_events(const picture *p, const lw_plot *plot, double height)
{
    const lw_ride *ride = p->of->ride;
    double last[STAGGER];
    for (int i = 0; i < STAGGER; i++) last[i] = -INFINITY;
    for (size_t i = 0; i < ride->event_count; i++) {
        const lw_ride_event *event = &ride->events[i];
        const double time = event->at.time;
        if (time < plot->x.low || time >= plot->x.high) continue;
        const double x = lw_plot_place(plot, time, plot->y.low).x, y = plot->corner.y;
        const bool is_swim = lw_ride_event_is_swim(event->what);
        const char letter[] = {letters[event->what], '\0'};
        int row = 0;
        while (row < STAGGER - 1 && x - last[row] < 9.0) row++;
        last[row] = x;
        lw_svg_line(p->out, (lw_svg_point){x, y - 18.0 - 12.0 * row}, (lw_svg_point){x, y + height},
                    (lw_svg_stroke){.width = is_swim ? 1.6 : 0.6, .colour = "#b03030"});
        lw_svg_text(p->out, (lw_svg_point){x, y - 21.0 - 12.0 * row},
                    (lw_svg_words){.size = 12.0, .anchor = "middle", .colour = "#b03030"}, letter);
    }
}

static double strip_height(void) { return ABOVE + PANELS * (PANEL + GAP) + 28.0; }

static void draw_strip(const picture *p, int strip)
{
    const double from = strip * p->strip, to = fmin(from + p->strip, p->of->ride->tally.seconds);
    const double height = PANELS * (PANEL + GAP) - GAP;
    lw_plot plot = {.out = p->out,
                    .width = (WIDTH - LEFT - 20.0) * (to - from) / p->strip,
                    .height = PANEL,
                    .x = lw_axis_over(from, to, 10, NULL)};
    plot.x.low = from, plot.x.high = to;
    plot.corner = (lw_svg_point){LEFT, HEAD + strip * strip_height() + ABOVE};
    const lw_svg_point top = plot.corner;
    draw_swims(p, &plot, height);
    for (int i = 0; i < PANELS; i++) {
        plot.corner.y = top.y + i * (PANEL + GAP);
        plot.y = axis_of(p, &p->panels[i]);
        if (i == PANELS - 1) plot.x.label = "";
        draw_panel(p, &plot, &p->panels[i]);
    }
    plot.corner = top;
    draw_events(p, &plot, height);
}

// What the letters stand for, those that occur, three to a line.
static void draw_key(FILE *out, const lw_ride *ride, double top)
{
    int shown = 0;
    for (int what = 0; what < LW_RIDE_EVENTS; what++) {
        if (ride->tally.count[what] == 0.0) continue;
        char text[80];
        LW_FIT(text, "%c: %s (%.0f)", letters[what], lw_ride_event_text((lw_ride_what)what),
               ride->tally.count[what]);
        const int column = shown % 3, line = shown / 3;
        lw_svg_text(out, (lw_svg_point){LEFT + 325.0 * column, top + 18.0 * line},
                    (lw_svg_words){.size = 13.0}, text);
        shown++;
    }
}

#define LINE 135  // characters across the picture

// Words from the left edge, in as many lines as they need; returns where the next would stand.
static double draw_words(FILE *out, double y, const char *text)
{
    const lw_svg_words words = {.size = 13.0};
    while (*text) {
        char line[LINE + 1];
        size_t length = strlen(text);
        if (length > LINE) {
            length = LINE;
            while (length > 1 && text[length] != ' ') length--;
        }
        memcpy(line, text, length);
        line[length] = '\0';
        lw_svg_text(out, (lw_svg_point){LEFT, y}, words, line);
        text += length + strspn(text + length, " ");
        y += 18.0;
    }
    return y;
}

static void draw_head(FILE *out, const lw_ride_drawn *drawn)
{
    double y = draw_words(out, 24.0, drawn->scene);
    y = draw_words(out, y, drawn->trim);
    draw_words(out, y, drawn->sum);
}

void lw_ride_draw(FILE *out, const lw_ride_drawn *drawn)
{
    picture p = {.out = out, .of = drawn};
    const double seconds = drawn->ride->tally.seconds;
    p.strip = fmin(fmax(STRIP_LEAST, ceil(seconds / STRIPS_MOST)), seconds);
    const int strips = (int)ceil(seconds / p.strip - 1e-9);
    const double below = HEAD + strips * strip_height() + 24.0;
    set_panels(&p);
    lw_svg_begin(out, WIDTH, below + 110.0, drawn->scene);
    draw_head(out, drawn);
    for (int i = 0; i < strips; i++) draw_strip(&p, i);
    draw_key(out, drawn->ride, below);
    lw_svg_text(out, (lw_svg_point){LEFT, below + 96.0},
                (lw_svg_words){.size = 12.0, .colour = "#555"},
                "Time in seconds. Grey: lying still after a swim.");
    lw_svg_end(out);
}
