// lines.h - what a point of a sweep comes to: lines of cells, as one text.
// SPDX-License-Identifier: MIT
//
// From the moment that a number is worked out it is text, so that threads, machines, files and a
// run that goes on all have the same bits. Between cells stands LW_CELL_END, between lines
// LW_LINE_END, neither of which is ever in a cell.

#ifndef LW_LINES_H
#define LW_LINES_H

#include <stdbool.h>
#include <stddef.h>

#define LW_CELL_END '\x1f'
#define LW_LINE_END '\x1e'

// Begins as {0}.
typedef struct lw_lines {
    char *text;
    size_t length, room;
    bool has_line, has_cell, is_short;  // of memory
} lw_lines;

void lw_lines_clear(lw_lines *lines);
void lw_lines_free(lw_lines *lines);
void lw_lines_begin(lw_lines *lines);                   // a line more
void lw_lines_text(lw_lines *lines, const char *text);  // a cell more
void lw_lines_number(lw_lines *lines, double value);    // 12 digits; NAN: an empty cell

// The next cell at *at, which moves behind it; what ended it, 0 at the end of the text. `length`
// characters from *cell on.
char lw_lines_cell(const char **at, const char **cell, size_t *length);

#endif
