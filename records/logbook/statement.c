// statement.c - statements and transactions of a logbook; and what went wrong.
// SPDX-License-Identifier: MIT

#include "records/logbook/statement.h"

static const char *reason(int result)
{
    switch (result & 0xFF) {
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return "another program is writing into it; try again in a moment";
        case SQLITE_FULL:
            return "there is no room left on the disk; make some, and do it again";
        case SQLITE_IOERR:
            return "the disk gives an error, or has no room left; see to it, and do it again";
        case SQLITE_READONLY:
        case SQLITE_PERM:
        case SQLITE_CANTOPEN:
            return "it may not be written there; --logbook FILE keeps it elsewhere";
        case SQLITE_NOTADB:
        case SQLITE_CORRUPT:
            return "it is damaged; take a copy of it from elsewhere, or its last export";
        case SQLITE_TOOBIG:
        case SQLITE_NOMEM:
            return "there is not enough memory";
        case SQLITE_CONSTRAINT:
            return "a day of this id is there already";
        default:
            return "it cannot be read or written";
    }
}

bool lw_logbook_fail(lw_logbook *book, int result)
{
    char path[200];
    lw_text_tame(path, sizeof path, book->path);
    LW_FIT(book->why, "%s: %s", path, reason(result));
    return false;
}

bool lw_logbook_do(lw_logbook *book, const char *sql)
{
    return sqlite3_exec(book->db, sql, NULL, NULL, NULL) == SQLITE_OK ||
           lw_logbook_fail(book, sqlite3_extended_errcode(book->db));
}

sqlite3_stmt *lw_statement(lw_logbook *book, const char *sql)
{
    sqlite3_stmt *statement = NULL;
    const int result = sqlite3_prepare_v2(book->db, sql, -1, &statement, NULL);
    if (result != SQLITE_OK) lw_logbook_fail(book, result);
    return statement;
}

void lw_statement_text(sqlite3_stmt *statement, int place, const char *text)
{
    if (statement) sqlite3_bind_text(statement, place, text, -1, SQLITE_STATIC);
}

bool lw_statement_run(lw_logbook *book, sqlite3_stmt *statement)
{
    if (!statement) return false;
    while (sqlite3_step(statement) == SQLITE_ROW) continue;
    const int result = sqlite3_finalize(statement);
    return result == SQLITE_OK || lw_logbook_fail(book, result);
}

bool lw_logbook_number(lw_logbook *book, const char *sql, int *number)
{
    sqlite3_stmt *statement = lw_statement(book, sql);
    if (!statement) return false;
    if (sqlite3_step(statement) == SQLITE_ROW) *number = sqlite3_column_int(statement, 0);
    const int result = sqlite3_finalize(statement);
    return result == SQLITE_OK || lw_logbook_fail(book, result);
}

// --- transactions

bool lw_logbook_begin(lw_logbook *book) { return lw_logbook_do(book, "BEGIN IMMEDIATE"); }

bool lw_logbook_end(lw_logbook *book, bool keeps)
{
    if (keeps && lw_logbook_do(book, "COMMIT")) return true;
    sqlite3_exec(book->db, "ROLLBACK", NULL, NULL, NULL);
    return !keeps;
}
