// section_picture.c - a picture of a section: its pressures, and its lift at every angle.
// SPDX-License-Identifier: MIT

#include "picture/section_picture.h"

#include <math.h>

#include "picture/plot.h"
#include "records/fault.h"

#define WIDTH  820.0
#define HEIGHT 860.0
#define LEFT   70.0
#define CURVES 4

// Which of the points have their pressures shown: spread over all that have an answer, the ends
// among them.
static int chosen(const lw_section_picture *p, int which[CURVES])
{
    int there[LW_PICTURE_POINTS_MOST], count = 0;
    for (int i = 0; i < p->count; i++) {
        if (isfinite(p->points[i].lift)) there[count++] = i;
    }
    const int most = count < CURVES ? count : CURVES;
    for (int i = 0; i < most; i++)
        which[i] = there[most > 1 ? (i * (count - 1) + (most - 1) / 2) / (most - 1) : 0];
    return most;
}

// The section to scale along the plot's chord, its top at a height of the page.
static void draw_outline(const lw_plot *plot, const lw_profile *profile, double top)
{
    lw_svg_point points[LW_NODES_MOST];
    const double chord = lw_plot_place(plot, 1.0, 0.0).x - lw_plot_place(plot, 0.0, 0.0).x;
    double most = -INFINITY;
    for (int i = 0; i < profile->count; i++) most = fmax(most, profile->y[i]);
    for (int i = 0; i < profile->count; i++) {
        points[i].x = lw_plot_place(plot, profile->x[i], 0.0).x;
        points[i].y = top + chord * (most - profile->y[i]);
    }
    lw_svg_path(plot->out, points, profile->count,
                (lw_svg_stroke){.width = 1.4, .colour = "#222", .fill = "#eef3f7"});
}

static void draw_pressures(FILE *out, const lw_section_picture *p)
{
    const lw_profile *profile = p->profile;
    int which[CURVES];
    double least = 0.0;
    const int curves = chosen(p, which);
    for (int k = 0; k < curves; k++) {
        for (int i = 0; i < profile->count; i++) least = fmin(least, p->pressures[which[k]][i]);
    }
    lw_plot plot = {.out = out,
                    .corner = {LEFT, 74.0},
                    .width = WIDTH - LEFT - 30.0,
                    .height = 300.0,
                    .x = {0.0, 1.0, 0.1, 1, false, "along the chord from the nose [chords]"},
                    .y = lw_axis_over(least, 1.0, 6, "pressure coefficient, suction up")};
    plot.y.is_reversed = true;
    lw_plot_frame(&plot);
    for (int k = 0; k < curves; k++) {
        char text[48];
        lw_plot_curve(&plot, profile->x, p->pressures[which[k]], profile->count, k);
        if (p->speeds)
            LW_FIT(text, "%.3g%s", p->speeds[which[k]] / lw_unit_in_si(p->speed_unit),
                   lw_unit_behind(p->speed_unit));
        else
            LW_FIT(text, "%.1f%s", p->points[which[k]].alpha / LW_DEG + 0.0,
                   lw_unit_behind(LW_UNIT_DEG));
        lw_plot_key(&plot, k, k, text);
    }
    draw_outline(&plot, profile, plot.corner.y + plot.height + 46.0);
}

typedef struct panel {
    double left, width;
    const char *x_label, *y_label;
} panel;

static void draw_panel(FILE *out, panel where, const double *x, const double *y, int count)
{
    double x_low = INFINITY, x_high = -INFINITY, y_low = INFINITY, y_high = -INFINITY;
    for (int i = 0; i < count; i++) {
        if (!isfinite(x[i]) || !isfinite(y[i])) continue;
        x_low = fmin(x_low, x[i]), x_high = fmax(x_high, x[i]);
        y_low = fmin(y_low, y[i]), y_high = fmax(y_high, y[i]);
    }
    if (!isfinite(x_low)) x_low = y_low = 0.0, x_high = y_high = 1.0;
    const lw_plot plot = {
        .out = out,
        .corner = {where.left, 550.0},
        .width = where.width,
        .height = 260.0,
        .x = lw_axis_over(x_low, x_high, where.width > 250.0 ? 6 : 4, where.x_label),
        .y = lw_axis_over(y_low, y_high, 6, where.y_label)};
    lw_plot_frame(&plot);
    lw_plot_curve(&plot, x, y, count, 0);
}

void lw_section_draw(FILE *out, const lw_section_picture *p)
{
    double alpha[LW_PICTURE_POINTS_MOST], lift[LW_PICTURE_POINTS_MOST],
        drag[LW_PICTURE_POINTS_MOST], least[LW_PICTURE_POINTS_MOST];
    const double width = p->has_drag ? 180.0 : 300.0, right = WIDTH - 30.0 - width;
    for (int i = 0; i < p->count; i++) {
        alpha[i] = p->points[i].alpha / LW_DEG;
        lift[i] = p->points[i].lift;
        drag[i] = 1000.0 * p->points[i].drag;
        least[i] = -p->points[i].least_pressure;
    }
    lw_svg_begin(out, WIDTH, HEIGHT, p->title);
    const double room = WIDTH - 1.5 * LEFT;
    lw_svg_text(out, (lw_svg_point){LEFT, 30.0}, (lw_svg_words){.size = 18.0, .room = room},
                p->title);
    lw_svg_text(out, (lw_svg_point){LEFT, 52.0},
                (lw_svg_words){.size = 13.0, .colour = "#555", .room = room}, p->subtitle);
    draw_pressures(out, p);
    draw_panel(out, (panel){LEFT, width, "angle of attack [°]", "lift coefficient"}, alpha, lift,
               p->count);
    if (p->has_drag)
        draw_panel(
            out,
            (panel){0.5 * (LEFT + right), width, "drag coefficient x 1000", "lift coefficient"},
            drag, lift, p->count);
    draw_panel(out, (panel){right, width, "greatest suction, -C_p", "lift coefficient"}, least,
               lift, p->count);
    lw_svg_end(out);
}
