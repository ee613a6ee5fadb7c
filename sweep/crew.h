// crew.h - threads that work points out, as many as the machine has cores.
// SPDX-License-Identifier: MIT

#ifndef LW_CREW_H
#define LW_CREW_H

#include <pthread.h>
#include <stdatomic.h>

#include "sweep/sweep.h"

#define LW_CREW_MOST 256

// Where points come from and where they go: called by all threads at once.
typedef struct lw_crew_work {
    void *it;
    bool (*next)(void *it, size_t *point);  // may wait; false: there are no more
    void (*done)(void *it, size_t point, const char *lines);
} lw_crew_work;

typedef struct lw_crew {
    lw_crew_work work;
    size_t count;
    lw_sweep_worker *workers[LW_CREW_MOST];
    pthread_t threads[LW_CREW_MOST];
    atomic_size_t at_work;  // threads that have not ended
    atomic_bool is_short;   // of memory
} lw_crew;

size_t lw_crew_cores(void);

// Starts up to `count` threads, as many as can be had. False: none.
bool lw_crew_start(lw_crew *crew, const lw_sweep *sweep, size_t count, lw_crew_work work);
void lw_crew_join(lw_crew *crew);

#endif
