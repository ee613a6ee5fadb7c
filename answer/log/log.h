// log.h - what `lullwise log` tells of logged days: a list, one of them, those near a forecast, and
// what was changed. The days are the caller's, wherever they are kept.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_LOG_H
#define LW_ANSWER_LOG_H

#include "answer/question.h"
#include "records/logbook/entry.h"

#define LW_SHORT_ID 8  // digits of an id that a person is shown, or more to tell it from others

// A list of all days.
typedef struct lw_listed {
    const char *path;  // of the logbook
    const lw_entries *days;
} lw_listed;
void lw_listed_tell(const void *it, lw_teller *teller);
void lw_log_days_tell(const void *it, lw_teller *teller);  // a few words each, the newest first

// One day, an lw_entry with everything in it.
void lw_entry_tell(const void *it, lw_teller *teller);

// The days most like the day of the inputs, the likest first.
#define LW_NEAR_MOST 5
typedef struct lw_near {
    const lw_inputs *inputs;
    bool asks_mass, asks_boat;  // the sailor's weight counts; another boat is told
    const lw_entries *days;
    lw_conditions asked;
    size_t count;
    struct lw_near_day {
        const lw_entry *entry;
        lw_conditions was;
        double apart;  // in steps
    } found[LW_NEAR_MOST];
} lw_near;
void lw_near_find(lw_near *near);  // from inputs and days
void lw_near_tell(const void *it, lw_teller *teller);

// What a change has done.
typedef struct lw_log_change {
    const char *path;
    const char *key, *verb;          // "added", "Added"
    const lw_entry *entry;           // NULL: an import
    size_t added, known, different;  // of an import
} lw_log_change;
void lw_log_change_tell(const void *it, lw_teller *teller);

#endif
