// logbook.c - days put into a logbook, changed, taken out and read.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L  // open_memstream

#include "records/logbook/logbook.h"

#include <inttypes.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "records/logbook/schema.h"
#include "records/logbook/statement.h"

// --- transactions

// Begins one unless the caller has; *is_own tells.
static bool begin_own(lw_logbook *book, bool *is_own)
{
    *is_own = sqlite3_get_autocommit(book->db) != 0;
    return !*is_own || lw_logbook_begin(book);
}

static bool end_own(lw_logbook *book, bool is_own, bool is_done)
{
    return (!is_own || lw_logbook_end(book, is_done)) && is_done;
}

// --- a day goes in

static void hash_text(uint64_t hash, char text[LW_ID_LENGTH])
{
    lw_text_fit(text, LW_ID_LENGTH, "%016" PRIx64, hash);
}

static bool add_record(lw_logbook *book, const char *hash, const char *name, const char *text)
{
    sqlite3_stmt *put =
        lw_statement(book, "INSERT OR IGNORE INTO record (hash, name, text) VALUES (?, ?, ?)");
    lw_statement_text(put, 1, hash);
    lw_statement_text(put, 2, name);
    lw_statement_text(put, 3, text);
    return lw_statement_run(book, put);
}

// "INSERT INTO day (id, date, ...) VALUES (?, ?, ...)"; to be freed.
static char *day_sql(const lw_columns *columns)
{
    char *sql = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&sql, &length);
    if (!out) return NULL;
    fputs("INSERT INTO day (", out);
    for (size_t i = 0; i < columns->count; i++) {
        char name[sizeof columns->list[i].key];
        if (!lw_schema_has(&columns->list[i])) continue;
        lw_schema_name(&columns->list[i], name);
        fprintf(out, "%s, ", name);
    }
    fputs("boat, sailor) VALUES (", out);
    for (size_t i = 0; i < columns->count; i++)
        fputs(lw_schema_has(&columns->list[i]) ? "?, " : "", out);
    fputs("?, ?)", out);
    if (fclose(out) == 0) return sql;
    free(sql);
    return NULL;
}

static bool bind(sqlite3_stmt *put, int place, const lw_column *column, const lw_entry *entry)
{
    if (column->kind == LW_COLUMN_NUMBER) {
        const double number = lw_column_number(column, entry);
        return (isnan(number) ? sqlite3_bind_null(put, place)
                              : sqlite3_bind_double(put, place, number)) == SQLITE_OK;
    }
    char *text = lw_column_text(column, entry);
    return text && sqlite3_bind_text(put, place, text, -1, free) == SQLITE_OK;
}

static bool add_day(lw_logbook *book, const lw_entry *entry, const char *boat, const char *sailor)
{
    const lw_columns columns = lw_columns_of();
    char *sql = day_sql(&columns);
    if (!sql) return lw_logbook_fail(book, SQLITE_NOMEM);
    sqlite3_stmt *put = lw_statement(book, sql);
    free(sql);
    if (!put) return false;
    int place = 0;
    bool is_bound = true;
    for (size_t i = 0; i < columns.count; i++) {
        const lw_column *column = &columns.list[i];
        if (lw_schema_has(column)) is_bound = bind(put, ++place, column, entry) && is_bound;
    }
    lw_statement_text(put, ++place, boat);
    lw_statement_text(put, ++place, sailor);
    if (is_bound) return lw_statement_run(book, put);
    sqlite3_finalize(put);
    return lw_logbook_fail(book, SQLITE_NOMEM);
}

static bool add_tracks(lw_logbook *book, const lw_entry *entry)
{
    bool is_added = true;
    for (size_t i = 0; is_added && i < entry->track_count; i++) {
        char hash[LW_ID_LENGTH];
        hash_text(entry->tracks[i].hash, hash);
        sqlite3_stmt *put =
            lw_statement(book, "INSERT INTO track (day, place, hash, file) VALUES (?, ?, ?, ?)");
        lw_statement_text(put, 1, entry->id);
        if (put) sqlite3_bind_int(put, 2, (int)i);
        lw_statement_text(put, 3, hash);
        lw_statement_text(put, 4, entry->tracks[i].file);
        is_added = lw_statement_run(book, put);
    }
    return is_added;
}

