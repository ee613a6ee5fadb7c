// logbook.h - the logbook: an SQLite file of logged days.
// SPDX-License-Identifier: MIT
//
// A day that lw_logbook_add has confirmed is on the disk. Every change is one transaction; two
// programs may write, one waits for the other. What is no logbook is refused before a byte of it
// is changed, and so is a logbook of a later version.

#ifndef LW_LOGBOOK_H
#define LW_LOGBOOK_H

#include "records/logbook/entry.h"

#define LW_LOGBOOK_VERSION     3           // user_version of the file
#define LW_LOGBOOK_APPLICATION 0x4C574C42  // application_id: "LWLB"
#define LW_LOGBOOK_PATH        4096

typedef struct lw_logbook {
    struct sqlite3 *db;
    const char *path;  // must outlive it
    int version;       // of the file; what is written into is brought to ours
    char why[400];     // after a call that returned false: what is wrong and what to do
} lw_logbook;

// Where the logbook is when nobody says: lullwise/logbook.db in $XDG_DATA_HOME, or else in
// ~/.local/share. False when neither is known.
bool lw_logbook_home(char path[LW_LOGBOOK_PATH]);

// For reading, or for writing too, which makes file and folders that are missing. False: refused,
// nothing is open.
bool lw_logbook_open(lw_logbook *book, const char *path, bool writes);
void lw_logbook_close(lw_logbook *book);

// Several changes as one: all of them are kept at the end, or none.
bool lw_logbook_begin(lw_logbook *book);
bool lw_logbook_end(lw_logbook *book, bool keeps);

// Changes to settled entries. By themselves each is a transaction.
bool lw_logbook_add(lw_logbook *book, const lw_entry *entry);
bool lw_logbook_replace(lw_logbook *book, const lw_entry *entry);  // the one of its id
bool lw_logbook_remove(lw_logbook *book, const char *id);

// All days, from the earliest date on and by id within one, behind those in the list. Tracks, and
// the records of boat and sailor, are left out unless `wants_all`.
bool lw_logbook_days(lw_logbook *book, bool wants_all, lw_entries *days);

// Entries with nothing but the ids of the days that were taken out and are not there again, behind
// those in the list: a copy elsewhere is told by them from a day that has not come here yet.
bool lw_logbook_removed(lw_logbook *book, lw_entries *removed);

#endif
