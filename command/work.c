// work.c - a question worked out in its steps, on all cores where they stand apart.
// SPDX-License-Identifier: MIT

#include "command/work.h"

#include <pthread.h>
#include <stdatomic.h>

#include "command/terminal/progress.h"
#include "command/terminal/stop.h"
#include "sweep/crew.h"

// The steps that there are by now.
typedef struct lap {
    const lw_question *question;
    void *it;
    size_t end;
    atomic_size_t next, done;
} lap;

static void *do_steps(void *data)
{
    lap *own = data;
    while (!lw_stop_wanted()) {
        const size_t step = atomic_fetch_add(&own->next, 1);
        if (step >= own->end) break;
        lw_progress(own->question->work, atomic_load(&own->done), own->end);
        own->question->step(own->it, step);
        atomic_fetch_add(&own->done, 1);
    }
    return NULL;
}

static size_t thread_count(const lap *own)
{
    const size_t steps = own->end - own->next;
    const size_t most = lw_crew_cores();
    const bool are_apart = own->question->are_apart && own->question->are_apart(own->it);
    if (!are_apart) return 1;
    return steps < most ? steps : most;
}

// This thread works too, and alone where no other can be had.
static void do_lap(lap *own)
{
    pthread_t threads[LW_CREW_MOST];
    const size_t others = thread_count(own) - 1;
    size_t started = 0;
    while (started < others && pthread_create(&threads[started], NULL, do_steps, own) == 0)
        started++;
    do_steps(own);
    for (size_t i = 0; i < started; i++) pthread_join(threads[i], NULL);
}

void lw_work(const lw_question *question, void *it)
{
    size_t done = 0, steps;
    while (question->steps && !lw_stop_wanted() && done < (steps = question->steps(it))) {
        lap own = {.question = question, .it = it, .end = steps};
        atomic_init(&own.next, done);
        atomic_init(&own.done, done);
        do_lap(&own);
        done = steps;
    }
    if (question->end) question->end(it);
    lw_progress_over();
}
