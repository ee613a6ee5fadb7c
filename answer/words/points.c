// points.c - results one below the other: a table of structs that a quantity table describes.
// SPDX-License-Identifier: MIT

#include "answer/words/points.h"

#include <string.h>

#include "records/fault.h"

#define SYMBOLS_LENGTH 900

static bool is_among(const char *keys, const char *key)
{
    const size_t length = strlen(key);
    for (const char *at = keys; *at; at += strspn(at, " ")) {
        const size_t word = strcspn(at, " ");
        if (word == length && strncmp(at, key, word) == 0) return true;
        at += word;
    }
    return false;
}

static lw_item column_of(const lw_quantity *row, const char *shown)
{
    lw_item item = lw_item_of(row, is_among(shown, row->key) ? row->symbol : NULL);
    item.form = LW_AS_BARE;
    return item;
}

void lw_tell_points(lw_teller *teller, const char *key, const char *head, lw_points points)
{
    const lw_table *table = points.table;
    lw_item columns[LW_TABLE_COLUMNS_MOST];
    for (size_t c = 0; c < table->count; c++) columns[c] = column_of(&table->rows[c], points.shown);
    lw_tell_table(teller, key, head, columns, table->count);
    for (size_t i = 0; i < points.count; i++) {
        const char *data = (const char *)points.data + i * points.stride;
        lw_tell_row(teller);
        for (size_t c = 0; c < table->count; c++)
            lw_tell_number(teller, NULL, lw_quantity_value(&table->rows[c], data));
    }
    lw_tell_end(teller);
}

void lw_tell_symbols(lw_teller *teller, const char *key, lw_points points)
{
    char text[SYMBOLS_LENGTH] = "";
    size_t length = 0;
    for (size_t i = 0; i < points.table->count; i++) {
        const lw_quantity *row = &points.table->rows[i];
        if (!is_among(points.shown, row->key)) continue;
        lw_text_fit(text + length, sizeof text - length, "%s%s: %s", length ? "; " : "",
                    row->symbol, row->doc);
        length += strlen(text + length);
    }
    lw_text_fit(text + length, sizeof text - length, ".");
    lw_tell_sentence(teller, key, text);
}

void lw_tell_members(lw_teller *teller, const lw_table *table, const void *data)
{
    for (size_t i = 0; i < table->count; i++) {
        char name[160];
        const lw_quantity *row = &table->rows[i];
        LW_FIT(name, "%s: %s", row->symbol, row->doc);
        const lw_item item = lw_item_of(row, name);
        lw_tell_number(teller, &item, lw_quantity_value(row, data));
    }
}
