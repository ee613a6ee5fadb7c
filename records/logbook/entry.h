// entry.h - a day as the logbook keeps it: what was sailed, notes, tracks, and the records of boat
// and sailor as they were on that day.
// SPDX-License-Identifier: MIT

#ifndef LW_LOGBOOK_ENTRY_H
#define LW_LOGBOOK_ENTRY_H

#include <stdint.h>

#include "lullwise/logged.h"
#include "records/fault.h"

#define LW_ID_LENGTH       17    // 16 hexadecimal digits and the closing zero
#define LW_NOTES_MOST      4000  // [bytes]
#define LW_TRACK_FILE_ROOM 512
#define LW_DAY_TRACKS_MOST 8

// A track's file, and what its bytes hash to: another file of this name is told from it.
typedef struct lw_day_track {
    char file[LW_TRACK_FILE_ROOM];
    uint64_t hash;  // lw_hash_add of its bytes
} lw_day_track;

typedef struct lw_entry {
    char id[LW_ID_LENGTH];  // of its own, drawn when it is added; a copy elsewhere has the same
    lw_logged day;
    size_t track_count;
    lw_day_track tracks[LW_DAY_TRACKS_MOST];
    char *notes;                      // NULL or "": none
    char *boat, *sailor;              // texts that lw_record_write_bare wrote
    uint64_t boat_hash, sailor_hash;  // lw_record_hash of what they tell
} lw_entry;

// A day without anything in it. Its texts are given back by lw_entry_free.
lw_entry lw_entry_blank(void);
void lw_entry_free(lw_entry *entry);

// Puts a text into a member of an entry, in the place of what was there. False: no memory.
bool lw_entry_put(char **member, const char *text, size_t length);

// Of what is known of a record, the text that is kept; NULL: no memory.
char *lw_entry_record_text(const lw_record *record, const void *data);

// Where an entry stands, and today's date on this computer (NULL: not known).
typedef struct lw_entry_source {
    const char *file;
    size_t line;
    const char *today;
} lw_entry_source;

// A date of the calendar that is not still to come.
bool lw_entry_has_date(const lw_entry *entry, const lw_entry_source *source, lw_faults *faults);

// What its parts show only together: its date, a pin of the boat, winds in their order; takes
// names, hashes and texts from the two records. All faults.
bool lw_entry_settle(lw_entry *entry, const lw_entry_source *source, lw_faults *faults);

// Draws an id: eight digits of the time, so that days of one date stand in the order in which they
// were added, and eight of chance. False where the system gives none.
bool lw_entry_draw_id(char id[LW_ID_LENGTH]);

// Begins as {0}.
typedef struct lw_entries {
    lw_entry *list;
    size_t count, room;
} lw_entries;

lw_entry *lw_entries_add(lw_entries *entries);  // a blank one behind the others; NULL: no memory
lw_entry *lw_entries_find(const lw_entries *entries, const char *id);  // NULL: none has it
void lw_entries_free(lw_entries *entries);

#endif
