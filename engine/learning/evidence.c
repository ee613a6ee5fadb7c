// evidence.c - what days add to what is known, and what is then most likely.
// SPDX-License-Identifier: MIT

#include "learning/evidence.h"

#include <math.h>
#include <string.h>

#include "learning/rides.h"
#include "learning/trend.h"
#include "learning/weight.h"
#include "solve/linear.h"

#define ALL          ((int)LW_UNKNOWNS)
#define N            ((int)LW_HIDDEN_COUNT)
#define BESIDE       (0.5 * LW_KN)  // in which the slope over the wind is taken
#define BENT         1.0            // of a bend over one error, that may be off  [judged]
#define ROUND        0.25           // errors about the middle, within which it bends
#define COMMON       1.0            // of a number's error, that all days are off alike  [judged]
#define COMMON_WIND  (4.0 * LW_KN)  // more of it, with as much again  [judged]
#define SPEED_LASTS  10.0           // [s] of the rides of the demo boat, 9 to 12 s  [judged]
#define FLIGHT_LASTS 60.0           // [s] a period of gusts  [judged]
#define FLYING_LEAST 0.01           // of p (1 - p): what was not left yet may still be  [judged]
#define LIKE_DAYS    2.0  // that tell as much as one: she is off alike on like days  [judged]
#define ITERATIONS   100
#define STEP_MOST    1.0   // errors at once, for a slope that changes on the way
#define STEP_LEAST   1e-9  // errors: nothing moves any more

lw_hidden lw_hidden_at(const lw_learning *learning, const double z[LW_UNKNOWNS])
{
    lw_hidden hidden = learning->before;
    for (int k = 0; k < N; k++) {
        const lw_quantity *row = &lw_hidden_table.rows[k];
        lw_quantity_put(row, &hidden,
                        lw_quantity_value(row, &learning->before) +
                            z[k] * lw_quantity_value(row, &learning->errors));
    }
    return hidden;
}

void lw_hidden_from(const lw_learning *learning, const lw_hidden *hidden, double z[LW_UNKNOWNS])
{
    for (int k = N; k < ALL; k++) z[k] = 0.0;
    for (int k = 0; k < N; k++) {
        const lw_quantity *row = &lw_hidden_table.rows[k];
        z[k] = (lw_quantity_value(row, hidden) - lw_quantity_value(row, &learning->before)) /
               lw_quantity_value(row, &learning->errors);
    }
}

// --- what is foreseen near what was tried, along each quantity

static double hypotenuse(double z) { return sqrt(z * z + ROUND * ROUND); }

// A number as it was foreseen in the middle, and how it moves with each quantity: of steady flight
// by what was foreseen one error beside, of rides by their trend.
typedef struct tried {
    int count;  // of quantities beside which it was tried
    const double *middle;
    double first, more[LW_HIDDEN_COUNT], less[LW_HIDDEN_COUNT];
    double trend[LW_HIDDEN_COUNT];
} tried;

static bool try_steady(tried *t, const lw_learning *l, const lw_lesson_day *day, size_t row)
{
    t->count = LW_STEADY_COUNT;
    double sum = t->first;
    for (int k = 0; k < t->count; k++) {
        t->more[k] = lw_flights_lesson(&l->more[k], day->pin, day->wind, row);
        t->less[k] = lw_flights_lesson(&l->less[k], day->pin, day->wind, row);
        sum += t->more[k] + t->less[k];
    }
    return !isnan(sum);
}

static bool is_tried(const lw_learning *l, const lw_lesson_day *day, size_t row, tried *t)
{
    const lw_lesson_kind kind = lw_lesson_kind_of(row);
    const double first = lw_flights_lesson(&l->first, day->pin, day->wind, row);
    *t = (tried){.middle = l->middle, .first = first};
    if (kind == LW_LESSON_TURNS) return try_steady(t, l, day, row);
    t->middle = l->ridden_at;
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++)
        t->trend[k] = lw_trend_slope(&l->trend, row, k, day->wind);
    return !isnan(first);
}

