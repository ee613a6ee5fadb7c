// outbox.h - points between a rank's threads and the one of them that speaks MPI.
// SPDX-License-Identifier: MIT

#ifndef LW_OUTBOX_H
#define LW_OUTBOX_H

#include <pthread.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

typedef struct lw_finished {
    struct lw_finished *next;
    uint64_t point;
    char lines[];
} lw_finished;

typedef struct lw_outbox {
    pthread_mutex_t lock;
    pthread_cond_t has_come;
    uint64_t *points;  // to be worked out
    size_t count, at, room;
    bool has_ended;  // none come any more
    lw_finished *finished;
    bool is_short;  // of memory
} lw_outbox;

void lw_outbox_open(lw_outbox *box);
void lw_outbox_close(lw_outbox *box);

// For the threads: waits for a point; false when none come any more. And what it came to.
bool lw_outbox_next(void *box, size_t *point);
void lw_outbox_done(void *box, size_t point, const char *lines);

// For the one who speaks: points added, how many wait, all that is finished (to be freed one by
// one), and that none come any more.
bool lw_outbox_add(lw_outbox *box, const uint64_t *points, size_t count);
size_t lw_outbox_waiting(lw_outbox *box);
lw_finished *lw_outbox_take(lw_outbox *box);
void lw_outbox_end(lw_outbox *box);

#endif
