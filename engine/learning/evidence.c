// evidence.c - what days add to what is known, and what is then most likely.
// SPDX-License-Identifier: MIT

#include "learning/evidence.h"

#include <math.h>

#include "solve/linear.h"

#define ALL         ((int)LW_UNKNOWNS)
#define N           ((int)LW_HIDDEN_COUNT)
#define BESIDE      (0.5 * LW_KN)  // in which the slope over the wind is taken
#define BENT        1.0            // of a bend over one error, that may be off  [judged]
#define ROUND       0.25           // errors about what was thought before, within which it bends
#define LIKE_DAYS   2.0  // that tell as much as one: she is off alike on like days  [judged]
#define COMMON      1.0  // of a number's error, that all days are off alike  [judged]
#define COMMON_WIND (4.0 * LW_KN)  // more of it, with as much again  [judged]
#define ITERATIONS  40
#define STEP_MOST   1.0   // errors at once, for a slope that changes on the way
#define STEP_LEAST  1e-9  // errors: nothing moves any more

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

// A number as it was foreseen at what was thought before, and one error beside each quantity.
typedef struct tried {
    double first, more[LW_HIDDEN_COUNT], less[LW_HIDDEN_COUNT];
} tried;

static bool is_tried(const lw_learning *l, const lw_lesson_day *day, size_t row, tried *t)
{
    t->first = lw_flights_lesson(&l->first, day->pin, day->wind, row);
    double sum = t->first;
    for (int k = 0; k < N; k++) {
        t->more[k] = lw_flights_lesson(&l->more[k], day->pin, day->wind, row);
        t->less[k] = lw_flights_lesson(&l->less[k], day->pin, day->wind, row);
        sum += t->more[k] + t->less[k];
    }
    return !isnan(sum);
}

// Straight on either side of what was thought before, as tried there, with a round corner; so that
// beyond what was tried it goes on as it went: a parabola would turn back.
static double along(const tried *t, const double z[LW_UNKNOWNS])
{
    double sum = 0.0;
    for (int k = 0; k < N; k++) {
        const double bend = (t->more[k] + t->less[k] - 2.0 * t->first) / (hypotenuse(1.0) - ROUND);
        sum += 0.5 * (z[k] * (t->more[k] - t->less[k]) + bend * (hypotenuse(z[k]) - ROUND));
    }
    return sum;
}

static double slope_along(const tried *t, int k, double z)
{
    const double bend = (t->more[k] + t->less[k] - 2.0 * t->first) / (hypotenuse(1.0) - ROUND);
    return 0.5 * (t->more[k] - t->less[k] + bend * z / hypotenuse(z));
}

// A number's own error, and how far off this may be where what is foreseen bends or jumps.
static double error_of(double own, const tried *t)
{
    double sum = LIKE_DAYS * own * own;
    for (int k = 0; k < N; k++) {
        const double bend = BENT * (t->more[k] + t->less[k] - 2.0 * t->first);
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

bool lw_terms_add(lw_terms *terms, const lw_learning *learning, const lw_lesson_day *day,
                  size_t row, const double z[LW_UNKNOWNS])
{
    tried t;
    double centre[LW_UNKNOWNS];
    if (!is_tried(learning, day, row, &t)) return false;
    lw_hidden_from(learning, &learning->centre, centre);
    const double here = lw_flights_lesson(&learning->here, day->pin, day->wind, row);
    const size_t i = terms->count++;
    const lw_quantity *quantity = &lw_lesson_table.rows[row];
    terms->row[i] = row;
    terms->error[i] = error_of(quantity->error * lw_unit_in_si(quantity->unit), &t);
    terms->foreseen[i] =
        isnan(here) ? t.first + along(&t, z) : here + along(&t, z) - along(&t, centre);
    terms->by_wind[i] = by_wind_of(&learning->first, day, row);
    for (int k = 0; k < N; k++) terms->slope[i][k] = slope_along(&t, k, z[k]);
    for (int k = N; k < ALL; k++) terms->slope[i][k] = 0.0;
    const double alike = COMMON * quantity->error * lw_unit_in_si(quantity->unit);
    const double more = (day->wind - learning->season->day.wind.mean) / COMMON_WIND;
    const size_t at = LW_HIDDEN_COUNT + 2 * row;
    terms->slope[i][at] = alike;
    terms->slope[i][at + 1] = alike * more;
    terms->foreseen[i] += alike * (z[at] + more * z[at + 1]);
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

// One step of Gauss and Newton, no longer than a bound, within the rows' ranges: how far it went.
static double step_to(const lw_learning *l, const lw_evidence *e, double z[LW_UNKNOWNS])
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
    const double part = longest > STEP_MOST ? STEP_MOST / longest : 1.0;
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
    lw_hidden_from(l, &l->centre, z);
    lw_evidence e = evidence_at(l, left_out, z);
    for (int i = 0; i < ITERATIONS; i++) {
        const double went = step_to(l, &e, z);
        e = evidence_at(l, left_out, z);
        if (went < STEP_LEAST) break;
    }
    return e;
}