// A statement with an id as its one value.
static bool do_with(lw_logbook *book, const char *sql, const char *id)
{
    sqlite3_stmt *statement = lw_statement(book, sql);
    lw_statement_text(statement, 1, id);
    return lw_statement_run(book, statement);
}

static bool add(lw_logbook *book, const lw_entry *entry)
{
    char boat[LW_ID_LENGTH], sailor[LW_ID_LENGTH];
    hash_text(entry->boat_hash, boat), hash_text(entry->sailor_hash, sailor);
    return add_record(book, boat, entry->day.boat, entry->boat) &&
           add_record(book, sailor, entry->day.sailor, entry->sailor) &&
           add_day(book, entry, boat, sailor) && add_tracks(book, entry) &&
           do_with(book, "DELETE FROM removed WHERE id = ?", entry->id);
}

bool lw_logbook_add(lw_logbook *book, const lw_entry *entry)
{
    bool is_own;
    return begin_own(book, &is_own) && end_own(book, is_own, add(book, entry));
}

// --- a day goes out

static bool drop(lw_logbook *book, const char *id)
{
    return do_with(book, "INSERT OR IGNORE INTO removed SELECT id FROM day WHERE id = ?", id) &&
           do_with(book, "DELETE FROM day WHERE id = ?", id);
}

// Records that no day is of any more.
static bool drop_unused(lw_logbook *book)
{
    return lw_logbook_do(book,
                         "DELETE FROM record WHERE hash NOT IN (SELECT boat FROM day) AND hash NOT "
                         "IN (SELECT sailor FROM day)");
}

bool lw_logbook_replace(lw_logbook *book, const lw_entry *entry)
{
    bool is_own;
    return begin_own(book, &is_own) &&
           end_own(book, is_own, drop(book, entry->id) && add(book, entry) && drop_unused(book));
}

bool lw_logbook_remove(lw_logbook *book, const char *id)
{
    bool is_own;
    return begin_own(book, &is_own) && end_own(book, is_own, drop(book, id) && drop_unused(book));
}

// --- days read

// The query of all columns of days, NULL for what an earlier version does not have; names, hashes
// and texts of both records follow.
static char *days_sql(const lw_logbook *book, const lw_columns *columns, bool wants_all)
{
    char *sql = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&sql, &length);
    if (!out) return NULL;
    fputs("SELECT ", out);
    for (size_t i = 0; i < columns->count; i++) {
        char name[sizeof columns->list[i].key];
        if (!lw_schema_has(&columns->list[i])) continue;
        lw_schema_name(&columns->list[i], name);
        const bool is_there = lw_schema_since(&columns->list[i]) <= book->version;
        fprintf(out, "%s%s, ", is_there ? "day." : "NULL AS ", name);
    }
    fprintf(out,
            "b.name, s.name, b.hash, s.hash%s FROM day JOIN record AS b ON b.hash = day.boat JOIN "
            "record AS s ON s.hash = day.sailor ORDER BY day.date, day.id",
            wants_all ? ", b.text, s.text" : "");
    if (fclose(out) == 0) return sql;
    free(sql);
    return NULL;
}

static const char *text_at(sqlite3_stmt *row, int place)
{
    const unsigned char *text = sqlite3_column_text(row, place);
    return text ? (const char *)text : "";
}

static bool take_column(sqlite3_stmt *row, int place, const lw_column *column, lw_entry *entry,
                        lw_faults *faults)
{
    lw_written written = {.file = "logbook", .key = column->key, .text = ""};
    if (column->kind != LW_COLUMN_NUMBER) {
        written.text = text_at(row, place);
        return lw_column_put_text(column, entry, &written, faults);
    }
    const bool is_told = sqlite3_column_type(row, place) != SQLITE_NULL;
    const double number = is_told ? sqlite3_column_double(row, place) : NAN;
    return lw_column_put_number(column, entry, number, &written, faults);
}

