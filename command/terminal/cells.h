// cells.h - what was told and is drawn together: a table, or a block of members.
// SPDX-License-Identifier: MIT

#ifndef LW_TERMINAL_CELLS_H
#define LW_TERMINAL_CELLS_H

#include "command/terminal/terminal.h"

void lw_cells_add(lw_cells *cells, const char *text);
void lw_cells_clear(lw_cells *cells);

// Rows of as many cells as there are columns; those without a head are left out.
void lw_cells_draw_table(FILE *out, const lw_cells *cells, const lw_item *columns, size_t count,
                         size_t indent);

// Names and values in turn.
void lw_cells_draw_members(FILE *out, const lw_cells *cells, size_t indent);

#endif
