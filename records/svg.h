// svg.h - pictures as SVG: lines, paths and words.
// SPDX-License-Identifier: MIT

#ifndef LW_SVG_H
#define LW_SVG_H

#include <stdbool.h>
#include <stdio.h>

typedef struct lw_svg_point {
    double x, y;  // to the right and down
} lw_svg_point;

typedef struct lw_svg_words {
    double size;
    const char *anchor;  // "start", "middle" or "end"
    double turn;         // [deg] clockwise
    const char *colour;
    double room;  // words that would be wider are set closer; 0: as wide as they are
    bool is_bold;
} lw_svg_words;

typedef struct lw_svg_stroke {
    double width;
    const char *colour;
    const char *dashes;  // "4 2"; NULL: none
    const char *fill;    // NULL: none
} lw_svg_stroke;

// A white page; the title is for those who cannot see it.
void lw_svg_begin(FILE *out, double width, double height, const char *title);

// One of paper [mm], on which lengths are points of a 72nd of an inch.
#define LW_SVG_POINT (25.4 / 72.0)  // [mm]
void lw_svg_begin_paper(FILE *out, double width, double height, const char *title);
void lw_svg_end(FILE *out);

// What is drawn in between is one part of the picture, with a name.
void lw_svg_group(FILE *out, const char *name);
void lw_svg_group_end(FILE *out);

void lw_svg_text(FILE *out, lw_svg_point at, lw_svg_words how, const char *text);
void lw_svg_line(FILE *out, lw_svg_point from, lw_svg_point to, lw_svg_stroke how);

// Points that are no numbers leave a gap.
void lw_svg_path(FILE *out, const lw_svg_point *points, int count, lw_svg_stroke how);

#endif
