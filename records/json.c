// json.c - records and results as JSON.
// SPDX-License-Identifier: MIT

#include "records/json.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "records/record_value.h"

#define DIGITS 12

// Twelve digits, so that 0.98 m does not come out as 0.97999999999999998.
static json_t *number(double value)
{
    char text[40];
    if (!isfinite(value)) return json_null();
    lw_text_fit(text, sizeof text, "%.*g", DIGITS, value);
    const double rounded = strtod(text, NULL);
    return json_real(rounded == 0.0 ? 0.0 : rounded);  // no negative zero
}

json_t *lw_table_json(const lw_table *table, const void *data)
{
    json_t *object = json_object();
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        json_object_set_new(object, row->key, number(lw_quantity_shown(row, data)));
    }
    return object;
}

json_t *lw_table_units_json(const lw_table *table)
{
    json_t *object = json_object();
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        json_object_set_new(object, row->key, json_string(lw_unit_text(row->unit)));
    }
    return object;
}

static json_t *element_json(const lw_section *section, const char *element)
{
    if (section->kind == LW_SECTION_VALUES) {
        return number(lw_quantity_shown(&section->table->rows[0], element));
    }
    json_t *object = lw_table_json(section->table, element);
    if (section->kind == LW_SECTION_LABELLED) {
        json_object_set_new(object, "label", json_string(element + section->label_offset));
    }
    return object;
}

static json_t *section_json(const lw_section *section, const char *data)
{
    if (section->kind == LW_SECTION_PLAIN) {
        if (!lw_section_is_given(section, data)) return json_null();
        return lw_table_json(section->table, data + section->offset);
    }
    json_t *array = json_array();
    const size_t count = *(const size_t *)(data + section->count_offset);
    for (size_t i = 0; i < count; i++) {
        const char *element = data + section->offset + i * section->stride;
        json_array_append_new(array, element_json(section, element));
    }
    return array;
}

json_t *lw_record_json(const lw_record *record, const void *data)
{
    json_t *object = json_object(), *units = json_object();
    const char *from = data;
    json_object_set_new(object, "record", json_string(record->name));
    for (size_t i = 0; i < record->text_count; i++) {
        const lw_text *text = &record->texts[i];
        json_object_set_new(object, text->key, json_string(from + text->offset));
    }
    for (size_t i = 0; i < record->section_count; i++) {
        const lw_section *section = &record->sections[i];
        json_object_set_new(object, section->table->key, section_json(section, from));
        json_object_set_new(units, section->table->key, lw_table_units_json(section->table));
    }
    json_object_set_new(object, "units", units);
    return object;
}

json_t *lw_faults_json(const lw_faults *faults)
{
    json_t *array = json_array();
    for (size_t i = 0; i < faults->count; i++) {
        const lw_fault *fault = &faults->list[i];
        char file[512];
        lw_text_tame(file, sizeof file, fault->file);
        json_array_append_new(
            array,
            json_pack("{s:s, s:I, s:I, s:s, s:s, s:s, s:s, s:s, s:b}",  //
                      "file", file, "line", (json_int_t)fault->line, "column",
                      (json_int_t)fault->column, "key", fault->key, "read", fault->read, "expected",
                      fault->expected, "hint", fault->hint, "sentence", fault->sentence, "doubt",
                      fault->is_doubt));
    }
    return array;
}

bool lw_json_write(json_t *json, FILE *out)
{
    char *text = json ? json_dumps(json, JSON_INDENT(2) | JSON_REAL_PRECISION(DIGITS)) : NULL;
    json_decref(json);
    if (!text) return false;
    const size_t length = strlen(text);
    const bool is_written =
        fwrite(text, 1, length, out) == length && fputc('\n', out) != EOF && fflush(out) == 0;
    free(text);
    return is_written;
}
