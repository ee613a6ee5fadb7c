// points.h - results one below the other: a table of structs that a quantity table describes.
// SPDX-License-Identifier: MIT

#ifndef LW_POINTS_H
#define LW_POINTS_H

#include "answer/teller.h"

typedef struct lw_points {
    const lw_table *table;
    const void *data;
    size_t stride, count;  // bytes from one struct to the next; how many
    const char *shown;     // members that a person is shown, spaces between; all are told
} lw_points;

// A row for each struct, a column for each member, headed by its symbol.
void lw_tell_points(lw_teller *teller, const char *key, const char *head, lw_points points);

// What the symbols of those shown stand for.
void lw_tell_symbols(lw_teller *teller, const char *key, lw_points points);

// The members of one struct, each named by its symbol and what it is.
void lw_tell_members(lw_teller *teller, const lw_table *table, const void *data);

#endif
