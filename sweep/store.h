// store.h - the points that are worked out, kept on disk as they come, and handed out to be.
// SPDX-License-Identifier: MIT
//
// What belongs to FILE stands in FILE.part, a line a point, until all points are there. A run that
// was killed lost no whole line of it. All calls may come from any thread.

#ifndef LW_STORE_H
#define LW_STORE_H

#include <pthread.h>
#include <stdio.h>

#include "sweep/best.h"

#define LW_STORE_PATH 4096
#define LW_STORE_WHY  600

typedef struct lw_gap {
    size_t point;
    char why[80];
} lw_gap;

typedef struct lw_store {
    const lw_sweep *sweep;
    char path[LW_STORE_PATH];  // of what is kept; "": in a file without a name
    FILE *file;
    long *at;      // of each point, where its line begins; 0: not worked out
    size_t next;   // where to look for one to hand out
    lw_best best;  // where hardware is sought: it says which points are handed out
    size_t done;
    lw_gap *gaps;
    size_t gap_count;
    char *line;  // the last that was read
    size_t line_room;
    bool is_broken;  // something could not be written
    char why[LW_STORE_WHY];
    pthread_mutex_t lock;
} lw_store;

// path: of the table, or NULL. With `resumes` points that were kept before are there again; without
// it a file that keeps some is refused, unless `may_replace`. False, with the reason in store->why.
bool lw_store_open(lw_store *store, const lw_sweep *sweep, const char *path, bool resumes,
                   bool may_replace);
void lw_store_close(lw_store *store, bool forgets);  // with `forgets` what is kept is removed

// The next point that is neither worked out nor handed out; false: there is none, for good or,
// where hardware is sought, until more points are there.
bool lw_store_hand_out(lw_store *store, size_t *point);

// All points are there, or named as gaps, or nothing more can be kept; how many may be handed out
// now; and how many there will be, as far as that is known.
bool lw_store_is_over(lw_store *store);
size_t lw_store_waiting(lw_store *store);
size_t lw_store_all(lw_store *store);

void lw_store_put(lw_store *store, size_t point, const char *lines);

// Names a point that will not be worked out.
void lw_store_leave(lw_store *store, size_t point, const char *why);

// The lines of a point, until the next call; NULL: they are not there. And why they are not.
const char *lw_store_lines(lw_store *store, size_t point);
const char *lw_store_gap(const lw_store *store, size_t point);

#endif