static double bend_of(const tried *t, int k) { return t->more[k] + t->less[k] - 2.0 * t->first; }

// Straight on either side of the middle, as tried there, with a round corner; so that
// beyond what was tried it goes on as it went: a parabola would turn back.
static double along(const tried *t, const double *z)
{
    double sum = t->first;
    for (int k = 0; k < t->count; k++) {
        const double off = z[k] - t->middle[k];
        const double bend = bend_of(t, k) / (hypotenuse(1.0) - ROUND);
        sum += 0.5 * (off * (t->more[k] - t->less[k]) + bend * (hypotenuse(off) - ROUND));
    }
    for (int k = 0; k < N; k++) sum += t->trend[k] * (z[k] - t->middle[k]);
    return sum;
}

static double slope_along(const tried *t, int k, double z)
{
    if (k >= t->count) return t->trend[k];
    const double off = z - t->middle[k];
    const double bend = bend_of(t, k) / (hypotenuse(1.0) - ROUND);
    return 0.5 * (t->more[k] - t->less[k] + bend * off / hypotenuse(off));
}

// What gusts, waves and chance make of a number in a second of it: in a time T its variance is
// 1 / T of that. Speeds forget what was so long ago, half of it in their scatter; flights last
// longer; swims come by chance, so that their variance is their mean.  [poisson]
static double chance_of(const lw_learning *l, const lw_lesson_day *day, size_t row)
{
    const lw_lesson_kind kind = lw_lesson_kind_of(row);
    const bool is_speed = kind == LW_LESSON_SPEED;
    const size_t beside = is_speed ? row + LW_COURSE_COUNT : row;  // its scatter
    const double here = lw_flights_lesson(&l->first, day->pin, day->wind, beside);
    if (is_speed || kind == LW_LESSON_SCATTER)
        return (is_speed ? 1.0 : 0.5) * SPEED_LASTS * here * here;
    if (kind == LW_LESSON_FLYING) return FLIGHT_LASTS * fmax(here * (1.0 - here), FLYING_LEAST);
    return here;
}

// The same for as long as it was told of, and for as long as it was ridden to foresee it.
static double chance_in(const lw_learning *l, const lw_lesson_day *day, size_t row)
{
    if (lw_lesson_kind_of(row) == LW_LESSON_TURNS) return 0.0;
    const double told = lw_quantity_value(&lw_lesson_table.rows[row], &day->seconds);
    return chance_of(l, day, row) *
           (1.0 / fmax(told, 1.0) + 1.0 / (LW_RIDDEN_LANES * l->season->leg));
}

// A number's own error, that of chance, and how far off this may be where what is foreseen bends or
// jumps.
static double error_of(double own, double chance, const tried *t)
{
    double sum = LIKE_DAYS * (own * own + chance);
    for (int k = 0; k < t->count; k++) {
        const double bend = BENT * bend_of(t, k);
        sum += bend * bend;
    }
    return sqrt(sum);
}

static double by_wind_of(const lw_flights *flights, const lw_lesson_day *day, size_t row)
{
    const double slope = (lw_flights_lesson(flights, day->pin, day->wind + BESIDE, row) -
                          lw_flights_lesson(flights, day->pin, day->wind - BESIDE, row)) /
                         (2.0 * BESIDE);
    return isnan(slope) ? 0.0 : slope;
}

static double own_error(size_t row)
{
    const lw_quantity *quantity = &lw_lesson_table.rows[row];
    return quantity->error * lw_unit_in_si(quantity->unit);
}

