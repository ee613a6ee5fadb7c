// ride_many.c - many rides, a seed each, on all cores: in rounds, so that the end is the same
// wherever it is run.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "command/ride_many.h"

#include <pthread.h>
#include <stdatomic.h>
#include <stdlib.h>
#include <unistd.h>

#include "command/terminal/progress.h"
#include "command/terminal/stop.h"

#define TEAM         8   // rides that one thread sails side by side
#define ROUND        64  // rides before the error is looked at again; later a quarter more
#define THREADS_MOST 256
#define STEPS        500  // between two looks whether to stop

// Rides from `first` to before `end`, taken a team at a time.
typedef struct lap {
    lw_ride_many *many;
    size_t first, end;
    atomic_size_t next;
    atomic_size_t done;
} lap;

// Sails the rides first to before end; their tallies are kept when they came to their end.
static bool sail(lw_ride_many *many, size_t first, size_t end)
{
    const lw_motion *motion = &many->ridden->motion;
    lw_ride rides[TEAM];
    const size_t count = end - first;
    for (size_t i = 0; i < count; i++) {
        lw_ride_plan plan = many->ridden->plan;
        plan.seed += first + i;
        rides[i].events = NULL, rides[i].event_room = 0;
        lw_ride_begin(&rides[i], motion, &plan);
    }
    size_t left = lw_ridden_steps(many->ridden, many->seconds);
    while (left > 0) {
        const size_t steps = left < STEPS ? left : STEPS;
        if (lw_stop_wanted()) return false;
        lw_rides_advance(motion, rides, count, steps);
        left -= steps;
    }
    for (size_t i = 0; i < count; i++) many->tallies[first + i] = rides[i].tally;
    return true;
}

static void *work(void *data)
{
    lap *own = data;
    for (;;) {
        const size_t first = atomic_fetch_add(&own->next, TEAM);
        if (first >= own->end) return NULL;
        const size_t end = first + TEAM < own->end ? first + TEAM : own->end;
        if (!sail(own->many, first, end)) return NULL;
        const size_t done = atomic_fetch_add(&own->done, end - first) + end - first;
        lw_progress("rides, at most", own->first + done - 1, own->many->most);
    }
}

static size_t thread_count(size_t teams)
{
    const long cores = sysconf(_SC_NPROCESSORS_ONLN);
    const size_t most = cores < 1 ? 1 : cores > THREADS_MOST ? THREADS_MOST : (size_t)cores;
    return teams < most ? teams : most;
}

// One round on all cores; this thread works too, and alone where no other can be had.
static void sail_round(lw_ride_many *many, size_t first, size_t end)
{
    lap own = {.many = many, .first = first, .end = end};
    atomic_init(&own.next, first);
    atomic_init(&own.done, 0);
    pthread_t threads[THREADS_MOST];
    const size_t others = thread_count((end - first + TEAM - 1) / TEAM) - 1;
    size_t started = 0;
    while (started < others && pthread_create(&threads[started], NULL, work, &own) == 0) started++;
    work(&own);
    for (size_t i = 0; i < started; i++) pthread_join(threads[i], NULL);
}

bool lw_ride_many_fill(lw_ride_many *many)
{
    many->tallies = calloc(many->most, sizeof *many->tallies);
    if (!many->tallies) return false;
    size_t sailed = 0;
    while (sailed < many->most && !many->is_sure && !many->is_stopped) {
        const size_t wanted = sailed + (sailed / 4 > ROUND ? sailed / 4 : ROUND);
        const size_t end = wanted < many->most ? wanted : many->most;
        sail_round(many, sailed, end);
        many->is_stopped = lw_stop_wanted();
        for (; sailed < end; sailed++) {
            const lw_ride_tally *tally = &many->tallies[sailed];
            if (tally->seconds > 0.0) lw_ride_sample_add(&many->sample, tally);
        }
        many->is_sure = lw_ride_sample_is_sure(&many->sample, many->error);
    }
    lw_progress_over();
    return true;
}

void lw_ride_many_free(lw_ride_many *many) { free(many->tallies); }
