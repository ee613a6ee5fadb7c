// schema.h - the tables of a logbook.
// SPDX-License-Identifier: MIT

#ifndef LW_LOGBOOK_SCHEMA_H
#define LW_LOGBOOK_SCHEMA_H

#include "records/logbook/column.h"
#include "records/logbook/logbook.h"

// Makes them in a file that has none.
bool lw_schema_make(lw_logbook *book);

// Brings the tables of an earlier version to ours, as one change.
bool lw_schema_renew(lw_logbook *book);

// From this version on a logbook knows which days were taken out.
#define LW_LOGBOOK_WITH_REMOVED 3

// The first version whose tables have a column.
int lw_schema_since(const lw_column *column);

// A column of the table of days has its value; names, tracks and records stand in others.
bool lw_schema_has(const lw_column *column);

// Its name there: "wind_lull".
void lw_schema_name(const lw_column *column, char name[sizeof column->key]);

#endif
