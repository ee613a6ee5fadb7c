// cells_picture.h - a map of cells over two axes: what stands in each, and a colour for it.
// SPDX-License-Identifier: MIT

#ifndef LW_CELLS_PICTURE_H
#define LW_CELLS_PICTURE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdio.h>

#define LW_CELLS_TEXT 24
#define LW_CELLS_MOST 120  // along each axis

typedef struct lw_cells {
    size_t columns, rows;  // the first row is drawn at the bottom
    const char *x_label, *y_label, *title;
    bool are_words;  // each word has a colour; else the greater the number the darker
    const void *it;
    void (*cell)(const void *it, size_t x, size_t y, char text[LW_CELLS_TEXT]);  // begins as ""
    void (*along)(const void *it, size_t axis, size_t i, char text[LW_CELLS_TEXT]);
} lw_cells;

void lw_cells_draw(FILE *out, const lw_cells *cells);

#endif
