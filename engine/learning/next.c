// next.c - of what could be sailed next, what would tell most of the choice between two pins.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "learning/evidence.h"

#define UPWIND_TO     (60.0 * LW_DEG)   // legs closer to the wind are sailed upwind
#define DOWNWIND_FROM (130.0 * LW_DEG)  // and from here on downwind

static lw_course_kind kind_of(double heading)
{
    const double off = fabs(heading);
    return off < UPWIND_TO ? LW_UPWIND : off < DOWNWIND_FROM ? LW_REACH : LW_DOWNWIND;
}

// Time round the legs [s]; NAN where one is not flown.
static double seconds_of(const lw_flights *flights, size_t pin, const lw_day *day)
{
    const lw_range_interval in = lw_range_interval_of(day->wind.mean);
    double seconds = 0.0;
    for (size_t i = 0; i < day->leg_count; i++) {
        const lw_foreseen *at = &flights->of[pin][kind_of(day->legs[i].heading)][in.below];
        const double good = at[0].made_good + in.part * (at[1].made_good - at[0].made_good);
        seconds += good > 0.0 ? day->legs[i].length / good : NAN;
    }
    return seconds;
}

// The two fastest; false where less than two fly round.
static bool find_pins(const lw_learning *l, const lw_day *day, lw_next *next)
{
    double best = INFINITY, second = INFINITY;
    for (size_t pin = 0; pin < l->season->boat->pin_count; pin++) {
        const double seconds = seconds_of(&l->here, pin, day);
        if (seconds < best) {
            second = best, next->second = next->first;
            best = seconds, next->first = pin;
        } else if (seconds < second) {
            second = seconds, next->second = pin;
        }
    }
    next->seconds = second - best;
    return second < INFINITY;
}

// How the difference moves with z; 0 where it is not known.
static void put_slopes(const lw_learning *l, const lw_day *day, const lw_next *next,
                       double slopes[LW_UNKNOWNS])
{
    for (size_t k = LW_HIDDEN_COUNT; k < LW_UNKNOWNS; k++) slopes[k] = 0.0;
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        const double more =
            seconds_of(&l->more[k], next->second, day) - seconds_of(&l->more[k], next->first, day);
        const double less =
            seconds_of(&l->less[k], next->second, day) - seconds_of(&l->less[k], next->first, day);
        slopes[k] = isnan(more - less) ? 0.0 : 0.5 * (more - less);
    }
}

static double error_of(const lw_evidence *e, const double slopes[LW_UNKNOWNS])
{
    double x[LW_UNKNOWNS], sum = 0.0;
    for (size_t k = 0; k < LW_UNKNOWNS; k++) x[k] = slopes[k];
    if (!lw_evidence_solve(e, x)) return NAN;
    for (size_t k = 0; k < LW_UNKNOWNS; k++) sum += slopes[k] * x[k];
    return sqrt(fmax(sum, 0.0));
}

// What is known once a trial is sailed, in the day's mean wind.
static bool add_trial(lw_evidence *e, const lw_learning *l, const lw_trial *trial,
                      const lw_day *day)
{
    double z[LW_UNKNOWNS];
    lw_terms terms = {.count = 0};
    const size_t pins[] = {trial->pin, trial->other};
    lw_hidden_from(l, &l->centre, z);
    for (size_t i = 0; i < (trial->pin == trial->other ? 1u : 2u); i++) {
        const lw_lesson_day sailed = {.pin = pins[i], .wind = day->wind.mean};
        for (size_t kind = 0; kind < LW_LESSON_KINDS; kind++) {
            if (!lw_terms_add(&terms, l, &sailed, kind * LW_COURSE_COUNT + trial->course, z))
                return false;
        }
    }
    lw_evidence_add(e, &terms, NULL);
    return true;
}

// Among the best so far, where it belongs.
static void take(lw_next *next, const lw_trial *trial)
{
    size_t place = next->count;
    if (place == LW_TRIALS_MOST) {
        if (next->trials[place - 1].error <= trial->error) return;
        place--;
    } else {
        next->count++;
    }
    for (; place > 0 && next->trials[place - 1].error > trial->error; place--)
        next->trials[place] = next->trials[place - 1];
    next->trials[place] = *trial;
}

lw_next lw_learning_next(const lw_learning *l, const lw_day *day)
{
    double z[LW_UNKNOWNS], slopes[LW_UNKNOWNS];
    lw_next next = {.is_known = false};
    const size_t pins = l->season->boat->pin_count;
    next.is_known = find_pins(l, day, &next);
    if (!next.is_known) return next;
    const lw_evidence known = lw_evidence_of(l, LW_FOLDS, z);
    put_slopes(l, day, &next, slopes);
    next.error = error_of(&known, slopes);
    for (size_t i = 0; i < pins * pins * LW_COURSE_COUNT; i++) {
        lw_trial trial = {.pin = i / LW_COURSE_COUNT / pins,
                          .other = i / LW_COURSE_COUNT % pins,
                          .course = (lw_course_kind)(i % LW_COURSE_COUNT)};
        lw_evidence then = known;
        if (trial.other < trial.pin || !add_trial(&then, l, &trial, day)) continue;
        trial.error = error_of(&then, slopes);
        take(&next, &trial);
    }
    return next;
}