static bool take_records(sqlite3_stmt *row, int place, bool wants_all, lw_entry *entry)
{
    LW_FIT(entry->day.boat, "%s", text_at(row, place));
    LW_FIT(entry->day.sailor, "%s", text_at(row, place + 1));
    entry->boat_hash = strtoull(text_at(row, place + 2), NULL, 16);
    entry->sailor_hash = strtoull(text_at(row, place + 3), NULL, 16);
    if (!wants_all) return true;
    const char *boat = text_at(row, place + 4), *sailor = text_at(row, place + 5);
    return lw_entry_put(&entry->boat, boat, strlen(boat)) &&
           lw_entry_put(&entry->sailor, sailor, strlen(sailor));
}

static bool take_tracks(lw_logbook *book, lw_entry *entry)
{
    sqlite3_stmt *row =
        lw_statement(book, "SELECT hash, file FROM track WHERE day = ? ORDER BY place");
    lw_statement_text(row, 1, entry->id);
    while (row && sqlite3_step(row) == SQLITE_ROW && entry->track_count < LW_DAY_TRACKS_MOST) {
        lw_day_track *track = &entry->tracks[entry->track_count++];
        track->hash = strtoull(text_at(row, 0), NULL, 16);
        lw_text_tame(track->file, sizeof track->file, text_at(row, 1));
    }
    return lw_statement_run(book, row);
}

// A value that no lullwise has written.
static bool say_damaged(lw_logbook *book, const lw_entry *entry, const lw_faults *faults)
{
    const lw_fault *fault = faults->count ? &faults->list[0] : &faults->spill;
    LW_FIT(book->why, "%s: the day %s is damaged: %s \"%s\": %s", book->path, entry->id, fault->key,
           fault->read, fault->sentence);
    return false;
}

static bool take_day(lw_logbook *book, sqlite3_stmt *row, const lw_columns *columns, bool wants_all,
                     lw_entry *entry)
{
    lw_faults faults = {0};
    int place = 0;
    for (size_t i = 0; i < columns->count; i++) {
        const lw_column *column = &columns->list[i];
        if (lw_schema_has(column)) take_column(row, place++, column, entry, &faults);
    }
    const bool is_sound = faults.fault_count == 0 || say_damaged(book, entry, &faults);
    lw_faults_free(&faults);
    if (!is_sound) return false;
    return (take_records(row, place, wants_all, entry) || lw_logbook_fail(book, SQLITE_NOMEM)) &&
           (!wants_all || take_tracks(book, entry));
}

static bool take_days(lw_logbook *book, const lw_columns *columns, bool wants_all, lw_entries *days)
{
    char *sql = days_sql(book, columns, wants_all);
    if (!sql) return lw_logbook_fail(book, SQLITE_NOMEM);
    sqlite3_stmt *row = lw_statement(book, sql);
    free(sql);
    if (!row) return false;
    bool is_taken = true;
    while (is_taken && sqlite3_step(row) == SQLITE_ROW) {
        lw_entry *entry = lw_entries_add(days);
        is_taken = entry ? take_day(book, row, columns, wants_all, entry)
                         : lw_logbook_fail(book, SQLITE_NOMEM);
    }
    const int result = sqlite3_finalize(row);
    return is_taken && (result == SQLITE_OK || lw_logbook_fail(book, result));
}

bool lw_logbook_days(lw_logbook *book, bool wants_all, lw_entries *days)
{
    const lw_columns columns = lw_columns_of();
    const bool is_own = sqlite3_get_autocommit(book->db) != 0;
    if (is_own && !lw_logbook_do(book, "BEGIN")) return false;
    const bool is_read = take_days(book, &columns, wants_all, days);
    if (is_own) sqlite3_exec(book->db, "COMMIT", NULL, NULL, NULL);
    return is_read;
}

bool lw_logbook_removed(lw_logbook *book, lw_entries *removed)
{
    if (book->version < LW_LOGBOOK_WITH_REMOVED) return true;
    sqlite3_stmt *row = lw_statement(book, "SELECT id FROM removed ORDER BY id");
    bool is_taken = true;
    while (is_taken && row && sqlite3_step(row) == SQLITE_ROW) {
        lw_entry *entry = lw_entries_add(removed);
        is_taken = entry || lw_logbook_fail(book, SQLITE_NOMEM);
        if (entry) LW_FIT(entry->id, "%s", text_at(row, 0));
    }
    return lw_statement_run(book, row) && is_taken;
}
