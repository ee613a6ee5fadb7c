// plot.c - curves on axes, as part of a picture.
// SPDX-License-Identifier: MIT

#include "picture/plot.h"

#include <math.h>
#include <stddef.h>

#include "records/fault.h"

#define POINTS_MOST 512
#define MARKED_MOST 40
#define GREY        "#bbb"

// Colours that those who see few of them tell apart, darkest first; dashes for print.
static const struct {
    const char *colour, *dashes;
} styles[] = {{"#0072b2", NULL}, {"#d55e00", "7 3"}, {"#009e73", "2 2"}, {"#111111", "9 3 2 3"}};
#define STYLE_COUNT ((int)(sizeof styles / sizeof styles[0]))

static double ten_to(int n)
{
    double power = 1.0;
    for (int i = 0; i < n || i < -n; i++) power *= 10.0;
    return n < 0 ? 1.0 / power : power;
}

// Of the greatest power of ten that is not above x, as far as there are any.
static int exponent_of(double x)
{
    int n = 0;
    while (n > -300 && ten_to(n) > x) n--;
    while (n < 300 && ten_to(n + 1) <= x) n++;
    return n;
}

lw_axis lw_axis_over(double low, double high, int marks, const char *label)
{
    if (!(high - low > 1e-9)) low -= 0.5, high += 0.5;
    const double rough = (high - low) / marks;
    const int exponent = exponent_of(rough);
    const double power = ten_to(exponent), part = rough / power;
    const double step = power * (part < 1.5 ? 1.0 : part < 3.5 ? 2.0 : part < 7.5 ? 5.0 : 10.0);
    const int last = part < 7.5 ? exponent : exponent + 1;  // digit that the step needs
    return (lw_axis){.low = step * floor(low / step + 1e-9),
                     .high = step * ceil(high / step - 1e-9),
                     .step = step,
                     .decimals = last < 0 ? -last : 0,
                     .label = label};
}

static double part_of(const lw_axis *axis, double value)
{
    const double part = (value - axis->low) / (axis->high - axis->low);
    return axis->is_reversed ? 1.0 - part : part;
}

lw_svg_point lw_plot_place(const lw_plot *plot, double x, double y)
{
    return (lw_svg_point){plot->corner.x + plot->width * part_of(&plot->x, x),
                          plot->corner.y + plot->height * (1.0 - part_of(&plot->y, y))};
}

static void mark_text(char text[32], const lw_axis *axis, double value)
{
    if (fabs(value) < 1e-9 * axis->step) value = 0.0;
    lw_text_fit(text, 32, "%.*f", axis->decimals, value);
}

static void mark_axis(const lw_plot *plot, const lw_axis *axis, bool is_across)
{
    const lw_svg_words words = {.size = 12.0, .anchor = is_across ? "middle" : "end"};
    const int count = (int)lround((axis->high - axis->low) / axis->step);
    for (int i = 0; i <= count; i++) {
        char text[32];
        double value = axis->low + i * axis->step;
        if (fabs(value) < 1e-6 * axis->step) value = 0.0;
        const lw_svg_point from = is_across ? lw_plot_place(plot, value, plot->y.low)
                                            : lw_plot_place(plot, plot->x.low, value);
        const lw_svg_point to = is_across ? lw_plot_place(plot, value, plot->y.high)
                                          : lw_plot_place(plot, plot->x.high, value);
        const lw_svg_stroke line = {.width = value == 0.0 ? 1.2 : 0.5,
                                    .colour = value == 0.0 ? "#666" : GREY};
        lw_svg_line(plot->out, from, to, line);
        if (!axis->label) continue;
        mark_text(text, axis, value);
        const lw_svg_point at = is_across
                                    ? (lw_svg_point){from.x, plot->corner.y + plot->height + 16.0}
                                    : (lw_svg_point){plot->corner.x - 6.0, from.y + 4.0};
        lw_svg_text(plot->out, at, words, text);
    }
}

void lw_plot_frame(const lw_plot *plot)
{
    const lw_svg_point c = plot->corner;
    const lw_svg_words words = {.size = 13.0, .anchor = "middle"};
    lw_svg_words turned = words;
    turned.turn = -90.0;
    mark_axis(plot, &plot->x, true);
    mark_axis(plot, &plot->y, false);
    const lw_svg_point below = {c.x + 0.5 * plot->width, c.y + plot->height + 34.0};
    const lw_svg_point left = {c.x - 44.0, c.y + 0.5 * plot->height};
    if (plot->x.label) lw_svg_text(plot->out, below, words, plot->x.label);
    if (plot->y.label) lw_svg_text(plot->out, left, turned, plot->y.label);
}

static void mark_point(const lw_plot *plot, lw_svg_point p, const char *colour)
{
    if (!isfinite(p.x) || !isfinite(p.y)) return;
    const lw_svg_point dot[] = {{p.x - 2.0, p.y - 2.0},
                                {p.x + 2.0, p.y - 2.0},
                                {p.x + 2.0, p.y + 2.0},
                                {p.x - 2.0, p.y + 2.0},
                                {p.x - 2.0, p.y - 2.0}};
    lw_svg_path(plot->out, dot, 5, (lw_svg_stroke){.width = 0.5, .colour = colour, .fill = colour});
}

// Long curves are drawn in pieces, each from where the last ended.
void lw_plot_curve(const lw_plot *plot, const double *x, const double *y, int count, int style)
{
    const lw_svg_stroke line = {.width = count <= POINTS_MOST ? 1.8 : 1.2,
                                .colour = styles[style % STYLE_COUNT].colour,
                                .dashes = styles[style % STYLE_COUNT].dashes};
    for (int first = 0; first < count; first += POINTS_MOST - 1) {
        lw_svg_point points[POINTS_MOST] = {{0}};
        const int left = count - first, n = left < POINTS_MOST ? left : POINTS_MOST;
        for (int i = 0; i < n; i++) points[i] = lw_plot_place(plot, x[first + i], y[first + i]);
        lw_svg_path(plot->out, points, n, line);
        for (int i = 0; i < n && count <= MARKED_MOST; i++) {  // where a number was worked out
            mark_point(plot, points[i], line.colour);
        }
    }
}

void lw_plot_key(const lw_plot *plot, int row, int style, const char *text)
{
    const double right = plot->corner.x + plot->width - 8.0, y = plot->corner.y + 18.0 + 17.0 * row;
    const lw_svg_stroke line = {.width = 1.8,
                                .colour = styles[style % STYLE_COUNT].colour,
                                .dashes = styles[style % STYLE_COUNT].dashes};
    lw_svg_line(plot->out, (lw_svg_point){right - 110.0, y - 4.0},
                (lw_svg_point){right - 78.0, y - 4.0}, line);
    lw_svg_text(plot->out, (lw_svg_point){right - 70.0, y},
                (lw_svg_words){.size = 12.0, .anchor = "start"}, text);
}
