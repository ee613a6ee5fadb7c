// columns.c - results one below the other, a column for each member that is asked for.
// SPDX-License-Identifier: MIT

#include "command/columns.h"

#include <math.h>
#include <string.h>

#include "command/cell.h"
#include "command/terminal/print.h"
#include "records/fault.h"
#include "records/json.h"

#define COLUMNS_MOST 12

static void cell_of(char cell[LW_CELL_LENGTH], const lw_quantity *row, const void *data)
{
    const double shown = lw_quantity_shown(row, data);
    if (isfinite(shown))
        lw_cell_number(cell, shown, row->decimals, false);
    else
        lw_text_fit(cell, LW_CELL_LENGTH, "-");
}

static size_t width_of(lw_list list, const lw_quantity *row)
{
    char cell[LW_CELL_LENGTH];
    size_t width = lw_cell_width(lw_cell_width(4, row->symbol), lw_unit_text(row->unit));
    for (int i = 0; i < list.count; i++) {
        cell_of(cell, row, (const char *)list.data + (size_t)i * list.stride);
        width = lw_cell_width(width, cell);
    }
    return width;
}

// Rows of the keys, as many as there are.
static int rows_of(const lw_table *table, const char *keys, const lw_quantity **rows)
{
    int count = 0;
    for (const char *at = keys; *at && count < COLUMNS_MOST; at += strspn(at, " ")) {
        char key[40];
        const size_t length = strcspn(at, " ");
        LW_FIT(key, "%.*s", (int)length, at);
        const lw_quantity *row = lw_table_find(table, key);
        if (row) rows[count++] = row;
        at += length;
    }
    return count;
}

// Line -2: symbols, -1: units.
static void cell_at(char cell[LW_CELL_LENGTH], lw_list list, const lw_quantity *row, int line)
{
    if (line < 0)
        lw_text_fit(cell, LW_CELL_LENGTH, "%s", line == -2 ? row->symbol : lw_unit_text(row->unit));
    else
        cell_of(cell, row, (const char *)list.data + (size_t)line * list.stride);
}

void lw_columns_print(FILE *out, lw_list list, const char *keys)
{
    const lw_quantity *rows[COLUMNS_MOST];
    size_t widths[COLUMNS_MOST];
    const int count = rows_of(list.table, keys, rows);
    for (int k = 0; k < count; k++) widths[k] = width_of(list, rows[k]);
    for (int line = -2; line < list.count; line++) {
        size_t owed = 0;  // blanks, written only where something follows
        for (int k = 0; k < count; k++) {
            char cell[LW_CELL_LENGTH];
            cell_at(cell, list, rows[k], line);
            owed += 2 + widths[k];
            if (!cell[0]) continue;
            lw_cell_right(out, cell, owed);
            owed = 0;
        }
        fputc('\n', out);
    }
}

void lw_members_print(FILE *out, const lw_table *table, const void *data)
{
    for (size_t i = 0; i < table->count; i++) {
        char cell[LW_CELL_LENGTH], value[LW_CELL_LENGTH];
        const lw_quantity *row = &table->rows[i];
        cell_of(cell, row, data);
        LW_FIT(value, "%s %s", cell, lw_unit_text(row->unit));
        fputs("  ", out);
        lw_cell_left(out, row->symbol, 5);
        fputs("  ", out);
        lw_cell_left(out, value, 11);
        fputs("  ", out);
        lw_print_wrapped(out, row->doc, 22, 22);
    }
}

json_t *lw_list_json(lw_list list)
{
    json_t *array = json_array();
    for (int i = 0; i < list.count; i++) {
        const char *data = (const char *)list.data + (size_t)i * list.stride;
        json_array_append_new(array, lw_table_json(list.table, data));
    }
    return array;
}
