// crew.c - threads that work points out.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "sweep/crew.h"

#include <unistd.h>

size_t lw_crew_cores(void)
{
    const long cores = sysconf(_SC_NPROCESSORS_ONLN);
    return cores < 1 ? 1 : cores > LW_CREW_MOST ? LW_CREW_MOST : (size_t)cores;
}

static void *work(void *data)
{
    lw_sweep_worker *worker = data;
    lw_crew *crew = worker->crew;
    size_t point;
    while (crew->work.next(crew->work.it, &point)) {
        const char *lines = lw_sweep_point(worker, point);
        if (!lines) {
            atomic_store(&crew->is_short, true);
            break;
        }
        crew->work.done(crew->work.it, point, lines);
    }
    atomic_fetch_sub(&crew->at_work, 1);
    return NULL;
}

bool lw_crew_start(lw_crew *crew, const lw_sweep *sweep, size_t count, lw_crew_work to_do)
{
    crew->work = to_do;
    crew->count = 0;
    atomic_init(&crew->at_work, 0);
    atomic_init(&crew->is_short, false);
    while (crew->count < count && crew->count < LW_CREW_MOST) {
        lw_sweep_worker *worker = lw_sweep_worker_new(sweep);
        if (!worker) break;
        worker->crew = crew;
        crew->workers[crew->count] = worker;
        atomic_fetch_add(&crew->at_work, 1);
        if (pthread_create(&crew->threads[crew->count], NULL, work, worker) != 0) {
            atomic_fetch_sub(&crew->at_work, 1);
            lw_sweep_worker_free(worker);
            break;
        }
        crew->count++;
    }
    return crew->count > 0;
}

void lw_crew_join(lw_crew *crew)
{
    for (size_t i = 0; i < crew->count; i++) {
        pthread_join(crew->threads[i], NULL);
        lw_sweep_worker_free(crew->workers[i]);
    }
    crew->count = 0;
}
