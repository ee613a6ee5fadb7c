// test_learning.c - claims about what is learned of a boat from days that were sailed.
// SPDX-License-Identifier: MIT

#include <cminpack.h>

#include "learning/weight.h"
#include "lullwise/trial.h"
#include "test/learned_season.h"

static made_season made;
static lw_learning learning;

static void learn_season(unsigned number)
{
    static unsigned learned;
    lw_seed seed = lw_seed_of(number, LW_SEED_DRAW);
    if (learned == number) return;
    learned = number;
    begin_season(&made);
    lw_learning_begin(&learning, &made.season);
    hide(&learning, &seed, &made);
    blow(&seed, &made);
    sail(&seed, &made);
    learn(&learning);
}

TEST_FUNCTION(what_is_thought_before_leaves_boat_sailor_and_day_as_they_are)
{
    lw_hidden before;
    read_demo();
    lw_inputs inputs = {.boat = demo.boat, .sailor = demo.sailor, .day = demo.day};
    lw_table_preset(&lw_hidden_table, &before);
    lw_hidden_put(&before, &inputs);
    CHECK(memcmp(&inputs.boat, &demo.boat, sizeof demo.boat) == 0);
    CHECK(inputs.sailor.person.skill == demo.sailor.person.skill);
    CHECK(inputs.day.sea.fetch == demo.day.sea.fetch);
}

TEST_FUNCTION(without_days_nothing_is_learned)
{
    static lw_learning idle;
    begin_season(&made);
    lw_season none = made.season;
    none.count = 0;
    lw_learning_begin(&idle, &none);
    const lw_learned learned = lw_learning_end(&idle);
    CHECK(learned.days == 0 && learned.numbers == 0);
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        const lw_quantity *row = &lw_hidden_table.rows[k];
        CHECK_NEAR(lw_quantity_shown(row, &learned.values), row->preset, 1e-12);
        CHECK_NEAR(lw_quantity_shown(row, &learned.errors), row->error, 1e-12);
    }
}

// A number told of whose wind nothing is wrong, by hand: precision 1 + (slope / error)^2.
TEST_FUNCTION(one_number_adds_its_slope_over_its_error_squared)
{
    const double z[LW_UNKNOWNS] = {0.0};
    lw_evidence e = lw_evidence_before(z);
    const lw_terms terms = {.count = 1, .foreseen = {1.0}, .error = {0.5}, .slope = {{2.0}}};
    const double told[] = {1.25};
    lw_evidence_add(&e, &terms, told);
    CHECK_NEAR(e.precision[0][0], 17.0, 1e-12);
    CHECK_NEAR(e.pull[0], 2.0, 1e-12);
    CHECK_NEAR(e.precision[1][1], 1.0, 0.0);
}

// Two numbers of one wind, of which each knot changes both by as much: what they tell of a quantity
// that moves only one of them is what C^-1 has, by hand. E = 1, s = 1: C = [2 1; 1 2].
TEST_FUNCTION(numbers_of_one_day_share_the_error_of_its_wind)
{
    const double z[LW_UNKNOWNS] = {0.0};
    lw_evidence e = lw_evidence_before(z);
    const double knot = 1.0 / LW_WIND_ERROR;
    const lw_terms terms = {
        .count = 2, .error = {1.0, 1.0}, .by_wind = {knot, knot}, .slope = {{1.0}, {0.0, 1.0}}};
    lw_evidence_add(&e, &terms, NULL);
    CHECK_NEAR(e.precision[0][0], 1.0 + 2.0 / 3.0, 1e-12);
    CHECK_NEAR(e.precision[0][1], -1.0 / 3.0, 1e-12);
}

// --- the same minimum by MINPACK, from residuals that are whitened otherwise

#define BESIDE 1e-4  // errors, in which slopes are taken
#define BEGIN  0.05  // errors off: farther away what is foreseen bends

static double errors[MADE_DAYS][LW_TERMS_MOST];  // of the numbers as they count in the end

// The day's numbers, and what is foreseen of them.
static lw_terms terms_of(const lw_lesson_day *day, const double *z, double told[LW_TERMS_MOST])
{
    lw_terms t = {.count = 0};
    for (size_t row = 0; row < LW_LESSON_COUNT; row++) {
        told[t.count] = lw_quantity_value(&lw_lesson_table.rows[row], &day->told);
        if (!isnan(told[t.count])) lw_terms_add(&t, &learning, day, row, z);
    }
    return t;
}

static void keep_errors(const double *z)
{
    for (size_t day = 0; day < MADE_DAYS; day++) {
        double off[LW_TERMS_MOST];
        lw_terms t = terms_of(&made.days[day], z, off);
        for (size_t i = 0; i < t.count; i++) off[i] -= t.foreseen[i];
        lw_terms_fit_wind(&t, off);
        for (size_t i = 0; i < t.count; i++) {
            const bool is_turns = lw_lesson_kind_of(t.row[i]) == LW_LESSON_TURNS;
            const double weight = is_turns ? 1.0 : lw_weight_of(off[i] / t.error[i]);
            errors[day][i] = t.error[i] / sqrt(weight);
        }
    }
}

