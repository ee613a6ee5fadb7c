// columns.h - results one below the other, a column for each member that is asked for.
// SPDX-License-Identifier: MIT

#ifndef LW_COLUMNS_H
#define LW_COLUMNS_H

#include <jansson.h>
#include <stdio.h>

#include "lullwise/quantity.h"

// A result's row: nobody writes it, so it has no range, preset or error.
#define LW_COLUMN(record, member, sym, u, digits, words)                                        \
    {                                                                                           \
        LW_MEMBER(record, member), .symbol = sym, .unit = LW_UNIT_##u, .min = -1e9, .max = 1e9, \
                                   .decimals = digits, .doc = words                             \
    }

// An array of structs of one table.
typedef struct lw_list {
    const lw_table *table;
    const void *data;
    size_t stride;
    int count;
} lw_list;

// Symbols, units, then a line each; `keys` names the members, spaces between. What is no number
// shows as "-".
void lw_columns_print(FILE *out, lw_list list, const char *keys);

// Each member of one struct on a line of its own with its unit and what it is.
void lw_members_print(FILE *out, const lw_table *table, const void *data);

json_t *lw_list_json(lw_list list);

#endif
