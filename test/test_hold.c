// test_hold.c - claims about holding a pin or stopping to change it.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/hold.h"
#include "test/check.h"

#define LENGTH 4000.0

// A pace that goes evenly from `first` here to `last` at the finish [s/m].
static lw_pace pace(double first, double last, double error)
{
    lw_pace p;
    for (int i = 0; i < LW_HOLD_POINTS; i++) {
        const double u = (double)i / (LW_HOLD_POINTS - 1);
        p.seconds[i] = first + u * (last - first);
        p.error[i] = error;
        p.swims[i] = 0.0, p.flying[i] = 1.0;
    }
    return p;
}

// [abramowitz-stegun] table 26.1, P(x) to the digits that 26.2.17 promises; from memory.
TEST_FUNCTION(the_normal_chance_is_that_of_the_handbooks_table)
{
    static const double rows[][2] = {{0.0, 0.5},          {0.5, 0.6914624613}, {1.0, 0.8413447461},
                                     {1.5, 0.9331927987}, {2.0, 0.9772498681}, {3.0, 0.9986501020}};
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++) {
        CHECK_NEAR(lw_normal_below(rows[i][0]), rows[i][1], 1e-7);
        CHECK_NEAR(lw_normal_below(-rows[i][0]), 1.0 - rows[i][1], 1e-7);
    }
}

TEST_FUNCTION(time_is_additive_along_the_way)
{
    const lw_pace p = pace(0.2, 0.35, 0.0);
    const double all = lw_pace_rest(p.seconds, LENGTH, 0.0);
    CHECK_RELATIVE(all, 0.5 * (0.2 + 0.35) * LENGTH, 1e-12);
    for (double at = 0.0; at <= LENGTH; at += 333.0) {
        const double first = (0.2 + 0.5 * 0.15 * at / LENGTH) * at;
        CHECK_RELATIVE(first + lw_pace_rest(p.seconds, LENGTH, at), all, 1e-12);
    }
}

TEST_FUNCTION(a_stop_that_costs_nothing_goes_to_the_faster_pin)
{
    const lw_pace slow = pace(0.25, 0.30, 0.0), fast = pace(0.24, 0.26, 0.0);
    const lw_change there = lw_change_of(&slow, &fast, LENGTH, 0.0);
    const lw_change back = lw_change_of(&fast, &slow, LENGTH, 0.0);
    CHECK(there.saved > 0.0 && there.is_ever && there.even_left == 0.0 && there.chance == 1.0);
    CHECK(back.saved < 0.0 && !back.is_ever && back.best_saved <= 0.0 && back.chance == 0.0);
    CHECK_RELATIVE(there.saved, -back.saved, 1e-12);
}

// Textbook break-even: fixed cost over the margin of a unit.
TEST_FUNCTION(in_a_steady_wind_the_break_even_is_the_stop_over_what_a_metre_saves)
{
    const lw_pace slow = pace(0.25, 0.25, 0.0), fast = pace(0.20, 0.20, 0.0);
    for (double stop = 10.0; stop < 500.0; stop *= 2.0) {  // beyond what is left too
        const lw_change c = lw_change_of(&slow, &fast, LENGTH, stop);
        CHECK_RELATIVE(c.even_left, stop / 0.05, 1e-9);
        CHECK_RELATIVE(c.even_seconds, 0.25 * c.even_left, 1e-9);
        CHECK((c.saved > 0.0) == (c.even_left < LENGTH));
    }
}

TEST_FUNCTION(equal_paces_never_pay_a_stop)
{
    const lw_pace p = pace(0.25, 0.28, 0.0);
    const lw_change c = lw_change_of(&p, &p, LENGTH, 60.0);
    CHECK(!c.is_ever && c.best_saved <= 0.0);
    CHECK_RELATIVE(c.saved, -60.0, 1e-12);
}

TEST_FUNCTION(at_the_break_even_both_take_the_same)
{
    for (double last = 0.27; last < 0.40; last += 0.01) {
        const lw_pace held = pace(0.25, last, 0.0), other = pace(0.26, 0.24, 0.0);
        const lw_change c = lw_change_of(&held, &other, LENGTH, 40.0);
        if (!c.is_ever || c.even_left > LENGTH) continue;
        const double from = LENGTH - c.even_left;
        CHECK_NEAR(lw_pace_rest(held.seconds, LENGTH, from),
                   40.0 + lw_pace_rest(other.seconds, LENGTH, from), 1e-9);
        CHECK_NEAR(c.even_seconds, lw_pace_rest(held.seconds, LENGTH, from), 1e-9);
    }
}

// The other pin is slower until half way: the stop belongs there, and saves the triangle behind it.
TEST_FUNCTION(when_the_wind_builds_the_stop_waits_until_the_other_pin_is_faster)
{
    const lw_pace held = pace(0.20, 0.40, 0.003), other = pace(0.30, 0.30, 0.004);
    const lw_change c = lw_change_of(&held, &other, LENGTH, 20.0);
    CHECK_RELATIVE(c.best_at, 0.5 * LENGTH, 1e-9);
    CHECK_RELATIVE(c.best_saved, 0.5 * 0.1 * 0.5 * LENGTH - 20.0, 1e-9);
    CHECK(c.best_saved > c.saved && c.best_chance > c.chance);
    CHECK_RELATIVE(c.best_error, 0.005 * 0.5 * LENGTH, 1e-9);
}

TEST_FUNCTION(the_less_is_known_the_nearer_the_chance_is_to_one_half)
{
    double before = 1.0;
    const lw_pace fast = pace(0.20, 0.20, 0.0);
    for (double error = 0.002; error < 1.0; error *= 2.0) {
        const lw_pace slow = pace(0.25, 0.25, error);
        const lw_change c = lw_change_of(&slow, &fast, LENGTH, 60.0);
        CHECK_RELATIVE(c.error, error * LENGTH, 1e-12);
        CHECK(c.chance > 0.5 && c.chance <= before);
        before = c.chance;
    }
    CHECK(before < 0.53);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_normal_chance_is_that_of_the_handbooks_table),
        TEST(time_is_additive_along_the_way),
        TEST(a_stop_that_costs_nothing_goes_to_the_faster_pin),
        TEST(in_a_steady_wind_the_break_even_is_the_stop_over_what_a_metre_saves),
        TEST(equal_paces_never_pay_a_stop),
        TEST(at_the_break_even_both_take_the_same),
        TEST(when_the_wind_builds_the_stop_waits_until_the_other_pin_is_faster),
        TEST(the_less_is_known_the_nearer_the_chance_is_to_one_half),
    };
    return RUN_TESTS(tests);
}
