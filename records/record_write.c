// record_write.c - a file of a record in which every value is explained.
// SPDX-License-Identifier: MIT

#include <ctype.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "lullwise/boat.h"
#include "lullwise/day.h"
#include "records/record_file.h"
#include "records/record_value.h"

#define WIDTH 80

static void example_boat(lw_boat *boat)
{
    boat->pin_count = 4;
    for (size_t i = 0; i < boat->pin_count; i++) {
        boat->pins[i].incidence = (3.0 - (double)i) * LW_DEG;
        boat->pins[i].label[0] = (char)('A' + i);
    }
}

static void example_day(lw_day *day)
{
    static const lw_leg legs[] = {{0.0, 800.0}, {180.0 * LW_DEG, 800.0}};
    day->has_wind = true;
    day->wind.lull = 8.0 * LW_KN, day->wind.mean = 11.0 * LW_KN, day->wind.puff = 14.0 * LW_KN;
    day->forecast.mean = 13.0 * LW_KN;
    day->sea.fetch = 2000.0;
    day->leg_count = sizeof legs / sizeof legs[0];
    memcpy(day->legs, legs, sizeof legs);
}

void lw_record_example(const lw_record *record, void *data)
{
    lw_record_preset(record, data);
    if (record == &lw_boat_record) example_boat(data);
    if (record == &lw_day_record) example_day(data);
}

// Lines of a comment, "# " in front, no wider than WIDTH; long words stand alone.
static void write_comment(FILE *out, const char *indent, const char *text)
{
    size_t column = 0;
    while (*text) {
        const size_t word = strcspn(text, " ");
        if (column == 0 || column + 1 + word > WIDTH) {
            column = (size_t)fprintf(out, "%s%s#", column ? "\n" : "", indent);
        }
        column += (size_t)fprintf(out, " %.*s", (int)word, text);
        text += word + strspn(text + word, " ");
    }
    fputc('\n', out);
}

static void write_quoted(FILE *out, const char *text)
{
    fputc('"', out);
    for (; *text; text++) {
        if (*text == '"' || *text == '\\') fputc('\\', out);
        fputc(*text, out);
    }
    fputc('"', out);
}

static void write_label(FILE *out, const char *label)
{
    bool is_word = *label != '\0';
    for (const char *at = label; *at; at++) is_word = is_word && isalnum((unsigned char)*at);
    if (is_word)
        fputs(label, out);
    else
        write_quoted(out, label);
}

// The value in one unit, in the fewest decimals from `decimals` on that read back as the same bits.
static bool write_in(FILE *out, const lw_quantity *row, double si, lw_unit unit)
{
    const int least = unit == row->unit ? row->decimals : 0;
    for (int decimals = least; decimals <= 15; decimals++) {
        char text[48];
        double read;
        lw_text_fit(text, sizeof text, "%.*f %s", decimals, si / lw_unit_in_si(unit),
                    lw_unit_text(unit));
        if (lw_quantity_read(row, text, &read) != LW_OK || read != si) continue;
        text[strlen(text) - (unit == LW_UNIT_NONE)] = '\0';
        fputs(text, out);
        return true;
    }
    return false;
}

// In the row's unit, or in another in which it was written; a number that no digits bring back
// comes near.
static void write_value(FILE *out, const lw_quantity *row, const void *data)
{
    const double si = lw_quantity_value(row, data);
    if (write_in(out, row, si, row->unit)) return;
    for (int i = 0; i < LW_UNIT_COUNT; i++) {
        const lw_unit unit = (lw_unit)i;
        if (lw_unit_same_dimension(unit, row->unit) && write_in(out, row, si, unit)) return;
    }
    fprintf(out, "%.15g %s", lw_quantity_shown(row, data), lw_unit_text(row->unit));
}

static void write_row_comment(FILE *out, const char *indent, const lw_quantity *row)
{
    char range[LW_RANGE_LENGTH], usual[LW_RANGE_LENGTH], text[900];
    const bool is_banded = (row->usual_min != 0.0 || row->usual_max != 0.0) &&
                           (row->usual_min != row->min || row->usual_max != row->max);
    lw_quantity_range(row, row->min, row->max, range);
    lw_quantity_range(row, row->usual_min, row->usual_max, usual);
    lw_text_fit(text, sizeof text, "%s: %s", row->key, row->doc);
    write_comment(out, indent, text);
    lw_text_fit(text, sizeof text, "%s%s%s", range, is_banded ? "; usually " : "",
                is_banded ? usual : "");
    write_comment(out, indent, text);
}

// One struct: for each row a comment, then `lead key: value`; the first line may have its own lead.
static void write_rows(FILE *out, const lw_table *table, const void *data,
                       const char *const lead[2])
{
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        fprintf(out, "%s%s: ", i == 0 ? lead[0] : lead[1], row->key);
        write_value(out, row, data);
        fputc('\n', out);
    }
}

