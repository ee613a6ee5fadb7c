// terminal.h - the teller's face that draws text: headings, paragraphs, lists, columns, tables.
// SPDX-License-Identifier: MIT
//
// A member with a head is shown, one without is not, nor what stands inside it. Numbers with a head
// that follow each other are set as a block, in two columns where they fit; a table's columns are
// as wide as what stands in them, and the text of its last one is wrapped. Within 80 columns.

#ifndef LW_TERMINAL_H
#define LW_TERMINAL_H

#include <stdio.h>

#include "answer/teller.h"

// Draws something of its own behind the heading of a branch.
typedef struct lw_figure {
    const char *key;  // of the branch; NULL: the end of the list
    void (*draw)(FILE *out, const void *data);
    const void *data;
} lw_figure;

typedef enum lw_drawn_block {
    LW_BLOCK_NONE,
    LW_BLOCK_HEADING,
    LW_BLOCK_PARAGRAPH,
    LW_BLOCK_LIST,
    LW_BLOCK_MEMBERS,
    LW_BLOCK_TABLE,
    LW_BLOCK_SECTION,  // one has ended
} lw_drawn_block;

// What was told and not drawn yet: the cells of a table, or names and values in turn.
typedef struct lw_cells {
    char **texts;
    size_t count, room;
} lw_cells;

typedef struct lw_terminal {
    FILE *out;
    const lw_figure *figures;  // or NULL
    size_t depth, hidden;      // branches open; of these the outermost that is not shown, or 0
    bool has_heading[LW_TELLER_DEPTH + 1];
    size_t indent;
    lw_drawn_block last;
    lw_cells cells;
    const lw_item *columns;  // of the table that is open
    size_t column_count;
} lw_terminal;

// Draws all that `tell` tells of `it`; figures or NULL.
void lw_terminal_tell(lw_tell *tell, const void *it, FILE *out, const lw_figure *figures);

#endif
