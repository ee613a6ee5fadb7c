// test_best.c - claims about the search for hardware, on functions whose best is known.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "sweep/best.h"
#include "test/check.h"

// Two quantities of so many values each, tried in two cases.
#define VALUES 33
#define CASES  2

typedef double worth_of(double x, double y, size_t which, size_t set);

static const lw_sweep_worth by_rides = {.unit = LW_UNIT_S, .has_rides = true};
static const lw_sweep_worth by_flight = {.unit = LW_UNIT_S};
static const lw_sweep_answer ridden = {.worth = &by_rides}, flown = {.worth = &by_flight};

static lw_sweep sweep_from(size_t x, size_t y, const lw_sweep_answer *answer)
{
    return (lw_sweep){
        .sought_count = 2,
        .sought = {{.over = {.count = VALUES}, .own = x}, {.over = {.count = VALUES}, .own = y}},
        .draws = CASES,
        .answer = answer};
}

static double worth_at(const lw_sweep *sweep, size_t point, worth_of *worth)
{
    const size_t candidate = lw_sweep_candidate(sweep, point);
    return worth((double)lw_sought_at(sweep->sought, 2, candidate, 0),
                 (double)lw_sought_at(sweep->sought, 2, candidate, 1), point % CASES,
                 lw_sweep_set(sweep, point));
}

// Works all points out, `backwards` of those that are there the last first; how many there were.
static size_t work_out(lw_best *best, const lw_sweep *sweep, worth_of *worth, bool backwards)
{
    size_t points[1000], all = 0;
    lw_best_begin(best, sweep);
    while (!best->is_over) {
        size_t n = 0;
        while (lw_best_next(best, &points[n])) n++;
        assert_true(n > 0 && n < 1000);
        for (size_t i = 0; i < n; i++) {
            const size_t point = points[backwards ? n - 1 - i : i];
            lw_best_put(best, point, worth_at(sweep, point, worth));
            lw_best_put(best, point, 1e9);  // a word that comes twice counts once
        }
        all += n;
    }
    return all;
}

static size_t x_of(const lw_sweep *sweep, size_t candidate)
{
    return lw_sought_at(sweep->sought, 2, candidate, 0);
}

static size_t y_of(const lw_sweep *sweep, size_t candidate)
{
    return lw_sought_at(sweep->sought, 2, candidate, 1);
}

// Best in the mean of both cases at (21, 6): at 23 in one and 19 in the other.
static double hill(double x, double y, size_t which, size_t set)
{
    const double top = which ? 19.0 : 23.0;
    (void)set;
    return -(x - top) * (x - top) - 2.0 * (y - 6.0) * (y - 6.0) - 0.5 * (x - 21.0) * (y - 6.0);
}

TEST_FUNCTION(the_best_of_a_hill_is_found_from_anywhere)
{
    for (size_t start = 0; start < VALUES; start += 8) {
        const lw_sweep sweep = sweep_from(start, VALUES - 1 - start, &flown);
        lw_best best;
        const size_t points = work_out(&best, &sweep, hill, false);
        assert_int_equal(x_of(&sweep, best.found[0]), 21);
        assert_int_equal(y_of(&sweep, best.found[0]), 6);
        CHECK(points < CASES * VALUES * VALUES / 8);  // a search, not all of them
        lw_best_end(&best);
    }
}

// From (16, 6): by hand, alone x to 21, where the cases gain 49 - 4 = 45 and 9 - 4 = 5; and y to 7,
// where 2.5 - 2 is gained.
TEST_FUNCTION(each_alone_moves_nothing_else_and_cases_have_their_own_gains)
{
    const lw_sweep sweep = sweep_from(16, 6, &flown);
    lw_best best;
    work_out(&best, &sweep, hill, false);
    assert_int_equal(x_of(&sweep, best.found[1]), 21);
    assert_int_equal(y_of(&sweep, best.found[1]), 6);
    assert_int_equal(x_of(&sweep, best.found[2]), 16);
    assert_int_equal(y_of(&sweep, best.found[2]), 7);
    CHECK_NEAR(lw_best_gain(&best, best.found[1], 0).mean, 45.0, 1e-12);
    CHECK_NEAR(lw_best_gain(&best, best.found[1], 1).mean, 5.0, 1e-12);
    CHECK_NEAR(lw_best_gain(&best, best.found[1], LW_ALL_CASES).mean, 25.0, 1e-12);
    CHECK(lw_best_gain(&best, best.found[1], 0).error == 0.0);
    CHECK_NEAR(lw_best_own_worth(&best, LW_ALL_CASES), -29.0, 1e-12);
    lw_best_end(&best);
}

TEST_FUNCTION(what_is_tried_does_not_hang_on_the_order_of_what_is_told)
{
    const lw_sweep sweep = sweep_from(3, 30, &ridden);
    lw_best forwards, backwards;
    const size_t points = work_out(&forwards, &sweep, hill, false);
    assert_int_equal(work_out(&backwards, &sweep, hill, true), points);
    assert_int_equal(forwards.trial_count, backwards.trial_count);
    for (size_t i = 0; i < forwards.trial_count; i++) {
        assert_int_equal(forwards.trials[i].candidate, backwards.trials[i].candidate);
        assert_memory_equal(forwards.trials[i].worth, backwards.trials[i].worth,
                            CASES * sizeof(double));
    }
    lw_best_end(&forwards);
    lw_best_end(&backwards);
}

