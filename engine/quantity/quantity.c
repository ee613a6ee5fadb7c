// quantity.c - everything that follows from a table of quantities.
// SPDX-License-Identifier: MIT

#include "lullwise/quantity.h"

#include <math.h>
#include <string.h>

static double *member(const lw_quantity *row, void *data)
{
    void *place = (char *)data + row->offset;
    return place;
}

static void text_put(char *member_text, const char *text)
{
    memset(member_text, 0, LW_NAME_LENGTH);
    strncpy(member_text, text, LW_NAME_LENGTH - 1);
}

const lw_quantity *lw_table_find(const lw_table *table, const char *key)
{
    for (size_t i = 0; i < table->count; i++) {
        if (strcmp(table->rows[i].key, key) == 0) return &table->rows[i];
    }
    return NULL;
}

const lw_quantity *lw_table_nearest(const lw_table *table, const char *key)
{
    const char *nearest = NULL;
    for (size_t i = 0; i < table->count; i++) {
        nearest = lw_text_nearer(key, nearest, table->rows[i].key);
    }
    return nearest ? lw_table_find(table, nearest) : NULL;
}

void lw_table_preset(const lw_table *table, void *data)
{
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        *member(row, data) = row->preset * lw_unit_in_si(row->unit);
    }
}

void lw_record_preset(const lw_record *record, void *data)
{
    memset(data, 0, record->size);
    for (size_t i = 0; i < record->text_count; i++) {
        text_put((char *)data + record->texts[i].offset, record->texts[i].preset);
    }
    for (size_t i = 0; i < record->section_count; i++) {
        const lw_section *section = &record->sections[i];
        if (section->kind != LW_SECTION_PLAIN) continue;
        lw_table_preset(section->table, (char *)data + section->offset);
    }
}

size_t *lw_section_length(const lw_section *section, void *data)
{
    return (size_t *)((char *)data + section->count_offset);
}

char *lw_section_element(const lw_section *section, void *data, size_t index)
{
    return (char *)data + section->offset + index * section->stride;
}

static const char *skip_spaces(const char *at)
{
    static const char *const wide[] = {"\xC2\xA0", "\xE2\x80\xAF"};  // no-break, wide and narrow
    for (;;) {
        if (*at == ' ' || *at == '\t')
            at++;
        else if (strncmp(at, wide[0], 2) == 0)
            at += 2;
        else if (strncmp(at, wide[1], 3) == 0)
            at += 3;
        else
            return at;
    }
}

lw_status lw_quantity_read(const lw_quantity *row, const char *text, double *si)
{
    double value;
    const char *rest;
    if (!lw_decimal_read(skip_spaces(text), &value, &rest)) return LW_BAD_NUMBER;
    rest = skip_spaces(rest);
    if ((*rest >= '0' && *rest <= '9') || *rest == '.' || *rest == ',') return LW_BAD_NUMBER;

    const lw_unit unit = lw_unit_of(rest);
    if (unit == LW_UNIT_NONE && row->unit != LW_UNIT_NONE) return LW_UNIT_MISSING;
    if (unit == LW_UNIT_COUNT || !lw_unit_same_dimension(unit, row->unit)) return LW_BAD_UNIT;

    const double read = value * lw_unit_in_si(unit);
    if (!lw_quantity_is_in_range(row, read)) return LW_OUT_OF_RANGE;
    *si = read;
    return LW_OK;
}

double lw_quantity_value(const lw_quantity *row, const void *data)
{
    const void *place = (const char *)data + row->offset;
    return *(const double *)place;
}

double lw_quantity_shown(const lw_quantity *row, const void *data)
{
    return lw_quantity_value(row, data) / lw_unit_in_si(row->unit);
}

void lw_quantity_put(const lw_quantity *row, void *data, double si) { *member(row, data) = si; }

// Between two limits given in the row's unit; 25 deg read as radians still is 25 deg.
static bool is_between(const lw_quantity *row, double si, double low, double high)
{
    const double shown = si / lw_unit_in_si(row->unit);
    const double grace = 1e-12;  // of each limit itself: none about zero
    return shown >= low - grace * fabs(low) && shown <= high + grace * fabs(high);  // false: NaN
}

bool lw_quantity_is_in_range(const lw_quantity *row, double si)
{
    return is_between(row, si, row->min, row->max);
}

bool lw_quantity_is_doubtful(const lw_quantity *row, double si)
{
    if (row->usual_min == 0.0 && row->usual_max == 0.0) return false;
    return !is_between(row, si, row->usual_min, row->usual_max);
}

const lw_quantity *lw_table_check(const lw_table *table, const void *data)
{
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        if (!lw_quantity_is_in_range(row, lw_quantity_value(row, data))) return row;
    }
    return NULL;
}