// Residuals of a day by the Cholesky factor of the whole of C, written out.
static int whitened(size_t number, const double *z, double *out)
{
    double c[LW_LESSON_COUNT][LW_LESSON_COUNT], told[LW_TERMS_MOST];
    const lw_terms t = terms_of(&made.days[number], z, told);
    const double *error = errors[number];
    for (size_t i = 0; i < t.count; i++) {
        out[i] = told[i] - t.foreseen[i];
        for (size_t j = 0; j <= i; j++) {
            c[i][j] = t.by_wind[i] * t.by_wind[j] * LW_WIND_ERROR * LW_WIND_ERROR +
                      (i == j ? error[i] * error[i] : 0.0);
            for (size_t k = 0; k < j; k++) c[i][j] -= c[i][k] * c[j][k];
            if (i == j) c[i][i] = sqrt(c[i][i]);
            if (i > j) c[i][j] /= c[j][j];
            if (i > j) out[i] -= c[i][j] * out[j];
        }
        out[i] /= c[i][i];
    }
    return (int)t.count;
}

static double squares(const double *z)
{
    double out[LW_LESSON_COUNT], sum = 0.0;
    for (size_t k = 0; k < LW_UNKNOWNS; k++) sum += z[k] * z[k];
    for (size_t i = 0; i < MADE_DAYS; i++) {
        for (int n = whitened(i, z, out); n-- > 0;) sum += out[n] * out[n];
    }
    return sum;
}

// What is zero at the least of squares: their slopes, by differences.
static int slopes(void *unused, int n, const double *z, double *out, int flag)
{
    (void)unused, (void)flag;
    for (int k = 0; k < n; k++) {
        double more[LW_UNKNOWNS], less[LW_UNKNOWNS];
        memcpy(more, z, sizeof more), memcpy(less, z, sizeof less);
        more[k] += BESIDE, less[k] -= BESIDE;
        out[k] = (squares(more) - squares(less)) / (2.0 * BESIDE);
    }
    return 0;
}

TEST_FUNCTION(what_is_most_likely_is_the_least_of_squares_by_minpack)
{
    double z[LW_UNKNOWNS], theirs[LW_UNKNOWNS], left[LW_UNKNOWNS];
    double room[LW_UNKNOWNS * (3 * LW_UNKNOWNS + 13) / 2 + 1];
    learn_season(1);
    lw_evidence_of(&learning, LW_FOLDS, z);
    keep_errors(z);
    for (size_t k = 0; k < LW_UNKNOWNS; k++) theirs[k] = z[k] + BEGIN;
    const int ended = hybrd1(slopes, NULL, LW_UNKNOWNS, theirs, left, 1e-9, room,
                             (int)(sizeof room / sizeof room[0]));

    CHECK(ended == 1);
    for (size_t k = 0; k < LW_UNKNOWNS; k++) CHECK_NEAR(z[k], theirs[k], 2e-5);
}

// --- seasons whose truth is known

#define SEASONS  20   // with LW_SOAK; else the first
#define FARTHEST 4.0  // errors: 1 in 16,000 of normal ones

TEST_FUNCTION(hidden_quantities_are_found_and_with_all_pins_days_foreseen_twice_as_well)
{
    const unsigned seasons = soak_times() > 1 ? SEASONS : 1;
    unsigned within[LW_HIDDEN_COUNT] = {0};
    double before = 0.0, after = 0.0;
    static lw_flights found;
    for (unsigned number = 1; number <= seasons; number++) {
        learn_season(number);
        const lw_learned learned = lw_learning_end(&learning);
        fly_with(&made, &learned.values, &found);
        for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
            const lw_quantity *row = &lw_hidden_table.rows[k];
            const double off =
                lw_quantity_value(row, &learned.values) - lw_quantity_value(row, &made.truth);
            const double error = lw_quantity_value(row, &learned.errors);
            within[k] += fabs(off) <= 2.0 * error;
            CHECK(fabs(off) <= FARTHEST * error);
        }
        for (size_t kind = LW_LESSON_TURNS; kind <= LW_LESSON_SPEED; kind++) {
            const double error = lw_lesson_table.rows[kind * LW_COURSE_COUNT].error *
                                 lw_unit_in_si(lw_lesson_table.rows[kind * LW_COURSE_COUNT].unit);
            before += pow(off_by(&made, &learning.measured, kind) / error, 2.0);
            after += pow(off_by(&made, &found, kind) / error, 2.0);
        }
    }
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        print_message("%s: within two errors %u of %u\n", lw_hidden_table.rows[k].key, within[k],
                      seasons);
        CHECK(20 * within[k] >= 18 * seasons);
    }
    print_message("off, in errors of a number: %.2f as measured, %.2f learned\n",
                  sqrt(before / (2 * seasons)), sqrt(after / (2 * seasons)));
    CHECK(sqrt(after) < (demo.boat.pin_count > 1 ? 0.5 : 1.0) * sqrt(before));
}

TEST_FUNCTION(what_is_tried_next_never_makes_the_choice_less_sure)
{
    learn_season(1);
    const lw_next next = lw_learning_next(&learning, &demo.day);
    CHECK(next.is_known == (demo.boat.pin_count > 1));
    if (!next.is_known) return;
    CHECK(next.is_known && next.first != next.second && next.seconds >= 0.0);
    CHECK(next.count > 0);
    for (size_t i = 0; i < next.count; i++) {
        CHECK(next.trials[i].error <= next.error);
        if (i > 0) CHECK(next.trials[i].error >= next.trials[i - 1].error);
    }
    CHECK(next.trials[0].error < next.error);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(what_is_thought_before_leaves_boat_sailor_and_day_as_they_are),
        TEST(without_days_nothing_is_learned),
        TEST(one_number_adds_its_slope_over_its_error_squared),
        TEST(numbers_of_one_day_share_the_error_of_its_wind),
        TEST(what_is_most_likely_is_the_least_of_squares_by_minpack),
        TEST(hidden_quantities_are_found_and_with_all_pins_days_foreseen_twice_as_well),
        TEST(what_is_tried_next_never_makes_the_choice_less_sure),
    };
    return RUN_TESTS(tests);
}