static void write_plain(FILE *out, const lw_table *table, const void *data, const char *off)
{
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        if (i > 0) fputc('\n', out);
        write_row_comment(out, "  ", row);
        fprintf(out, "%s  %s: ", off, row->key);
        write_value(out, row, data);
        fputc('\n', out);
    }
}

static void write_elements(FILE *out, const lw_section *section, const char *data)
{
    static const char *const leads[2] = {"  - ", "    "};
    const size_t count = *(const size_t *)(data + section->count_offset);
    for (size_t i = 0; i < count; i++) {
        const char *element = data + section->offset + i * section->stride;
        if (section->kind == LW_SECTION_LIST) {
            write_rows(out, section->table, element, leads);
            continue;
        }
        fputs(section->kind == LW_SECTION_VALUES ? "  - " : "  ", out);
        if (section->kind == LW_SECTION_LABELLED) {
            write_label(out, element + section->label_offset);
            fputs(": ", out);
        }
        write_value(out, &section->table->rows[0], element);
        fputc('\n', out);
    }
}

static void write_array(FILE *out, const lw_section *section, const char *data)
{
    const lw_table *table = section->table;
    for (size_t i = 0; i < table->count; i++) write_row_comment(out, "  ", &table->rows[i]);
    write_elements(out, section, data);
}

// Three readings behind a #, to show how a list of values is written.
static void write_unused_list(FILE *out, const lw_section *section)
{
    const lw_table *table = section->table;
    const double parts[] = {1.0, 1.2, 0.8};
    for (size_t i = 0; i < table->count; i++) write_row_comment(out, "  ", &table->rows[i]);
    for (int i = 0; i < 3; i++) {
        double value;
        lw_table_preset(table, &value);
        value *= parts[i];
        fputs("#  - ", out);
        write_value(out, &table->rows[0], &value);
        fputc('\n', out);
    }
}

static void write_section(FILE *out, const lw_section *section, const char *data)
{
    const bool is_used = lw_section_is_given(section, data);
    const char *off = is_used ? "" : "#";
    const lw_table *table = section->table;
    char text[600];
    lw_text_fit(text, sizeof text, "%s. %s%s", table->title, table->doc,
                is_used ? "" : " Not used here: take the # off to use it.");
    fputc('\n', out);
    write_comment(out, "", text);
    fprintf(out, "%s%s:\n", off, table->key);
    if (section->kind == LW_SECTION_PLAIN)
        write_plain(out, table, data + section->offset, off);
    else if (is_used)
        write_array(out, section, data);
    else
        write_unused_list(out, section);
}

static void write_texts(FILE *out, const lw_record *record, const char *data)
{
    for (size_t i = 0; i < record->text_count; i++) {
        const lw_text *text = &record->texts[i];
        char comment[400];
        lw_text_fit(comment, sizeof comment, "%s: %s", text->key, text->doc);
        fputc('\n', out);
        write_comment(out, "", comment);
        fprintf(out, "%s: ", text->key);
        if (text->words)
            fputs(data + text->offset, out);
        else
            write_quoted(out, data + text->offset);
        fputc('\n', out);
    }
}

// --- without a word: what a record is, and no more

void lw_record_write_bare(const lw_record *record, const void *data, FILE *out)
{
    static const char *const leads[2] = {"  ", "  "};
    const char *from = data;
    for (size_t i = 0; i < record->text_count; i++) {
        fprintf(out, "%s: ", record->texts[i].key);
        write_quoted(out, from + record->texts[i].offset);
        fputc('\n', out);
    }
    for (size_t i = 0; i < record->section_count; i++) {
        const lw_section *section = &record->sections[i];
        if (!lw_section_is_given(section, data)) continue;
        fprintf(out, "%s:\n", section->table->key);
        if (section->kind == LW_SECTION_PLAIN)
            write_rows(out, section->table, from + section->offset, leads);
        else
            write_elements(out, section, from);
    }
}

// --- with every word

void lw_record_write(const lw_record *record, const void *data, FILE *out)
{
    void *example = data ? NULL : malloc(record->size);
    if (!data && !example) return;
    if (example) lw_record_example(record, example);
    const char *from = data ? data : example;
    char text[700];
    lw_text_fit(text, sizeof text, "%s. %s", record->title, record->doc);
    write_comment(out, "", text);
    write_comment(out, "",
                  "[judged] marks what nobody has measured; other words in such brackets name a "
                  "source listed in doc/sources.md.");
    write_texts(out, record, from);
    for (size_t i = 0; i < record->section_count; i++) {
        write_section(out, &record->sections[i], from);
    }
    free(example);
}