// What all days are off alike.
static void add_alike(lw_terms *terms, const lw_learning *l, const lw_lesson_day *day,
                      const double z[LW_UNKNOWNS])
{
    const size_t i = terms->count - 1;
    const size_t at = LW_HIDDEN_COUNT + 2 * terms->row[i];
    const double alike = COMMON * own_error(terms->row[i]);
    const double more = (day->wind - l->season->day.wind.mean) / COMMON_WIND;
    terms->slope[i][at] = alike;
    terms->slope[i][at + 1] = alike * more;
    terms->foreseen[i] += alike * (z[at] + more * z[at + 1]);
}

bool lw_terms_add(lw_terms *terms, const lw_learning *l, const lw_lesson_day *day, size_t row,
                  const double z[LW_UNKNOWNS])
{
    tried t;
    if (!is_tried(l, day, row, &t)) return false;
    const size_t i = terms->count++;
    terms->row[i] = row;
    terms->error[i] = error_of(own_error(row), chance_in(l, day, row), &t);
    terms->foreseen[i] = along(&t, z);
    terms->by_wind[i] = by_wind_of(&l->first, day, row);
    for (int k = 0; k < ALL; k++) terms->slope[i][k] = k < N ? slope_along(&t, k, z[k]) : 0.0;
    add_alike(terms, l, day, z);
    return true;
}

// --- evidence

lw_evidence lw_evidence_before(const double z[LW_UNKNOWNS])
{
    lw_evidence e = {{{0.0}}, {0.0}};
    for (int k = 0; k < ALL; k++) {
        e.precision[k][k] = 1.0;
        e.pull[k] = -z[k];
    }
    return e;
}

void lw_evidence_add(lw_evidence *e, const lw_terms *terms, const double *told)
{
    double shared[LW_UNKNOWNS] = {0.0}, shared_pull = 0.0, shared_part = 1.0;
    for (size_t i = 0; i < terms->count; i++) {
        const double weight = 1.0 / (terms->error[i] * terms->error[i]);
        const double s = terms->by_wind[i] * LW_WIND_ERROR;
        const double residual = told ? told[i] - terms->foreseen[i] : 0.0;
        shared_part += s * weight * s;
        shared_pull += s * weight * residual;
        for (int k = 0; k < ALL; k++) {
            const double scaled = terms->slope[i][k] * weight;
            shared[k] += scaled * s;
            e->pull[k] += scaled * residual;
            for (int j = 0; j < ALL; j++) e->precision[k][j] += scaled * terms->slope[i][j];
        }
    }
    for (int k = 0; k < ALL; k++) {
        e->pull[k] -= shared[k] * shared_pull / shared_part;
        for (int j = 0; j < ALL; j++) e->precision[k][j] -= shared[k] * shared[j] / shared_part;
    }
}

void lw_terms_fit_wind(const lw_terms *terms, double off[LW_TERMS_MOST])
{
    double part = 1.0, pull = 0.0;
    for (size_t i = 0; i < terms->count; i++) {
        const double s = terms->by_wind[i] * LW_WIND_ERROR / terms->error[i];
        part += s * s;
        pull += s * off[i] / terms->error[i];
    }
    for (size_t i = 0; i < terms->count; i++)
        off[i] -= terms->by_wind[i] * LW_WIND_ERROR * pull / part;
}

bool lw_evidence_solve(const lw_evidence *e, double right[LW_UNKNOWNS])
{
    double matrix[LW_UNKNOWNS * LW_UNKNOWNS];
    int pivot[LW_UNKNOWNS];
    for (int k = 0; k < ALL * ALL; k++) matrix[k] = e->precision[k / ALL][k % ALL];
    if (!lw_linear_factor(matrix, ALL, pivot)) return false;
    lw_linear_solve(matrix, ALL, pivot, right);
    return true;
}

// --- most likely

// Larger errors for what was ridden and is far off in the wind that fits the day. Turns are wound
// for steady flight, whose jumps are in their errors already.
static void weigh(lw_terms *terms, const double told[LW_TERMS_MOST])
{
    double off[LW_TERMS_MOST];
    for (size_t i = 0; i < terms->count; i++) off[i] = told[i] - terms->foreseen[i];
    lw_terms_fit_wind(terms, off);
    for (size_t i = 0; i < terms->count; i++)
        if (lw_lesson_kind_of(terms->row[i]) != LW_LESSON_TURNS)
            terms->error[i] /= sqrt(lw_weight_of(off[i] / terms->error[i]));
}

