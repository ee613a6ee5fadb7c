// column.c - the columns of a logged day.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L  // open_memstream

#include "records/logbook/column.h"

#include <inttypes.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "records/record_value.h"

// Names, which follow from the records.
static const lw_text names[] = {
    {.key = "boat", .offset = offsetof(lw_logged, boat), .preset = ""},
    {.key = "sailor", .offset = offsetof(lw_logged, sailor), .preset = ""},
};

static lw_column *add(lw_columns *columns, const char *key, lw_column_kind kind, size_t offset)
{
    lw_column *column = &columns->list[columns->count++];
    *column = (lw_column){.kind = kind, .offset = offset};
    LW_FIT(column->key, "%s", key);
    return column;
}

static void add_section(lw_columns *columns, const lw_section *section)
{
    const lw_table *table = section->table;
    for (size_t i = 0; i < table->count; i++) {
        char key[48];
        LW_FIT(key, "%s.%s", table->key, table->rows[i].key);
        const size_t offset = offsetof(lw_entry, day) + section->offset;
        add(columns, key, LW_COLUMN_NUMBER, offset)->row = &table->rows[i];
    }
}

lw_columns lw_columns_of(void)
{
    lw_columns columns = {0};
    const lw_record *record = &lw_logged_record;
    add(&columns, "id", LW_COLUMN_ID, 0);
    for (size_t i = 0; i < record->text_count; i++)
        add(&columns, record->texts[i].key, LW_COLUMN_TEXT, 0)->text = &record->texts[i];
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        lw_column *name = add(&columns, names[i].key, LW_COLUMN_TEXT, 0);
        name->text = &names[i], name->is_derived = true;
    }
    for (size_t i = 0; i < record->section_count; i++) add_section(&columns, &record->sections[i]);
    add(&columns, "signs", LW_COLUMN_SIGNS, 0);
    add(&columns, "notes", LW_COLUMN_NOTES, 0);
    add(&columns, "tracks", LW_COLUMN_TRACKS, 0);
    add(&columns, "boat_record", LW_COLUMN_RECORD, offsetof(lw_entry, boat));
    add(&columns, "sailor_record", LW_COLUMN_RECORD, offsetof(lw_entry, sailor));
    return columns;
}

const lw_column *lw_columns_named(const lw_columns *columns, const char *key)
{
    for (size_t i = 0; i < columns->count; i++) {
        if (strcmp(columns->list[i].key, key) == 0) return &columns->list[i];
    }
    return NULL;
}

// --- out

// Twelve digits: what more there is is noise of the change of units.
static double twelve_digits(double x)
{
    char text[40];
    const char *rest;
    double told = x;
    LW_FIT(text, "%.12g", x);
    return lw_decimal_read(text, &told, &rest) ? told : x;
}

double lw_column_number(const lw_column *column, const lw_entry *entry)
{
    const double shown = lw_quantity_shown(column->row, (const char *)entry + column->offset);
    return isnan(shown) ? NAN : twelve_digits(shown);
}

static void write_signs(lw_sign_set set, FILE *out)
{
    const char *gap = "";
    for (int s = 0; s < LW_SIGNS; s++) {
        if (!(set & LW_SIGN_BIT(s))) continue;
        fprintf(out, "%s%s", gap, lw_sign_key((lw_sign)s));
        gap = " ";
    }
}

static void write_tracks(const lw_entry *entry, FILE *out)
{
    for (size_t i = 0; i < entry->track_count; i++) {
        const lw_day_track *track = &entry->tracks[i];
        fprintf(out, "%s%016" PRIx64 " %s", i ? "\n" : "", track->hash, track->file);
    }
}

static void write(const lw_column *column, const lw_entry *entry, FILE *out)
{
    const char *text = NULL;
    switch (column->kind) {
        case LW_COLUMN_ID:
            text = entry->id;
            break;
        case LW_COLUMN_TEXT:
            text = (const char *)&entry->day + column->text->offset;
            break;
        case LW_COLUMN_NUMBER:
            if (!isnan(lw_column_number(column, entry)))
                fprintf(out, "%.12g", lw_column_number(column, entry));
            break;
        case LW_COLUMN_SIGNS:
            write_signs(entry->day.signs, out);
            break;
        case LW_COLUMN_NOTES:
            text = entry->notes;
            break;
        case LW_COLUMN_TRACKS:
            write_tracks(entry, out);
            break;
        case LW_COLUMN_RECORD:
            text = *(char *const *)((const char *)entry + column->offset);
            break;
    }
    if (text) fputs(text, out);
}

char *lw_column_text(const lw_column *column, const lw_entry *entry)
{
    char *text = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&text, &length);
    if (!out) return NULL;
    write(column, entry, out);
    if (fclose(out) == 0) return text;
    free(text);
    return NULL;
}

// --- in

static bool say(const lw_written *written, lw_faults *faults, const char *sentence,
                const char *expected)
{
    lw_fault *fault = lw_faults_add(faults, written);
    LW_FIT(fault->sentence, "%s", sentence);
    LW_FIT(fault->expected, "%s", expected);
    return false;
}

bool lw_column_put_number(const lw_column *column, lw_entry *entry, double number,
                          const lw_written *written, lw_faults *faults)
{
    const lw_quantity *row = column->row;
    const double si = number * lw_unit_in_si(row->unit);
    if (!isnan(number) && !lw_quantity_is_in_range(row, si)) {
        char range[LW_RANGE_LENGTH];
        lw_quantity_range(row, row->min, row->max, range);
        return say(written, faults, lw_status_text(LW_OUT_OF_RANGE), range);
    }
    lw_quantity_put(row, (char *)entry + column->offset, si);
    return true;
}

