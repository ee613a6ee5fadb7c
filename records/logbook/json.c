// json.c - days of a logbook as JSON.
// SPDX-License-Identifier: MIT

#include <jansson.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "records/logbook/arrived.h"

#define DIGITS 12

// --- out

static json_t *value_of(const lw_column *column, const lw_entry *entry)
{
    if (column->kind == LW_COLUMN_NUMBER) {
        const double number = lw_column_number(column, entry);
        return isnan(number) ? json_null() : json_real(number);
    }
    char *text = lw_column_text(column, entry);
    json_t *value = text ? json_string(text) : NULL;
    free(text);
    return value;
}

static json_t *day_of(const lw_columns *columns, const lw_entry *entry)
{
    json_t *day = json_object();
    bool is_whole = day != NULL;
    for (size_t i = 0; is_whole && i < columns->count; i++) {
        const lw_column *column = &columns->list[i];
        is_whole = json_object_set_new(day, column->key, value_of(column, entry)) == 0;
    }
    if (is_whole) return day;
    json_decref(day);
    return NULL;
}

static json_t *units_of(const lw_columns *columns)
{
    json_t *units = json_object();
    for (size_t i = 0; i < columns->count; i++) {
        const lw_column *column = &columns->list[i];
        const char *unit = column->row ? lw_unit_text(column->row->unit) : "";
        if (unit[0]) json_object_set_new(units, column->key, json_string(unit));
    }
    return units;
}

// The whole text; NULL: no memory.
static char *text_of(const lw_entries *days)
{
    const lw_columns columns = lw_columns_of();
    json_t *list = json_array();
    bool is_whole = list != NULL;
    for (size_t i = 0; is_whole && i < days->count; i++)
        is_whole = json_array_append_new(list, day_of(&columns, &days->list[i])) == 0;
    json_t *all = is_whole ? json_pack("{s:i, s:o, s:O}", LW_TRANSFER_FORMAT, LW_TRANSFER_VERSION,
                                       "units", units_of(&columns), "days", list)
                           : NULL;
    char *text = all ? json_dumps(all, JSON_INDENT(1) | JSON_REAL_PRECISION(DIGITS)) : NULL;
    json_decref(all), json_decref(list);
    return text;
}

bool lw_days_write_json(const lw_entries *days, FILE *out)
{
    char *text = text_of(days);
    if (!text) return false;
    fprintf(out, "%s\n", text);
    free(text);
    return fflush(out) == 0 && !ferror(out);
}

// --- in

static bool say(const lw_written *written, lw_faults *faults, const char *sentence)
{
    LW_FIT(lw_faults_add(faults, written)->sentence, "%s", sentence);
    return false;
}

static bool put(const lw_column *column, const json_t *value, lw_entry *entry, lw_written *written,
                lw_faults *faults)
{
    if (column->kind == LW_COLUMN_NUMBER && (json_is_number(value) || json_is_null(value))) {
        const double number = json_is_null(value) ? NAN : json_number_value(value);
        return lw_column_put_number(column, entry, number, written, faults);
    }
    if (column->kind == LW_COLUMN_NUMBER || !json_is_string(value))
        return say(written, faults,
                   column->kind == LW_COLUMN_NUMBER ? "this should be a number or null"
                                                    : "this should be a text");
    written->text = json_string_value(value);
    return lw_column_put_text(column, entry, written, faults);
}

// Faults are told with the number of the day in the place of a line.
static void take_day(json_t *day, const lw_columns *columns, const lw_entry_source *source,
                     lw_entry *entry, lw_faults *faults)
{
    const size_t before = faults->fault_count;
    const char *key;
    json_t *value;
    json_object_foreach(day, key, value)
    {
        const lw_column *column = lw_columns_named(columns, key);
        lw_written written = {.file = source->file,
                              .line = source->line,
                              .column = 1,
                              .key = column ? column->key : "",
                              .text = column ? "" : key};
        if (column)
            put(column, value, entry, &written, faults);
        else
            lw_arrived_unknown(columns, &written, faults);
    }
    if (faults->fault_count == before) lw_arrived_settle(entry, source, faults);
}

static bool is_format_ours(const json_t *all, const lw_written *whole, lw_faults *faults)
{
    const json_t *version = json_object_get(all, LW_TRANSFER_FORMAT);
    if (!json_is_integer(version) || !json_is_array(json_object_get(all, "days")))
        return say(whole, faults, "this JSON is no export of a logbook");
    if (json_integer_value(version) < 1 || json_integer_value(version) > LW_TRANSFER_VERSION)
        return say(whole, faults, "an export of another version: a newer lullwise reads it");
    return true;
}

// Units are told for people and other programs; only what export writes is read back.
static bool are_units_ours(const json_t *all, const lw_columns *columns, const lw_written *whole,
                           lw_faults *faults)
{
    json_t *ours = units_of(columns);
    json_t *units = json_object_get(all, "units");
    const char *key;
    json_t *unit;
    bool are_ours = true;
    json_object_foreach(units, key, unit)
    {
        are_ours = are_ours && json_equal(unit, json_object_get(ours, key));
    }
    json_decref(ours);
    return are_ours || say(whole, faults, "its units are not those that export writes");
}

static void take_days(json_t *all, const lw_source_text *source, const char *today,
                      lw_entries *days, lw_faults *faults)
{
    const lw_columns columns = lw_columns_of();
    const lw_written whole = {.file = source->name, .key = "", .text = ""};
    if (!is_format_ours(all, &whole, faults) || !are_units_ours(all, &columns, &whole, faults))
        return;
    json_t *list = json_object_get(all, "days");
    for (size_t i = 0; i < json_array_size(list); i++) {
        const lw_entry_source at = {source->name, i + 1, today};
        const lw_written written = {.file = source->name, .line = i + 1, .key = "", .text = ""};
        json_t *day = json_array_get(list, i);
        lw_entry *entry = lw_entries_add(days);
        if (!entry)
            lw_faults_no_memory(faults, source->name);
        else if (!json_is_object(day))
            say(&written, faults, "this should be a day");
        else
            take_day(day, &columns, &at, entry, faults);
    }
}

bool lw_days_read_json(const lw_source_text *source, const char *today, lw_entries *days,
                       lw_faults *faults)
{
    json_error_t error;
    const size_t before = faults->fault_count;
    json_t *all = json_loadb(source->text, source->length, JSON_REJECT_DUPLICATES, &error);
    if (all) {
        take_days(all, source, today, days, faults);
    } else {
        const lw_written written = {.file = source->name,
                                    .line = error.line > 0 ? (size_t)error.line : 0,
                                    .column = error.column > 0 ? (size_t)error.column : 0,
                                    .key = "",
                                    .text = ""};
        char why[120];
        lw_text_tame(why, sizeof why, error.text);
        LW_FIT(lw_faults_add(faults, &written)->sentence, "no JSON: %s", why);
    }
    json_decref(all);
    return faults->fault_count == before;
}
