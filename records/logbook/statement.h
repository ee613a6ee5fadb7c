// statement.h - one SQL statement of a logbook, from its text to its end; and what went wrong.
// SPDX-License-Identifier: MIT

#ifndef LW_LOGBOOK_STATEMENT_H
#define LW_LOGBOOK_STATEMENT_H

#include <sqlite3.h>

#include "records/logbook/logbook.h"

// Writes into book->why what an SQLite result means to a person; false.
bool lw_logbook_fail(lw_logbook *book, int result);

// Statements without values and results, one after the other.
bool lw_logbook_do(lw_logbook *book, const char *sql);

// NULL: failed.
sqlite3_stmt *lw_statement(lw_logbook *book, const char *sql);

// A value of a statement, from 1; the text must stay until it is run.
void lw_statement_text(sqlite3_stmt *statement, int place, const char *text);

// Runs it to its end and gives it up; fails with NULL.
bool lw_statement_run(lw_logbook *book, sqlite3_stmt *statement);

// The first number that a query gives.
bool lw_logbook_number(lw_logbook *book, const char *sql, int *number);

#endif
