// work.c - the answer of `lullwise ride` worked out.
// SPDX-License-Identifier: MIT

#include <stdlib.h>

#include "answer/asked_flight.h"
#include "answer/ride/ride.h"

#define MINUTES 10.0
#define EVERY   0.2  // [s]
#define SEED    1.0
#define ERROR   0.05

// What is said of one ride only.
static bool fits_many(const lw_options *options, lw_refusal *refusal)
{
    static const char *const of_one_only[] = {"csv", "svg", "every", NULL};
    for (int i = 0; of_one_only[i]; i++) {
        if (!lw_options_has(options, of_one_only[i])) continue;
        return lw_refuse(refusal, "--%s is of one ride: not with --runs", of_one_only[i]);
    }
    return true;
}

// What is asked beside the flight.
typedef struct wanted {
    double minutes, every, seed, runs, error;
} wanted;

static bool ask(wanted *w, const lw_options *options, lw_refusal *refusal)
{
    const lw_bounds none = {0};
    *w = (wanted){.minutes = MINUTES, .every = EVERY, .seed = SEED, .error = ERROR};
    return (!lw_options_has(options, "runs") || fits_many(options, refusal)) &&
           lw_asked_number(options, "minutes", none, &w->minutes, refusal) &&
           lw_asked_number(options, "every", none, &w->every, refusal) &&
           lw_asked_whole(options, "seed", &w->seed, refusal) &&
           lw_asked_whole(options, "runs", &w->runs, refusal) &&
           lw_asked_number(options, "error", none, &w->error, refusal);
}

// Room for what is kept of one ride, or of many.
static bool keep(lw_rode *rode, const wanted *w)
{
    if (!rode->is_many)
        return lw_ride_log_begin(&rode->log, &rode->ridden, rode->seconds, w->every);
    rode->many.most = (size_t)w->runs, rode->many.error = w->error;
    return lw_rode_many_begin(rode);
}

bool lw_rode_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                   lw_refusal *refusal)
{
    lw_rode *rode = it;
    wanted w;
    rode->inputs = *inputs;
    if (!ask(&w, options, refusal)) return false;
    if (!lw_asked_flight(&rode->ridden.flown, &rode->inputs, options, refusal)) return false;
    lw_ridden_plan(&rode->ridden, (uint64_t)w.seed);
    rode->speed_unit = options->speed_unit;
    rode->seconds = 60.0 * w.minutes;
    rode->is_many = lw_options_has(options, "runs");
    rode->wants_end = options->wants_end;
    return keep(rode, &w) || lw_refuse(refusal, "there is not enough memory");
}

#define STEP_ROWS 256  // rows of one ride in a step

size_t lw_rode_steps(void *it)
{
    lw_rode *rode = it;
    if (rode->is_many) return lw_rode_many_steps(rode);
    return (rode->log.row_room - 1 + STEP_ROWS - 1) / STEP_ROWS;
}

void lw_rode_step(void *it, size_t step)
{
    lw_rode *rode = it;
    if (rode->is_many) {
        lw_rode_many_step(rode, step);
        return;
    }
    for (size_t i = 0; i < STEP_ROWS && rode->log.left > 0; i++) {
        if (rode->wants_end && rode->wants_end()) return;
        lw_ride_log_row(&rode->log, &rode->ridden.motion);
    }
}

bool lw_rode_are_apart(const void *it) { return ((const lw_rode *)it)->is_many; }

void lw_rode_end(void *it)
{
    lw_rode *rode = it;
    if (rode->is_many)
        lw_rode_many_end(rode);
    else
        rode->is_stopped = rode->log.left > 0;
}

void lw_rode_release(void *it)
{
    lw_rode *rode = it;
    lw_ride_log_release(&rode->log);
    free(rode->many.tallies);
}

bool lw_rode_is_answered(const void *it)
{
    const lw_rode *rode = it;
    return !rode->is_many || rode->many.sample.rides > 0.0;
}
