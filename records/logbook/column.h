// column.h - the columns of a logged day, alike in the database, in CSV and in JSON.
// SPDX-License-Identifier: MIT
//
// They follow from the tables: every quantity of lw_logged_record is one, by its key ("wind.lull")
// and in its row's unit, in twelve digits. So that all three write and read the same double.

#ifndef LW_LOGBOOK_COLUMN_H
#define LW_LOGBOOK_COLUMN_H

#include "records/logbook/entry.h"

#define LW_COLUMNS_MOST 64

typedef enum lw_column_kind {
    LW_COLUMN_ID,
    LW_COLUMN_TEXT,    // a text of lw_logged
    LW_COLUMN_NUMBER,  // one quantity of it
    LW_COLUMN_SIGNS,   // keys, spaces between
    LW_COLUMN_NOTES,
    LW_COLUMN_TRACKS,  // a line each: hash, space, file
    LW_COLUMN_RECORD,  // the text of a record
} lw_column_kind;

typedef struct lw_column {
    char key[48];
    lw_column_kind kind;
    size_t offset;           // in lw_entry: of the number's struct, or of a record's text
    const lw_text *text;     // of LW_COLUMN_TEXT
    const lw_quantity *row;  // of LW_COLUMN_NUMBER
    bool is_derived;         // a name: it stands in the record too
} lw_column;

typedef struct lw_columns {
    size_t count;
    lw_column list[LW_COLUMNS_MOST];
} lw_columns;

// In the order in which they are written.
lw_columns lw_columns_of(void);

const lw_column *lw_columns_named(const lw_columns *columns, const char *key);  // or NULL

// The number in the row's unit, twelve digits; NAN: not told.
double lw_column_number(const lw_column *column, const lw_entry *entry);

// Any column as text, "" for what is not there. To be freed; NULL: no memory.
char *lw_column_text(const lw_column *column, const lw_entry *entry);

// The way back; a fault when the value cannot be that. `number` in the row's unit.
bool lw_column_put_number(const lw_column *column, lw_entry *entry, double number,
                          const lw_written *written, lw_faults *faults);
bool lw_column_put_text(const lw_column *column, lw_entry *entry, const lw_written *written,
                        lw_faults *faults);

// One sign by its key or its words; a fault that names the nearest when there is none.
bool lw_sign_put(lw_sign_set *set, const lw_written *written, lw_faults *faults);

// Notes as they may be kept: shown as they are, line breaks aside, and not too long.
bool lw_notes_are_sound(const lw_written *written, lw_faults *faults);

#endif
