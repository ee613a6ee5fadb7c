// learning.c - hidden quantities learned from a season: what is tried, and what comes of it.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "learning/evidence.h"

#define TRIED (2 * LW_HIDDEN_COUNT + 1)  // what was thought before, and one error beside it

void lw_learning_begin(lw_learning *l, const lw_season *season)
{
    memset(l, 0, sizeof *l);
    l->season = season;
    lw_table_preset(&lw_hidden_table, &l->before);
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        const lw_quantity *row = &lw_hidden_table.rows[k];
        lw_quantity_put(row, &l->errors, row->error * lw_unit_in_si(row->unit));
    }
    l->centre = l->before;
}

static size_t steps_now(const lw_learning *l)
{
    return (TRIED + l->round) * l->season->boat->pin_count;
}

bool lw_learning_is_whole(const lw_learning *l)
{
    size_t done = 0;
    while (done < steps_now(l) && l->is_done[done]) done++;
    return done == steps_now(l);
}

size_t lw_learning_steps(lw_learning *l)
{
    double z[LW_UNKNOWNS];
    if (l->round == LW_LEARNING_ROUNDS || !lw_learning_is_whole(l)) return steps_now(l);
    if (l->round == 0) l->here = l->first;
    lw_evidence_of(l, LW_FOLDS, z);
    l->centre = lw_hidden_at(l, z);
    l->round++;
    return steps_now(l);
}

// What a step tries, and where that is kept.
static lw_flights *tried(lw_learning *l, size_t which, lw_hidden *hidden)
{
    double z[LW_UNKNOWNS] = {0.0};
    *hidden = l->centre;
    if (which >= TRIED) return &l->here;
    if (which == 0) return &l->first;
    const size_t k = (which - 1) / 2;
    const bool is_more = which % 2;
    z[k] = is_more ? 1.0 : -1.0;
    *hidden = lw_hidden_at(l, z);
    return is_more ? &l->more[k] : &l->less[k];
}

void lw_learning_step(lw_learning *l, size_t step)
{
    lw_hidden hidden;
    const size_t pins = l->season->boat->pin_count;
    lw_flights *flights = tried(l, step / pins, &hidden);
    lw_flights_add(flights, l->season, &hidden, step % pins);
    l->is_done[step] = true;
}

// --- learned

// Numbers that a day tells and that are foreseen.
static size_t numbers_of(const lw_learning *l, const lw_lesson_day *day,
                         const double z[LW_UNKNOWNS], lw_terms *terms)
{
    terms->count = 0;
    for (size_t row = 0; row < LW_LESSON_COUNT; row++) {
        if (!isnan(lw_quantity_value(&lw_lesson_table.rows[row], &day->told)))
            lw_terms_add(terms, l, day, row, z);
    }
    return terms->count;
}

static void put_covariance(const lw_evidence *e, lw_learned *learned)
{
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        double column[LW_UNKNOWNS] = {0.0};
        column[k] = 1.0;
        lw_evidence_solve(e, column);
        for (size_t j = 0; j < LW_HIDDEN_COUNT; j++) learned->covariance[j][k] = column[j];
    }
}

lw_learned lw_learning_end(const lw_learning *l)
{
    double z[LW_UNKNOWNS];
    lw_terms terms;
    lw_learned learned = {.days = 0};
    const lw_evidence e = lw_evidence_of(l, LW_FOLDS, z);
    learned.values = lw_hidden_at(l, z);
    put_covariance(&e, &learned);
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        const lw_quantity *row = &lw_hidden_table.rows[k];
        lw_quantity_put(row, &learned.errors,
                        sqrt(learned.covariance[k][k]) * lw_quantity_value(row, &l->errors));
    }
    for (size_t i = 0; i < l->season->count; i++) {
        const size_t numbers = numbers_of(l, &l->season->days[i], z, &terms);
        learned.numbers += numbers;
        learned.days += numbers > 0;
    }
    return learned;
}

// --- days left out

typedef struct squares {
    double sum[LW_LESSON_KINDS], count[LW_LESSON_KINDS];
} squares;

static void add_squares(squares *s, const lw_terms *terms, const lw_lesson *told)
{
    for (size_t i = 0; i < terms->count; i++) {
        const size_t kind = terms->row[i] / LW_COURSE_COUNT;
        const double off =
            lw_quantity_value(&lw_lesson_table.rows[terms->row[i]], told) - terms->foreseen[i];
        s->sum[kind] += off * off;
        s->count[kind] += 1.0;
    }
}

static void put_roots(const squares *s, double roots[LW_LESSON_KINDS])
{
    for (size_t kind = 0; kind < LW_LESSON_KINDS; kind++)
        roots[kind] = s->count[kind] > 0.0 ? sqrt(s->sum[kind] / s->count[kind]) : NAN;
}

lw_left_out lw_learning_left_out(const lw_learning *l)
{
    const double before[LW_UNKNOWNS] = {0.0};
    squares measured = {{0.0}, {0.0}}, learned = {{0.0}, {0.0}};
    lw_left_out left;
    for (size_t part = 0; part < LW_FOLDS; part++) {
        double z[LW_UNKNOWNS];
        lw_terms terms;
        lw_evidence_of(l, part, z);
        for (size_t i = part; i < l->season->count; i += LW_FOLDS) {
            const lw_lesson_day *day = &l->season->days[i];
            numbers_of(l, day, before, &terms);
            add_squares(&measured, &terms, &day->told);
            numbers_of(l, day, z, &terms);
            add_squares(&learned, &terms, &day->told);
        }
    }
    put_roots(&measured, left.as_measured);
    put_roots(&learned, left.learned);
    return left;
}
