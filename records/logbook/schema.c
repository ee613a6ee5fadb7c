// schema.c - the tables of a logbook.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L  // open_memstream

#include "records/logbook/schema.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "records/logbook/statement.h"

bool lw_schema_has(const lw_column *column)
{
    return !column->is_derived && column->kind != LW_COLUMN_TRACKS &&
           column->kind != LW_COLUMN_RECORD;
}

void lw_schema_name(const lw_column *column, char name[sizeof column->key])
{
    memcpy(name, column->key, sizeof column->key);
    for (char *at = name; *at; at++) {
        if (*at == '.') *at = '_';
    }
}

// A line of the table of days; its unit stands behind it, and stays in the file.
static void write_column(const lw_column *column, FILE *out)
{
    char name[sizeof column->key];
    const char *unit = column->row ? lw_unit_text(column->row->unit) : "";
    if (!lw_schema_has(column)) return;
    lw_schema_name(column, name);
    if (column->kind == LW_COLUMN_NUMBER)
        fprintf(out, unit[0] ? "  %s REAL, -- [%s]\n" : "  %s REAL,%s\n", name, unit);
    else
        fprintf(out, "  %s TEXT %s,\n", name,
                column->kind == LW_COLUMN_ID ? "PRIMARY KEY NOT NULL" : "NOT NULL");
}

// --- versions: 2 has what a track tells of a day, 3 which days were taken out

#define REMOVED "CREATE TABLE removed (id TEXT PRIMARY KEY NOT NULL) STRICT, WITHOUT ROWID;\n"

int lw_schema_since(const lw_column *column)
{
    return strncmp(column->key, "sailed.", strlen("sailed.")) == 0 ? 2 : 1;
}

static void write_renewal(int version, FILE *out)
{
    const lw_columns columns = lw_columns_of();
    for (size_t i = 0; i < columns.count; i++) {
        char name[sizeof columns.list[i].key];
        if (lw_schema_since(&columns.list[i]) <= version) continue;
        lw_schema_name(&columns.list[i], name);
        fprintf(out, "ALTER TABLE day ADD COLUMN %s REAL;\n", name);
    }
    if (version < LW_LOGBOOK_WITH_REMOVED) fputs(REMOVED, out);
    fprintf(out, "PRAGMA user_version = %d;\n", LW_LOGBOOK_VERSION);
}

static bool renew_tables(lw_logbook *book)
{
    char *sql = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&sql, &length);
    if (!out) return lw_logbook_fail(book, SQLITE_NOMEM);
    write_renewal(book->version, out);
    const bool is_renewed = fclose(out) == 0 && lw_logbook_do(book, sql);
    free(sql);
    return is_renewed;
}

// What another program has renewed in the meantime is left as it is.
bool lw_schema_renew(lw_logbook *book)
{
    if (!lw_logbook_begin(book)) return false;
    const bool is_ours = lw_logbook_number(book, "PRAGMA user_version", &book->version) &&
                         (book->version >= LW_LOGBOOK_VERSION || renew_tables(book));
    if (!lw_logbook_end(book, is_ours) || !is_ours) return false;
    return lw_logbook_number(book, "PRAGMA user_version", &book->version);
}

static void write_tables(FILE *out)
{
    const lw_columns columns = lw_columns_of();
    fputs(
        "CREATE TABLE record (\n"
        "  hash TEXT PRIMARY KEY NOT NULL,\n"
        "  name TEXT NOT NULL,\n"
        "  text TEXT NOT NULL\n"
        ") STRICT;\n"
        "CREATE TABLE day (\n",
        out);
    for (size_t i = 0; i < columns.count; i++) write_column(&columns.list[i], out);
    fputs(
        "  boat TEXT NOT NULL REFERENCES record (hash),\n"
        "  sailor TEXT NOT NULL REFERENCES record (hash)\n"
        ") STRICT;\n"
        "CREATE INDEX day_by_date ON day (date);\n"
        "CREATE TABLE track (\n"
        "  day TEXT NOT NULL REFERENCES day (id) ON DELETE CASCADE,\n"
        "  place INTEGER NOT NULL, -- among the tracks of the day, from 0\n"
        "  hash TEXT NOT NULL,\n"
        "  file TEXT NOT NULL,\n"
        "  PRIMARY KEY (day, place)\n"
        ") STRICT, WITHOUT ROWID;\n" REMOVED,
        out);
    fprintf(out, "PRAGMA application_id = %d;\nPRAGMA user_version = %d;\n", LW_LOGBOOK_APPLICATION,
            LW_LOGBOOK_VERSION);
}

static bool make_tables(lw_logbook *book)
{
    char *sql = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&sql, &length);
    if (!out) return lw_logbook_fail(book, SQLITE_NOMEM);
    write_tables(out);
    const bool is_made = fclose(out) == 0 && lw_logbook_do(book, sql);
    free(sql);
    return is_made;
}

// What another program has made in the meantime is left to it.
bool lw_schema_make(lw_logbook *book)
{
    int tables = 0;
    if (!lw_logbook_number(book, "SELECT count(*) FROM sqlite_schema", &tables)) return false;
    if (tables > 0) return true;
    if (!lw_logbook_begin(book)) return false;
    const bool is_made = lw_logbook_number(book, "SELECT count(*) FROM sqlite_schema", &tables) &&
                         (tables > 0 || make_tables(book));
    return lw_logbook_end(book, is_made) && is_made;
}
