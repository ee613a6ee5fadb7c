// cell.h - cells of a table on the terminal.
// SPDX-License-Identifier: MIT

#ifndef LW_CELL_H
#define LW_CELL_H

#include <stdio.h>

#include "answer/words/number_text.h"

// Text filled up with spaces behind it to so many characters.
void lw_cell_left(FILE *out, const char *text, size_t width);

// The widest of some labels, and at least `least`.
size_t lw_cell_width(size_t least, const char *text);

#endif
