// next.c - of what could be sailed next, what would tell most of the choice between two pins.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "learning/evidence.h"
#include "learning/rides.h"
#include "lullwise/trial.h"

#define UPWIND_TO     (60.0 * LW_DEG)   // legs closer to the wind are sailed upwind
#define DOWNWIND_FROM (130.0 * LW_DEG)  // and from here on downwind

#define SAILED 600.0  // [s] of a trial  [judged]

#define PAIR        (0.15 * LW_KN)  // of a difference of two speeds so long in gusts  [judged]
#define SHARP_LEAST 1e-4            // [m/s per turn^2] flatter tells nothing

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
        const double seconds = seconds_of(&l->first, pin, day);
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
    for (size_t k = 0; k < LW_UNKNOWNS; k++) slopes[k] = 0.0;
    for (size_t k = 0; k < LW_STEADY_COUNT; k++) {
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

static lw_lesson_day sailed_with(size_t pin, double wind)
{
    lw_lesson_day sailed = {.pin = pin, .wind = wind};
    for (size_t row = 0; row < LW_LESSON_COUNT; row++)
        lw_quantity_put(&lw_lesson_table.rows[row], &sailed.seconds, SAILED);
    return sailed;
}

// How sharply her speed falls off on either side of the best turns [m/s per turn^2]; 0 where she
// does not fly with a turn more or less.
static double sharpness_of(const lw_learning *l, const lw_trial *trial, double wind)
{
    double z[LW_UNKNOWNS] = {0.0}, speed[3];
    lw_inputs inputs;
    lw_flown flown = {.by = LW_BY_SPEED};
    memcpy(z, l->middle, sizeof l->middle);
    const lw_hidden hidden = lw_hidden_at(l, z);
    lw_hidden_inputs(&hidden, l->season, &inputs);
    lw_flown_prepare(&flown, &inputs, l->season->sections);
    flown.pin = trial->pin, flown.course = trial->course, flown.wind = wind;
    lw_flown_answer(&flown);
    const double best = flown.answer.flight.turns;
    for (int i = 0; i < 3; i++) {
        flown.has_turns = i > 0, flown.turns = best + (i == 1 ? 1.0 : -1.0);
        lw_flown_answer(&flown);
        if (flown.answer.outcome != LW_FLIES) return 0.0;
        speed[i] = flown.answer.flight.speed;
    }
    return fmax(2.0 * speed[0] - speed[1] - speed[2], 0.0);
}

// With V = V_0 - c / 2 (n - n_0)^2 a turn more less a turn less is V(n + 1) - V(n - 1) =
// 2 c (n_0 - n): it tells the best turns n_0 with an error of the speeds' / (2 c), whatever habit
// of winding the sailor has.
static void add_turn(lw_terms *terms, const lw_learning *l, const lw_trial *trial, double wind)
{
    const size_t i = terms->count - 1;
    terms->error[i] = PAIR / (2.0 * fmax(sharpness_of(l, trial, wind), SHARP_LEAST));
    for (size_t k = LW_HIDDEN_COUNT; k < LW_UNKNOWNS; k++) terms->slope[i][k] = 0.0;
}

// What is known once a trial is sailed, in the day's mean wind.
static bool add_trial(lw_evidence *e, const lw_learning *l, const lw_trial *trial,
                      const lw_day *day)
{
    double z[LW_UNKNOWNS] = {0.0};
    lw_terms terms = {.count = 0};
    const size_t pins[] = {trial->pin, trial->other};
    memcpy(z, l->middle, sizeof l->middle);
    for (size_t i = 0; i < (trial->pin == trial->other ? 1u : 2u); i++) {
        const lw_lesson_day sailed = sailed_with(pins[i], day->wind.mean);
        if (!lw_terms_add(&terms, l, &sailed, trial->course, z)) return false;
        if (trial->is_of_turn)
            add_turn(&terms, l, trial, day->wind.mean);
        else
            lw_terms_add(&terms, l, &sailed, LW_COURSE_COUNT + trial->course, z);
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

// What the choice hangs on, and how it moves.
typedef struct stake {
    const lw_learning *learning;
    const lw_day *day;
    lw_evidence known;
    double slopes[LW_UNKNOWNS];
} stake;

static void try(const stake *s, lw_trial trial, lw_next *next)
{
    lw_evidence then = s->known;
    if (!add_trial(&then, s->learning, &trial, s->day)) return;
    trial.error = error_of(&then, s->slopes);
    take(next, &trial);
}

lw_next lw_learning_next(const lw_learning *l, const lw_day *day)
{
    double z[LW_UNKNOWNS];
    stake s = {.learning = l, .day = day};
    lw_next next = {.is_known = false};
    const size_t pins = l->season->boat->pin_count;
    next.is_known = find_pins(l, day, &next);
    if (!next.is_known) return next;
    s.known = lw_evidence_of(l, LW_FOLDS, z);
    put_slopes(l, day, &next, s.slopes);
    next.error = error_of(&s.known, s.slopes);
    for (size_t i = 0; i < pins * pins * LW_COURSE_COUNT; i++) {
        lw_trial trial = {.pin = i / LW_COURSE_COUNT / pins,
                          .other = i / LW_COURSE_COUNT % pins,
                          .course = (lw_course_kind)(i % LW_COURSE_COUNT)};
        if (trial.other >= trial.pin) try(&s, trial, &next);
        trial.is_of_turn = true;
        if (trial.other == trial.pin) try(&s, trial, &next);
    }
    return next;
}
