// best.c - hardware sought within bounds.
// SPDX-License-Identifier: MIT

#include "sweep/best.h"

#include <stdlib.h>

// --- trials

static size_t cases(const lw_best *best) { return lw_sweep_cases(best->sweep); }

static const lw_trial *trial_of(const lw_best *best, size_t candidate, size_t set)
{
    for (size_t i = 0; i < best->trial_count; i++) {
        const lw_trial *trial = &best->trials[i];
        if (trial->candidate == candidate && trial->set == set) return trial;
    }
    return NULL;
}

// Puts a trial into the batch, if it was not made before.
static void want(lw_best *best, size_t candidate, size_t set)
{
    if (trial_of(best, candidate, set)) return;
    if (best->trial_count == best->trial_room) {
        const size_t room = 2 * best->trial_room + 16;
        lw_trial *more = realloc(best->trials, room * sizeof *more);
        if (!more) {
            best->is_short = true;
            return;
        }
        best->trials = more, best->trial_room = room;
    }
    double *worth = malloc(cases(best) * sizeof *worth);
    if (!worth) {
        best->is_short = true;
        return;
    }
    for (size_t i = 0; i < cases(best); i++) worth[i] = LW_NOT_YET;
    best->trials[best->trial_count++] = (lw_trial){candidate, set, worth};
    best->waited += cases(best);
}

void lw_best_begin(lw_best *best, const lw_sweep *sweep)
{
    const size_t count = sweep->sought_count;
    *best = (lw_best){.sweep = sweep, .found_count = count > 1 ? count + 1 : count};
    want(best, lw_sweep_own(sweep), 0);
}

void lw_best_end(lw_best *best)
{
    for (size_t i = 0; i < best->trial_count; i++) free(best->trials[i].worth);
    free(best->trials);
    *best = (lw_best){0};
}

// --- what is gained

// Mean gain over the cases that the boat as she is can be sailed in; NAN: the candidate cannot be
// sailed in one of them, or there are none.
static double gain_by(const lw_trial *trial, const lw_trial *own, size_t from, size_t to)
{
    double sum = 0.0;
    size_t count = 0;
    for (size_t i = from; i < to; i++) {
        if (!isfinite(own->worth[i])) continue;
        sum += trial->worth[i] - own->worth[i];
        count++;
    }
    return count ? sum / (double)count : NAN;
}

// The sets of seeds that judge: those of the check, or that of the search where it is all there is.
static size_t first_set(const lw_best *best) { return best->is_over && best->is_checked ? 1 : 0; }

static size_t sets_end(const lw_best *best)
{
    return first_set(best) ? lw_sweep_sets(best->sweep) : 1;
}

lw_gain lw_best_gain(const lw_best *best, size_t candidate, size_t which)
{
    const bool is_all = which == LW_ALL_CASES;
    const size_t from = is_all ? 0 : which, to = is_all ? cases(best) : which + 1;
    double sum = 0.0, square = 0.0, n = 0.0;
    for (size_t set = first_set(best); set < sets_end(best); set++) {
        const lw_trial *trial = trial_of(best, candidate, set);
        const lw_trial *own = trial_of(best, lw_sweep_own(best->sweep), set);
        const double gain = trial && own ? gain_by(trial, own, from, to) : NAN;
        sum += gain, square += gain * gain, n += 1.0;
    }
    const double mean = sum / n, left = fmax(square - sum * mean, 0.0);
    return (lw_gain){mean, n > 1.0 ? sqrt(left / (n * (n - 1.0))) : 0.0};
}

double lw_best_own_worth(const lw_best *best, size_t which)
{
    const bool is_all = which == LW_ALL_CASES;
    double sum = 0.0, n = 0.0;
    for (size_t set = first_set(best); set < sets_end(best); set++) {
        const lw_trial *own = trial_of(best, lw_sweep_own(best->sweep), set);
        for (size_t i = is_all ? 0 : which; own && i < (is_all ? cases(best) : which + 1); i++) {
            if (isfinite(own->worth[i])) sum += own->worth[i], n += 1.0;
        }
    }
    return n > 0.0 ? sum / n : NAN;
}

// --- the search

// Which quantities the search under way moves: all, or one.
static bool is_moved(const lw_best *best, size_t i)
{
    return best->searched == 0 || best->searched == i + 1;
}

static size_t candidate_at(const lw_best *best, const size_t at[LW_SOUGHT_MOST])
{
    return lw_sought_candidate(best->sweep->sought, best->sweep->sought_count, at);
}

// From the boat as she is, with steps of a quarter of the bounds or less, so that halving them ends
// at one.
static void set_out(lw_best *best)
{
    for (size_t i = 0; i < best->sweep->sought_count; i++) {
        const lw_sought *sought = &best->sweep->sought[i];
        best->at[i] = sought->own;
        for (best->steps[i] = 1; 8 * best->steps[i] < sought->over.count;) best->steps[i] *= 2;
    }
}

