// sweep.c - a sweep as it is asked for.
// SPDX-License-Identifier: MIT

#include "sweep/sweep.h"

#include <string.h>

#include "answer/asked.h"
#include "records/record_file.h"
#include "records/record_hash.h"

#ifndef LW_VERSION
#define LW_VERSION "unversioned"
#endif

#define POINTS_MOST 100000000.0

const lw_sweep_answer *const lw_sweep_answers[] = {
    &lw_sweep_choice, &lw_sweep_range, &lw_sweep_swims, &lw_sweep_flight, &lw_sweep_balance, NULL,
};

// Somewhere it can be answered: where neither the first nor the last point can there is a slip. Of
// hardware in the middle of its grid, with a value set in each.
static bool try_ends(const lw_sweep *sweep, lw_refusal *refusal)
{
    static lw_inputs inputs;
    lw_faults unheard = {0};
    const size_t first = lw_sweep_first(sweep, lw_sweep_own(sweep), 0);
    const size_t last = first + lw_sweep_cases(sweep) - 1;
    const bool can = lw_sweep_inputs(sweep, last, &inputs, &unheard) ||
                     lw_sweep_inputs(sweep, first, &inputs, &refusal->faults);
    lw_faults_free(&unheard);
    return can;
}

static bool read_sought(lw_sweep *sweep, double *points, lw_refusal *refusal)
{
    const char *text;
    for (size_t n = 0; (text = lw_options_nth(sweep->options, "best", n)); n++) {
        if (n == LW_SOUGHT_MOST)
            return lw_refuse(refusal, "--best may be given %d times", LW_SOUGHT_MOST);
        lw_sought *sought = &sweep->sought[sweep->sought_count++];
        if (!lw_sought_read(sought, text, &sweep->inputs.boat, refusal)) return false;
        *points *= (double)sought->over.count;
    }
    if (!sweep->sought_count) return true;
    if (!sweep->answer->worth)
        return lw_refuse(refusal, "--best goes by --ask choice, flight or balance, not by %s",
                         sweep->answer->name);
    if (lw_options_has(sweep->options, "svg"))
        return lw_refuse(refusal, "--svg draws a map of two --over, without --best");
    *points *= (double)lw_sweep_sets(sweep);
    return true;
}

static bool read_overs(lw_sweep *sweep, lw_refusal *refusal)
{
    const char *text;
    double points = 1.0;
    for (size_t n = 0; (text = lw_options_nth(sweep->options, "over", n)); n++) {
        if (n == LW_SWEEP_OVERS_MOST)
            return lw_refuse(refusal, "--over may be given %d times", LW_SWEEP_OVERS_MOST);
        lw_over *over = &sweep->overs[sweep->over_count++];
        if (!lw_over_read(over, "over", text, refusal)) return false;
        points *= (double)over->count;
    }
    points *= sweep->draws ? (double)sweep->draws : 1.0;
    if (!read_sought(sweep, &points, refusal)) return false;
    if (points > POINTS_MOST)
        return lw_refuse(refusal, "these are %.0f points; at most %.0f in one sweep", points,
                         POINTS_MOST);
    sweep->points = (size_t)points;
    if (!sweep->over_count && !sweep->draws && !sweep->sought_count)
        return lw_refuse(refusal,
                         "nothing is varied: give --over KEY=from:to:step or --draws "
                         "NUMBER");
    return try_ends(sweep, refusal);
}

static bool read_answer(lw_sweep *sweep, lw_refusal *refusal)
{
    const char *name = lw_options_text(sweep->options, "ask");
    sweep->answer = lw_sweep_answers[0];
    if (!name) return true;
    for (size_t i = 0; (sweep->answer = lw_sweep_answers[i]); i++) {
        if (strcmp(sweep->answer->name, name) == 0) return true;
    }
    return lw_refuse(
        refusal, "there is no answer \"%s\"; it is choice, range, swims, flight or balance", name);
}

static bool read_options(lw_sweep *sweep, lw_refusal *refusal)
{
    int pin;
    double draws = 0.0;
    sweep->seed = (double)lw_effort_usual().first_seed;
    sweep->pin = lw_options_text(sweep->options, "pin");
    if (!lw_asked_pin(sweep->options, &sweep->inputs.boat, &pin, refusal) ||
        !lw_asked_course(sweep->options, &sweep->course, refusal) ||
        !lw_asked_whole(sweep->options, "seed", &sweep->seed, refusal) ||
        !lw_asked_whole(sweep->options, "draws", &draws, refusal))
        return false;
    sweep->draws = (size_t)draws;
    return read_answer(sweep, refusal);
}

static void hash_text(lw_sweep *sweep, const char *text)
{
    sweep->hash = lw_hash_add(sweep->hash, text ? text : "", text ? strlen(text) + 1 : 1);
}

static void hash_all(lw_sweep *sweep)
{
    static const char *const counting[] = {"over", "best", "set", "aim", "pin", "course"};
    const double numbers[] = {sweep->seed, (double)sweep->draws};
    const uint64_t records[] = {lw_record_hash(&lw_boat_record, &sweep->inputs.boat),
                                lw_record_hash(&lw_sailor_record, &sweep->inputs.sailor),
                                lw_record_hash(&lw_day_record, &sweep->inputs.day)};
    sweep->hash = lw_hash_add(LW_HASH_EMPTY, records, sizeof records);
    sweep->hash = lw_hash_add(sweep->hash, numbers, sizeof numbers);
    hash_text(sweep, LW_VERSION);
    hash_text(sweep, sweep->answer->name);
    for (size_t i = 0; i < LW_COUNT_OF(counting); i++) {
        const char *text;
        for (size_t n = 0; (text = lw_options_nth(sweep->options, counting[i], n)); n++) {
            hash_text(sweep, text);
        }
    }
    for (size_t i = 0; i < sweep->over_count; i++) {
        const lw_over *over = &sweep->overs[i];
        for (size_t k = 0; over->record && k < over->count; k++) {
            const uint64_t hash =
                lw_record_hash(over->record, over->records + k * over->record->size);
            sweep->hash = lw_hash_add(sweep->hash, &hash, sizeof hash);
        }
    }
}

bool lw_sweep_begin(lw_sweep *sweep, const lw_options *options, lw_refusal *refusal)
{
    static lw_section_store store;
    *sweep = (lw_sweep){.options = options};
    if (!lw_inputs_read(&sweep->inputs, options, &refusal->faults) ||
        !read_options(sweep, refusal) || !read_overs(sweep, refusal))
        return false;
    if (lw_options_has(options, "svg") && (sweep->over_count != 2 || sweep->draws))
        return lw_refuse(refusal, "--svg draws a map of two --over, without --draws");
    if (lw_options_has(options, "resume") && !lw_options_has(options, "output"))
        return lw_refuse(refusal, "--resume goes on with what -o FILE has begun: give it too");
    sweep->sections = *lw_section_store_of(&store, &sweep->inputs.boat);
    hash_all(sweep);
    return true;
}

void lw_sweep_end(lw_sweep *sweep)
{
    for (size_t i = 0; i < sweep->over_count; i++) lw_over_release(&sweep->overs[i]);
    for (size_t i = 0; i < sweep->sought_count; i++) lw_over_release(&sweep->sought[i].over);
}