static void add_day(lw_evidence *e, const lw_learning *l, const lw_lesson_day *day,
                    const double z[LW_UNKNOWNS])
{
    lw_terms terms = {.count = 0};
    double told[LW_TERMS_MOST];
    for (size_t row = 0; row < LW_LESSON_COUNT; row++) {
        const double value = lw_quantity_value(&lw_lesson_table.rows[row], &day->told);
        if (isnan(value)) continue;
        told[terms.count] = value;
        lw_terms_add(&terms, l, day, row, z);
    }
    weigh(&terms, told);
    lw_evidence_add(e, &terms, told);
}

static lw_evidence evidence_at(const lw_learning *l, size_t left_out, const double z[LW_UNKNOWNS])
{
    lw_evidence e = lw_evidence_before(z);
    for (size_t i = 0; i < l->season->count; i++) {
        if (i % LW_FOLDS != left_out) add_day(&e, l, &l->season->days[i], z);
    }
    return e;
}

// Steps that turn back and forth, where weights or bends change on the way, are made shorter.
typedef struct descent {
    double last[LW_UNKNOWNS];
    double part;  // of a step that is gone
} descent;

static void shorten(descent *d, const double step[LW_UNKNOWNS])
{
    double along = 0.0;
    for (int k = 0; k < ALL; k++) along += step[k] * d->last[k];
    d->part = along < 0.0 ? 0.5 * d->part : fmin(1.2 * d->part, 1.0);
    memcpy(d->last, step, ALL * sizeof *step);
}

// One step of Gauss and Newton, no longer than a bound, within the rows' ranges: how far it went.
static double step_to(const lw_learning *l, const lw_evidence *e, descent *d, double z[LW_UNKNOWNS])
{
    double step[LW_UNKNOWNS], low[LW_UNKNOWNS], high[LW_UNKNOWNS], longest = 0.0;
    lw_hidden least = l->before, most = l->before;
    for (int k = 0; k < N; k++) {
        const lw_quantity *row = &lw_hidden_table.rows[k];
        const double unit = lw_unit_in_si(row->unit);
        lw_quantity_put(row, &least, row->min * unit);
        lw_quantity_put(row, &most, row->max * unit);
    }
    for (int k = 0; k < ALL; k++) step[k] = e->pull[k];
    if (!lw_evidence_solve(e, step)) return 0.0;
    lw_hidden_from(l, &least, low);
    lw_hidden_from(l, &most, high);
    for (int k = N; k < ALL; k++) low[k] = -INFINITY, high[k] = INFINITY;
    for (int k = 0; k < ALL; k++) longest = fmax(longest, fabs(step[k]));
    shorten(d, step);
    const double part = d->part * (longest > STEP_MOST ? STEP_MOST / longest : 1.0);
    double went = 0.0;
    for (int k = 0; k < ALL; k++) {
        const double was = z[k];
        z[k] = fmin(fmax(was + part * step[k], low[k]), high[k]);
        went = fmax(went, fabs(z[k] - was));
    }
    return went;
}

lw_evidence lw_evidence_of(const lw_learning *l, size_t left_out, double z[LW_UNKNOWNS])
{
    memset(z, 0, ALL * sizeof *z);
    memcpy(z, l->middle, sizeof l->middle);
    descent d = {.part = 1.0};
    lw_evidence e = evidence_at(l, left_out, z);
    for (int i = 0; i < ITERATIONS; i++) {
        const double went = step_to(l, &e, &d, z);
        e = evidence_at(l, left_out, z);
        if (went < STEP_LEAST) break;
    }
    return e;
}