// Neighbours a step away along each quantity that is moved; those that are within the bounds.
static size_t neighbours(const lw_best *best, size_t around[2 * LW_SOUGHT_MOST])
{
    size_t n = 0;
    for (size_t i = 0; i < best->sweep->sought_count; i++) {
        size_t at[LW_SOUGHT_MOST];
        if (!is_moved(best, i)) continue;
        for (size_t k = 0; k < LW_SOUGHT_MOST; k++) at[k] = best->at[k];
        if (best->at[i] >= best->steps[i]) {
            at[i] = best->at[i] - best->steps[i];
            around[n++] = candidate_at(best, at);
        }
        if (best->at[i] + best->steps[i] < best->sweep->sought[i].over.count) {
            at[i] = best->at[i] + best->steps[i];
            around[n++] = candidate_at(best, at);
        }
    }
    return n;
}

// False: they were the finest.
static bool halve(lw_best *best)
{
    bool is_finer = false;
    for (size_t i = 0; i < best->sweep->sought_count; i++) {
        if (!is_moved(best, i) || best->steps[i] < 2) continue;
        best->steps[i] /= 2;
        is_finer = true;
    }
    return is_finer;
}

static void go_to(lw_best *best, size_t candidate)
{
    const lw_sweep *sweep = best->sweep;
    for (size_t i = 0; i < sweep->sought_count; i++) {
        best->at[i] = lw_sought_at(sweep->sought, sweep->sought_count, candidate, i);
    }
}

// One move of the search under way, once all neighbours are tried.
static void move(lw_best *best)
{
    size_t around[2 * LW_SOUGHT_MOST];
    const size_t n = neighbours(best, around), had = best->trial_count;
    for (size_t i = 0; i < n; i++) want(best, around[i], 0);
    if (best->trial_count > had) return;

    const size_t here = candidate_at(best, best->at);
    const double none = lw_best_gain(best, here, LW_ALL_CASES).mean;
    size_t top = n;
    double most = none;
    for (size_t i = 0; i < n; i++) {
        const double gain = lw_best_gain(best, around[i], LW_ALL_CASES).mean;
        if (gain > most) top = i, most = gain;
    }
    if (top < n) {
        go_to(best, around[top]);
    } else if (!halve(best)) {
        best->found[best->searched++] = here;
        set_out(best);
    }
}

// What was found and the boat as she is, with other seeds; if it is not the boat as she is.
static void check(lw_best *best)
{
    bool is_other = false;
    for (size_t i = 0; i < best->found_count; i++) {
        is_other = is_other || best->found[i] != lw_sweep_own(best->sweep);
    }
    best->is_checking = true;
    best->is_checked = is_other && lw_sweep_sets(best->sweep) > 1;
    for (size_t set = 1; best->is_checked && set < lw_sweep_sets(best->sweep); set++) {
        want(best, lw_sweep_own(best->sweep), set);
        for (size_t i = 0; i < best->found_count; i++) want(best, best->found[i], set);
    }
}

// A batch is there: on to the next, or to the end.
static void go_on(lw_best *best)
{
    const bool can = isfinite(lw_best_gain(best, lw_sweep_own(best->sweep), LW_ALL_CASES).mean);
    best->batch = best->trial_count;
    best->next = 0;
    if (!best->has_begun) set_out(best);
    best->has_begun = true;
    while (best->trial_count == best->batch && !best->is_over) {
        if (!can || best->is_checking || best->is_short)
            best->is_over = true;
        else if (best->searched < best->found_count)
            move(best);
        else
            check(best);
    }
}

// --- points

bool lw_best_next(lw_best *best, size_t *point)
{
    const size_t trial = best->batch + best->next / cases(best);
    if (trial >= best->trial_count || best->is_over) return false;
    const lw_trial *of = &best->trials[trial];
    *point = lw_sweep_first(best->sweep, of->candidate, of->set) + best->next % cases(best);
    best->next++;
    return true;
}

void lw_best_put(lw_best *best, size_t point, double worth)
{
    const lw_sweep *sweep = best->sweep;
    const lw_trial *trial =
        trial_of(best, lw_sweep_candidate(sweep, point), lw_sweep_set(sweep, point));
    if (!trial || trial->worth[point % cases(best)] != LW_NOT_YET) return;
    trial->worth[point % cases(best)] = worth;
    if (--best->waited == 0) go_on(best);
}

size_t lw_best_waiting(const lw_best *best)
{
    return (best->trial_count - best->batch) * cases(best) - best->next;
}

size_t lw_best_wanted(const lw_best *best) { return best->trial_count * cases(best); }