static bool put_number_text(const lw_column *column, lw_entry *entry, const lw_written *written,
                            lw_faults *faults)
{
    double number = NAN;
    const char *rest = written->text;
    if (written->text[0] && (!lw_decimal_read(written->text, &number, &rest) || *rest))
        return say(written, faults, "this is not a number", "");
    return lw_column_put_number(column, entry, number, written, faults);
}

static bool put_id(lw_entry *entry, const lw_written *written, lw_faults *faults)
{
    const size_t length = strlen(written->text);
    if (length != LW_ID_LENGTH - 1 || strspn(written->text, "0123456789abcdef") != length)
        return say(written, faults, "this is no day's id", "16 digits of 0 to 9 and a to f");
    LW_FIT(entry->id, "%s", written->text);
    return true;
}

static bool put_day_text(const lw_column *column, lw_entry *entry, const lw_written *written,
                         lw_faults *faults)
{
    char *member = (char *)&entry->day + column->text->offset;
    if (written->text[0]) return lw_written_text(written, column->text, &entry->day, faults);
    memset(member, 0, LW_NAME_LENGTH);
    return true;
}

bool lw_sign_put(lw_sign_set *set, const lw_written *written, lw_faults *faults)
{
    const lw_sign sign = lw_sign_named(written->text);
    if (sign == LW_SIGNS)
        lw_written_unknown(written, "sign", lw_sign_key(lw_sign_nearest(written->text)), faults);
    else
        *set |= LW_SIGN_BIT(sign);
    return sign < LW_SIGNS;
}

static bool put_signs(lw_entry *entry, const lw_written *written, lw_faults *faults)
{
    lw_sign_set set = 0;
    bool is_sound = true;
    for (const char *at = written->text; *at; at += strspn(at, " ")) {
        char word[40];
        LW_FIT(word, "%.*s", (int)strcspn(at, " "), at);
        lw_written one = *written;
        one.text = word;
        is_sound = lw_sign_put(&set, &one, faults) && is_sound;
        at += strcspn(at, " ");
    }
    if (is_sound) entry->day.signs = set;
    return is_sound;
}

bool lw_notes_are_sound(const lw_written *written, lw_faults *faults)
{
    const size_t length = strlen(written->text);
    char expected[40];
    LW_FIT(expected, "%d bytes at most", LW_NOTES_MOST);
    if (length > LW_NOTES_MOST) return say(written, faults, "the notes are too long", expected);
    char tame[LW_NOTES_MOST + 4];
    lw_text_tame(tame, sizeof tame, written->text);
    for (size_t i = 0; i < length; i++) {
        const bool is_break = written->text[i] == '\n' && tame[i] == ' ';
        if (!is_break && tame[i] != written->text[i])
            return say(written, faults, "a character that cannot be shown stands in the notes", "");
    }
    return true;
}

static bool put_notes(lw_entry *entry, const lw_written *written, lw_faults *faults)
{
    return lw_notes_are_sound(written, faults) &&
           (lw_entry_put(&entry->notes, written->text, strlen(written->text)) ||
            lw_faults_no_memory(faults, written->file));
}

// "0123456789abcdef morning.gpx": the line up to `end`.
static bool put_track(lw_entry *entry, const char *line, size_t length)
{
    char *end, tame[LW_TRACK_FILE_ROOM];
    if (entry->track_count == LW_DAY_TRACKS_MOST || length < LW_ID_LENGTH + 1 ||
        length - LW_ID_LENGTH >= LW_TRACK_FILE_ROOM || line[LW_ID_LENGTH - 1] != ' ' ||
        strspn(line, "0123456789abcdef") != LW_ID_LENGTH - 1)
        return false;
    lw_day_track *track = &entry->tracks[entry->track_count];
    track->hash = strtoull(line, &end, 16);
    memset(track->file, 0, sizeof track->file);
    memcpy(track->file, line + LW_ID_LENGTH, length - LW_ID_LENGTH);
    lw_text_tame(tame, sizeof tame, track->file);
    if (strcmp(tame, track->file) != 0) return false;
    entry->track_count++;
    return true;
}

static bool put_tracks(lw_entry *entry, const lw_written *written, lw_faults *faults)
{
    entry->track_count = 0;
    for (const char *at = written->text; *at;) {
        const size_t length = strcspn(at, "\n");
        if (!put_track(entry, at, length))
            return say(written, faults, "this is no list of tracks",
                       "8 lines at most, of 16 hexadecimal digits, a space and a file's name");
        at += length + (at[length] == '\n');
    }
    return true;
}

static bool put_record(const lw_column *column, lw_entry *entry, const lw_written *written,
                       lw_faults *faults)
{
    char **member = (char **)((char *)entry + column->offset);
    return lw_entry_put(member, written->text, strlen(written->text)) ||
           lw_faults_no_memory(faults, written->file);
}

bool lw_column_put_text(const lw_column *column, lw_entry *entry, const lw_written *written,
                        lw_faults *faults)
{
    switch (column->kind) {
        case LW_COLUMN_ID:
            return put_id(entry, written, faults);
        case LW_COLUMN_TEXT:
            return put_day_text(column, entry, written, faults);
        case LW_COLUMN_NUMBER:
            return put_number_text(column, entry, written, faults);
        case LW_COLUMN_SIGNS:
            return put_signs(entry, written, faults);
        case LW_COLUMN_NOTES:
            return put_notes(entry, written, faults);
        case LW_COLUMN_TRACKS:
            return put_tracks(entry, written, faults);
        default:
            return put_record(column, entry, written, faults);
    }
}
