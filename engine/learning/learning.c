// learning.c - hidden quantities learned from a season: what is tried, and what comes of it.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stddef.h>
#include <string.h>

#include "learning/evidence.h"
#include "learning/trend.h"

#define RUDDER (offsetof(lw_hidden, rudder_incidence) / sizeof(double))
#define WINDS  6    // of all pins, at least, that are ridden beside what was thought  [judged]
#define FAR    0.6  // errors from the middle: steady flight is asked again from there  [judged]

void lw_learning_begin(lw_learning *l, const lw_season *season)
{
    memset(l, 0, sizeof *l);
    l->season = season;
    l->rounds = LW_LEARNING_ROUNDS;
    lw_table_preset(&lw_hidden_table, &l->before);
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        const lw_quantity *row = &lw_hidden_table.rows[k];
        lw_quantity_put(row, &l->errors, row->error * lw_unit_in_si(row->unit));
    }
    const lw_medium medium = lw_medium_of(&season->day);
    lw_craft_prepare(&l->craft, season->boat, season->sections, season->person, &medium);
}

// --- steps: of each round so many sets of values, each with every pin

// In this order.
enum { AS_THOUGHT, BESIDE_THAT, AT_THE_MIDDLE, BESIDE_THE_MIDDLE, FARTHER, BESIDE_FARTHER };

static const size_t sets_of[LW_LEARNING_ROUNDS] = {
    1, 2 * (size_t)LW_HIDDEN_COUNT, 1, 2 * (size_t)LW_STEADY_COUNT, 1, 2 * (size_t)LW_STEADY_COUNT};

static bool is_beside(size_t round) { return sets_of[round] > 1; }

// Those of all rounds up to one.
static size_t steps_before(const lw_learning *l, size_t round)
{
    size_t sets = 0;
    for (size_t i = 0; i < round; i++) sets += sets_of[i];
    return sets * l->season->boat->pin_count;
}

bool lw_learning_is_whole(const lw_learning *l)
{
    if (l->round == l->rounds) return true;
    const size_t steps = sets_of[l->round] * l->season->boat->pin_count;
    size_t done = 0;
    while (done < steps && l->is_done[done]) done++;
    return done == steps;
}

// How far what is most likely now is from where steady flight was tried.
static double move_middle(lw_learning *l, double least)
{
    double z[LW_UNKNOWNS], far = 0.0;
    lw_evidence_of(l, LW_FOLDS, z);
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) far = fmax(far, fabs(z[k] - l->middle[k]));
    if (far >= least) memcpy(l->middle, z, sizeof l->middle);
    return far;
}

static void end_round(lw_learning *l)
{
    if (l->round == AS_THOUGHT) l->measured = l->first;
    if (l->round == BESIDE_THAT) {
        lw_trend_put(l);
        move_middle(l, 0.0);
        memcpy(l->ridden_at, l->middle, sizeof l->ridden_at);
    }
    if (l->round == BESIDE_THE_MIDDLE && move_middle(l, FAR) < FAR) l->rounds = FARTHER;
    memset(l->is_done, 0, sizeof l->is_done);
    l->round++;
}

size_t lw_learning_steps(lw_learning *l)
{
    if (l->round < l->rounds && lw_learning_is_whole(l)) end_round(l);
    return steps_before(l, l->round < l->rounds ? l->round + 1 : l->rounds);
}

static lw_trying trying_at(const lw_learning *l, const double z[LW_UNKNOWNS], size_t pin)
{
    return (lw_trying){
        .season = l->season, .craft = &l->craft, .hidden = lw_hidden_at(l, z), .pin = pin};
}

// Of so many winds one is ridden.
static size_t every_of(const lw_learning *l)
{
    const size_t winds = lw_season_winds(l->season);
    return winds < WINDS ? 1 : winds / WINDS;
}