// The seeds of the search have luck at 8; by the others, of which set k is worth k times the way, a
// gain of 8 ways has the mean 8 (1 + 2 + 3 + 4) / 4 = 20 and the error 8 sqrt(5/3 / 4).
static double lucky(double x, double y, size_t which, size_t set)
{
    (void)y, (void)which;
    if (set == 0) return x == 8.0 ? 100.0 : -fabs(x - 8.0);
    return (double)set * x;
}

TEST_FUNCTION(what_is_found_is_judged_by_other_seeds)
{
    const lw_sweep sweep = sweep_from(0, 0, &ridden);
    lw_best best;
    work_out(&best, &sweep, lucky, false);
    assert_int_equal(x_of(&sweep, best.found[0]), 8);
    const lw_gain gain = lw_best_gain(&best, best.found[0], LW_ALL_CASES);
    CHECK_NEAR(gain.mean, 20.0, 1e-12);
    CHECK_NEAR(gain.error, 8.0 * sqrt(5.0 / 3.0 / 4.0), 1e-12);
    lw_best_end(&best);
}

// Nothing can be sailed beyond 10; in the second case nothing at all.
static double edge(double x, double y, size_t which, size_t set)
{
    (void)y, (void)set;
    return which ? NAN : x > 10.0 ? NAN : x;
}

static double nowhere(double x, double y, size_t which, size_t set)
{
    (void)x, (void)y, (void)which, (void)set;
    return NAN;
}

TEST_FUNCTION(what_cannot_be_sailed_is_not_gone_to_and_its_case_does_not_count)
{
    const lw_sweep sweep = sweep_from(2, 16, &flown);
    lw_best best;
    work_out(&best, &sweep, edge, false);
    assert_int_equal(x_of(&sweep, best.found[0]), 10);
    CHECK_NEAR(lw_best_gain(&best, best.found[0], LW_ALL_CASES).mean, 8.0, 1e-12);
    lw_best_end(&best);
    assert_int_equal(work_out(&best, &sweep, nowhere, false), CASES);
    CHECK(isnan(lw_best_own_worth(&best, LW_ALL_CASES)));
    lw_best_end(&best);
}

static double own_is_best(double x, double y, size_t which, size_t set)
{
    (void)which, (void)set;
    return -fabs(x - 16.0) - fabs(y - 16.0);
}

TEST_FUNCTION(where_nothing_is_better_nothing_is_checked)
{
    const lw_sweep sweep = sweep_from(16, 16, &ridden);
    lw_best best;
    work_out(&best, &sweep, own_is_best, false);
    assert_int_equal(best.found[0], lw_sweep_own(&sweep));
    for (size_t i = 0; i < best.trial_count; i++) assert_int_equal(best.trials[i].set, 0);
    lw_best_end(&best);
}

// The boat's own span is on the grid to the bit, and 0.02 m either way.
TEST_FUNCTION(the_grid_holds_what_the_boat_has)
{
    static lw_boat boat;
    lw_refusal refusal = {0};
    lw_sought sought;
    char text[LW_OVER_TEXT];
    lw_record_preset(&lw_boat_record, &boat);
    boat.main_foil.span = 0.973;
    assert_true(lw_sought_read(&sought, "main_foil.span=90:100:2cm", &boat, &refusal));
    lw_sought_text(&sought, sought.own, text);
    assert_string_equal(text, "97.3 cm");
    lw_sought_text(&sought, sought.own + 1, text);
    assert_string_equal(text, "99.3 cm");
    assert_int_equal(sought.over.count, 5);
    lw_over_release(&sought.over);
    static const char *const refused[] = {"main_foil.span=1:1.2:0.1m", "person.mass=60:80:5kg",
                                          "main_foil.span=0.9; 1.1m", "pins.A=1:2:0.1deg",
                                          "main_foil=1:2:1m"};
    for (size_t i = 0; i < sizeof refused / sizeof refused[0]; i++) {
        CHECK(!lw_sought_read(&sought, refused[i], &boat, &refusal));
        lw_over_release(&sought.over);
    }
    lw_faults_free(&refusal.faults);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_best_of_a_hill_is_found_from_anywhere),
        TEST(each_alone_moves_nothing_else_and_cases_have_their_own_gains),
        TEST(what_is_tried_does_not_hang_on_the_order_of_what_is_told),
        TEST(what_is_found_is_judged_by_other_seeds),
        TEST(what_cannot_be_sailed_is_not_gone_to_and_its_case_does_not_count),
        TEST(where_nothing_is_better_nothing_is_checked),
        TEST(the_grid_holds_what_the_boat_has),
    };
    return RUN_TESTS(tests);
}
