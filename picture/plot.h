// plot.h - curves on axes, as part of a picture.
// SPDX-License-Identifier: MIT

#ifndef LW_PICTURE_PLOT_H
#define LW_PICTURE_PLOT_H

#include <stdbool.h>

#include "records/svg.h"

typedef struct lw_axis {
    double low, high, step;
    int decimals;
    bool is_reversed;   // numbers rise to the left, or downward
    const char *label;  // NULL: lines only, no numbers either
} lw_axis;

// Even numbers around all values from low to high, about `marks` of them.
lw_axis lw_axis_over(double low, double high, int marks, const char *label);

typedef struct lw_plot {
    FILE *out;
    lw_svg_point corner;  // upper left of the frame
    double width, height;
    lw_axis x, y;
} lw_plot;

lw_svg_point lw_plot_place(const lw_plot *plot, double x, double y);
void lw_plot_frame(const lw_plot *plot);

// A curve in one of the styles, which differ in colour and in dashes; marked at its points when
// there are few enough of them.
void lw_plot_curve(const lw_plot *plot, const double *x, const double *y, int count, int style);

// What the styles stand for, one line each from the upper right corner down.
void lw_plot_key(const lw_plot *plot, int row, int style, const char *text);

#endif