// A rudder foil that stands otherwise is wound so much less, and she flies as she did.
static void step_beside(lw_learning *l, size_t number, size_t pin)
{
    const size_t k = number / 2;
    const double side = number % 2 ? -1.0 : 1.0;
    lw_flights *to = number % 2 ? &l->less[k] : &l->more[k];
    double z[LW_UNKNOWNS] = {0.0};
    memcpy(z, l->middle, sizeof l->middle);
    z[k] += side;
    const lw_trying trying = trying_at(l, z, pin);
    const double turn = l->season->boat->rudder.turn;
    if (k == RUDDER)
        lw_flights_add_wound(to, &l->first, pin, -side * l->errors.rudder_incidence / turn);
    else
        lw_flights_add_beside(to, &trying, l->walks[pin],
                              l->round == BESIDE_THAT ? every_of(l) : 0);
}

void lw_learning_step(lw_learning *l, size_t step)
{
    const size_t pins = l->season->boat->pin_count;
    const size_t of_round = step - steps_before(l, l->round), pin = of_round % pins;
    if (is_beside(l->round)) {
        step_beside(l, of_round / pins, pin);
    } else {
        double z[LW_UNKNOWNS] = {0.0};
        memcpy(z, l->middle, sizeof l->middle);
        const lw_trying trying = trying_at(l, z, pin);
        lw_flights_add(&l->first, &trying, l->walks[pin], l->round < FARTHER);
    }
    l->is_done[of_round] = true;
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

// The day's numbers with their wind as it fits best.
static void add_squares(squares *s, const lw_terms *terms, const lw_lesson *told)
{
    double off[LW_TERMS_MOST];
    for (size_t i = 0; i < terms->count; i++)
        off[i] = lw_quantity_value(&lw_lesson_table.rows[terms->row[i]], told) - terms->foreseen[i];
    lw_terms_fit_wind(terms, off);
    for (size_t i = 0; i < terms->count; i++) {
        const lw_lesson_kind kind = lw_lesson_kind_of(terms->row[i]);
        s->sum[kind] += off[i] * off[i];
        s->count[kind] += 1.0;
    }
}

// Those numbers that are foreseen with the boat as measured too, and how.
static void foresee_measured(const lw_learning *l, const lw_lesson_day *day, lw_terms *learned,
                             lw_terms *measured)
{
    const lw_terms all = *learned;
    double first[LW_TERMS_MOST];
    learned->count = 0;
    for (size_t i = 0; i < all.count; i++) {
        const size_t at = learned->count;
        first[at] = lw_flights_lesson(&l->measured, day->pin, day->wind, all.row[i]);
        if (isnan(first[at])) continue;
        learned->row[at] = all.row[i], learned->foreseen[at] = all.foreseen[i];
        learned->error[at] = all.error[i], learned->by_wind[at] = all.by_wind[i];
        learned->count++;
    }
    *measured = *learned;
    memcpy(measured->foreseen, first, sizeof first);
}

static void put_roots(const squares *s, double roots[LW_LESSON_KINDS])
{
    for (size_t kind = 0; kind < LW_LESSON_KINDS; kind++)
        roots[kind] = s->count[kind] > 0.0 ? sqrt(s->sum[kind] / s->count[kind]) : NAN;
}

lw_left_out lw_learning_left_out(const lw_learning *l)
{
    squares measured = {{0.0}, {0.0}}, learned = {{0.0}, {0.0}};
    lw_left_out left;
    for (size_t part = 0; part < LW_FOLDS; part++) {
        double z[LW_UNKNOWNS];
        lw_terms terms, before = {.count = 0};
        lw_evidence_of(l, part, z);
        for (size_t i = part; i < l->season->count; i += LW_FOLDS) {
            const lw_lesson_day *day = &l->season->days[i];
            numbers_of(l, day, z, &terms);
            foresee_measured(l, day, &terms, &before);
            add_squares(&measured, &before, &day->told);
            add_squares(&learned, &terms, &day->told);
        }
    }
    put_roots(&measured, left.as_measured);
    put_roots(&learned, left.learned);
    return left;
}
