// csv.c - days of a logbook as CSV.
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "records/logbook/arrived.h"

// --- out

static void write_cell(const char *text, FILE *out)
{
    if (!strpbrk(text, ",\"\r\n")) {
        fputs(text, out);
        return;
    }
    fputc('"', out);
    for (; *text; text++) {
        if (*text == '"') fputc('"', out);
        fputc(*text, out);
    }
    fputc('"', out);
}

// "wind.lull [kn]"; a bare number has no brackets.
#define HEAD_LENGTH 80
static void head_of(const lw_column *column, char head[HEAD_LENGTH])
{
    const char *unit = column->row ? lw_unit_text(column->row->unit) : "";
    lw_text_fit(head, HEAD_LENGTH, unit[0] ? "%s [%s]" : "%s", column->key, unit);
}

static bool write_day(const lw_columns *columns, const lw_entry *entry, FILE *out)
{
    for (size_t i = 0; i < columns->count; i++) {
        char *text = lw_column_text(&columns->list[i], entry);
        if (!text) return false;
        write_cell(text, out);
        fputs(i + 1 < columns->count ? "," : "\r\n", out);
        free(text);
    }
    return true;
}

bool lw_days_write_csv(const lw_entries *days, FILE *out)
{
    const lw_columns columns = lw_columns_of();
    for (size_t i = 0; i < columns.count; i++) {
        char head[HEAD_LENGTH];
        head_of(&columns.list[i], head);
        fprintf(out, "%s%s", head, i + 1 < columns.count ? "," : "\r\n");
    }
    bool is_written = true;
    for (size_t i = 0; is_written && i < days->count; i++)
        is_written = write_day(&columns, &days->list[i], out);
    return is_written && fflush(out) == 0 && !ferror(out);
}

// --- in

typedef struct csv {
    const lw_source_text *source;
    const char *at;  // what comes next
    size_t line;     // in which that stands
    char *cell;      // the last one, with room for the longest
    bool ends_line;  // it was the last of its line
    bool is_broken;  // a quote that does not end, or text behind one that does
} csv;

// Up to the quote that ends it; a quote inside is written twice.
static void take_quoted(csv *in, size_t *length)
{
    const char *end = in->source->text + in->source->length;
    for (in->at++; in->at < end; in->at++) {
        if (*in->at == '"' && in->at[1] != '"') break;
        if (*in->at == '"') in->at++;
        in->line += *in->at == '\n';
        in->cell[(*length)++] = *in->at;
    }
    in->is_broken = in->at >= end;
    if (!in->is_broken) in->at++;
}

// By any of the three ways in which lines end.
static void end_line(csv *in)
{
    in->at += strspn(in->at, "\r");
    in->at += *in->at == '\n';
    in->line++;
}

static void take_cell(csv *in)
{
    size_t length = 0;
    in->is_broken = false;
    if (*in->at == '"') {
        take_quoted(in, &length);
    } else {
        length = strcspn(in->at, ",\r\n");
        memcpy(in->cell, in->at, length);
        in->at += length;
    }
    in->cell[length] = '\0';
    in->is_broken = in->is_broken || (*in->at && !strchr(",\r\n", *in->at));
    in->ends_line = *in->at != ',';
    if (in->ends_line)
        end_line(in);
    else
        in->at++;
}

static lw_written here(const csv *in, const char *key, const char *text)
{
    return (lw_written){
        .file = in->source->name, .line = in->line, .column = 1, .key = key, .text = text};
}

static bool say(const csv *in, lw_faults *faults, const char *sentence)
{
    const lw_written written = here(in, "", "");
    LW_FIT(lw_faults_add(faults, &written)->sentence, "%s", sentence);
    return false;
}

typedef struct heads {
    size_t count;
    const lw_column *list[LW_COLUMNS_MOST];
} heads;

static bool take_head(const csv *in, const lw_columns *columns, heads *taken, lw_faults *faults)
{
    const lw_column *column = NULL;
    for (size_t i = 0; i < columns->count && !column; i++) {
        char head[HEAD_LENGTH];
        head_of(&columns->list[i], head);
        if (strcmp(head, in->cell) == 0) column = &columns->list[i];
    }
    const lw_written written = here(in, "", in->cell);
    if (!column) {
        lw_arrived_unknown(columns, &written, faults);
        return false;
    }
    for (size_t i = 0; i < taken->count; i++) {
        if (taken->list[i] == column) return say(in, faults, "a column stands twice in the header");
    }
    taken->list[taken->count++] = column;
    return true;
}

static bool take_heads(csv *in, const lw_columns *columns, heads *taken, lw_faults *faults)
{
    bool is_sound = true;
    do {
        take_cell(in);
        if (in->is_broken) return say(in, faults, "a quote is missing, or one too many");
        is_sound = take_head(in, columns, taken, faults) && is_sound;
    } while (!in->ends_line);
    return is_sound;
}

// A day's line; false when the rest cannot be read.
static bool take_day(csv *in, const heads *taken, const char *today, lw_entry *entry,
                     lw_faults *faults)
{
    const lw_entry_source source = {in->source->name, in->line, today};
    const size_t before = faults->fault_count;
    for (size_t i = 0; i < taken->count; i++) {
        const lw_column *column = taken->list[i];
        take_cell(in);
        if (in->is_broken) return say(in, faults, "a quote is missing, or one too many");
        lw_written written = here(in, column->key, in->cell);
        written.line = source.line;
        const bool is_told = column->kind != LW_COLUMN_ID || written.text[0];
        if (is_told) lw_column_put_text(column, entry, &written, faults);
        if (in->ends_line != (i + 1 == taken->count))
            return say(in, faults, "this line has not as many cells as the header");
    }
    if (faults->fault_count == before) lw_arrived_settle(entry, &source, faults);
    return true;
}

static void skip_blank_lines(csv *in)
{
    for (; *in->at == '\r' || *in->at == '\n'; in->at++) in->line += *in->at == '\n';
}

static void take_days(csv *in, const char *today, lw_entries *days, lw_faults *faults)
{
    const lw_columns columns = lw_columns_of();
    heads taken = {0};
    if (!take_heads(in, &columns, &taken, faults)) return;
    while (skip_blank_lines(in), *in->at) {
        lw_entry *entry = lw_entries_add(days);
        if (!entry) {
            lw_faults_no_memory(faults, in->source->name);
            return;
        }
        if (!take_day(in, &taken, today, entry, faults)) return;
    }
}

bool lw_days_read_csv(const lw_source_text *source, const char *today, lw_entries *days,
                      lw_faults *faults)
{
    const size_t before = faults->fault_count;
    csv in = {.source = source, .at = source->text, .line = 1};
    in.cell = malloc(source->length + 1);
    if (!in.cell) return lw_faults_no_memory(faults, source->name);
    take_days(&in, today, days, faults);
    free(in.cell);
    return faults->fault_count == before;
}
