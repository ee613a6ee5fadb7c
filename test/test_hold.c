// test_hold.c - claims about holding a pin or stopping to change it.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/hold.h"
#include "test/check.h"

#define LENGTH 4000.0

// A pace that goes evenly from `first` here to `last` at the finish [s/m], by all blocks; what each
// block alone has and its draw are off that by `error` and `spread`, to either side.
static lw_pace pace(double first, double last, double error, double spread)
{
    lw_pace p = {.is_stuck = false};
    for (int i = 0; i < LW_HOLD_POINTS; i++) {
        const double u = (double)i / (LW_HOLD_POINTS - 1), all = first + u * (last - first);
        p.seconds[0][i] = all;
        for (int b = 0; b < LW_BLOCKS; b++) {
            const double side = b % 2 ? 1.0 : -1.0;
            p.seconds[b + 1][i] = all - side * error / (LW_BLOCKS - 1.0);
        }
        for (int d = 0; d < LW_DRAWS; d++) p.moved[d][i] = (d % 2 ? 1.0 : -1.0) * spread;
        p.flying[i] = 1.0;
    }
    return p;
}

// Of blocks off by `error` to either side: the mean's.
static double error_of(double error) { return error / sqrt(LW_BLOCKS - 1.0); }

// Of draws off by `off` to either side: their standard deviation as a sample's.
static double spread_of(double off) { return off * sqrt(LW_DRAWS / (LW_DRAWS - 1.0)); }

TEST_FUNCTION(time_is_additive_along_the_way)
{
    const lw_pace p = pace(0.2, 0.35, 0.0, 0.0);
    const double all = lw_way_rest(p.seconds[0], LENGTH, 0.0);
    CHECK_RELATIVE(all, 0.5 * (0.2 + 0.35) * LENGTH, 1e-12);
    for (double at = 0.0; at <= LENGTH; at += 333.0) {
        const double first = (0.2 + 0.5 * 0.15 * at / LENGTH) * at;
        CHECK_RELATIVE(first + lw_way_rest(p.seconds[0], LENGTH, at), all, 1e-12);
    }
}

TEST_FUNCTION(a_stop_that_costs_nothing_goes_to_the_faster_pin)
{
    const lw_pace slow = pace(0.25, 0.30, 0.0, 0.0), fast = pace(0.24, 0.26, 0.0, 0.0);
    const lw_change there = lw_change_of(&slow, &fast, LENGTH, 0.0);
    const lw_change back = lw_change_of(&fast, &slow, LENGTH, 0.0);
    CHECK(there.saved > 0.0 && there.is_ever && there.even_left == 0.0 && there.chance == 1.0);
    CHECK(back.saved < 0.0 && !back.is_ever && back.best_saved <= 0.0 && back.chance == 0.0);
    CHECK_RELATIVE(there.saved, -back.saved, 1e-12);
}

// Textbook break-even: fixed cost over the margin of a unit.
TEST_FUNCTION(in_a_steady_wind_the_break_even_is_the_stop_over_what_a_metre_saves)
{
    const lw_pace slow = pace(0.25, 0.25, 0.0, 0.0), fast = pace(0.20, 0.20, 0.0, 0.0);
    for (double stop = 10.0; stop < 500.0; stop *= 2.0) {  // beyond what is left too
        const lw_change c = lw_change_of(&slow, &fast, LENGTH, stop);
        CHECK_RELATIVE(c.even_left, stop / 0.05, 1e-9);
        CHECK_RELATIVE(c.even_seconds, 0.25 * c.even_left, 1e-9);
        CHECK((c.saved > 0.0) == (c.even_left < LENGTH));
    }
}

TEST_FUNCTION(equal_paces_never_pay_a_stop)
{
    const lw_pace p = pace(0.25, 0.28, 0.0, 0.0);
    const lw_change c = lw_change_of(&p, &p, LENGTH, 60.0);
    CHECK(!c.is_ever && c.best_saved <= 0.0);
    CHECK_RELATIVE(c.saved, -60.0, 1e-12);
}

TEST_FUNCTION(at_the_break_even_both_take_the_same)
{
    for (double last = 0.27; last < 0.40; last += 0.01) {
        const lw_pace held = pace(0.25, last, 0.0, 0.0), other = pace(0.26, 0.24, 0.0, 0.0);
        const lw_change c = lw_change_of(&held, &other, LENGTH, 40.0);
        if (!c.is_ever || c.even_left > LENGTH) continue;
        const double from = LENGTH - c.even_left;
        CHECK_NEAR(lw_way_rest(held.seconds[0], LENGTH, from),
                   40.0 + lw_way_rest(other.seconds[0], LENGTH, from), 1e-9);
        CHECK_NEAR(c.even_seconds, lw_way_rest(held.seconds[0], LENGTH, from), 1e-9);
    }
}

// The other pin is slower until half way: the stop belongs there, and saves the triangle behind it.
TEST_FUNCTION(when_the_wind_builds_the_stop_waits_until_the_other_pin_is_faster)
{
    const lw_pace held = pace(0.20, 0.40, 0.003, 0.0), other = pace(0.30, 0.30, 0.004, 0.0);
    const lw_change c = lw_change_of(&held, &other, LENGTH, 20.0);
    CHECK_RELATIVE(c.best_at, 0.5 * LENGTH, 1e-9);
    CHECK_RELATIVE(c.best_saved, 0.5 * 0.1 * 0.5 * LENGTH - 20.0, 1e-9);
    CHECK(c.best_saved > c.saved && c.best_chance > c.chance);
    CHECK_RELATIVE(c.best_error, error_of(0.001) * 0.5 * LENGTH, 1e-9);  // both are off together
}

TEST_FUNCTION(what_both_pins_meet_alike_leaves_their_difference_sure)
{
    const lw_pace slow = pace(0.25, 0.25, 0.02, 0.03), fast = pace(0.20, 0.20, 0.02, 0.03);
    const lw_change c = lw_change_of(&slow, &fast, LENGTH, 60.0);
    CHECK_NEAR(c.error, 0.0, 1e-9);
    CHECK_NEAR(c.spread, 0.0, 1e-9);
    CHECK(c.chance > 0.99);
}

TEST_FUNCTION(the_less_is_known_the_nearer_the_chance_is_to_one_half)
{
    double before = 1.0;
    const lw_pace fast = pace(0.20, 0.20, 0.0, 0.0);
    for (double error = 0.004; error < 4.0; error *= 2.0) {
        const lw_pace slow = pace(0.25, 0.25, error, 2.0 * error);
        const lw_change c = lw_change_of(&slow, &fast, LENGTH, 60.0);
        CHECK_RELATIVE(c.error, error_of(error) * LENGTH, 1e-9);
        CHECK_RELATIVE(c.spread, spread_of(2.0 * error) * LENGTH, 1e-9);
        CHECK(c.chance > 0.5 && c.chance <= before);
        before = c.chance;
    }
    CHECK(before < 0.53);
}

// 6 m/s of mean wind here, 9 at the finish.
TEST_FUNCTION(the_wind_goes_evenly_with_the_distance_and_puffs_go_with_it)
{
    const lw_hold hold = {.left = LENGTH, .now = 6.0, .later = 9.0};
    CHECK_RELATIVE(lw_hold_wind(&hold, 0.0), 6.0, 1e-12);
    CHECK_RELATIVE(lw_hold_wind(&hold, 0.5 * LENGTH), 7.5, 1e-12);
    CHECK_RELATIVE(lw_hold_wind(&hold, LENGTH), 9.0, 1e-12);
    CHECK_RELATIVE(lw_hold_puff(&hold, 8.0), 12.0, 1e-12);
}

TEST_FUNCTION(rides_reach_so_far_and_no_further)
{
    lw_hold hold = {.left = LENGTH, .now = 6.0, .later = 6.0};
    CHECK(!lw_hold_is_beyond_rides(&hold));
    hold.later = 6.0 * LW_RIDE_MOST + 0.01;
    CHECK(lw_hold_is_beyond_rides(&hold));
    hold.later = 6.0 * LW_RIDE_LEAST - 0.01;
    CHECK(lw_hold_is_beyond_rides(&hold));
}

// One swim in 2000 m, known alike from all blocks, and half a one that did not happen: two and one
// over the 4000 m, which take 1000 s.
TEST_FUNCTION(swims_an_hour_are_those_to_the_finish_over_its_time)
{
    static lw_hold hold = {.left = LENGTH};
    double error, hourly;
    hold.paces[0] = pace(0.25, 0.25, 0.0, 0.0);
    for (int i = 0; i < LW_HOLD_POINTS; i++) {
        for (int set = 0; set < LW_SETS; set++) hold.paces[0].swims[set][i] = 1.0 / 2000.0;
        hold.paces[0].unseen[i] = 0.5 / 2000.0;
    }
    CHECK_RELATIVE(lw_hold_swims(&hold, 0, &error), 2.0, 1e-12);
    CHECK_RELATIVE(error, 1.0, 1e-9);
    CHECK_RELATIVE(lw_hold_swims_an_hour(&hold, 0, &hourly), 2.0 * 3.6, 1e-12);
    CHECK_RELATIVE(hourly, error * 3.6, 1e-12);
    CHECK_RELATIVE(lw_hold_unsure(3.0, 4.0), 5.0, 1e-15);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(time_is_additive_along_the_way),
        TEST(a_stop_that_costs_nothing_goes_to_the_faster_pin),
        TEST(in_a_steady_wind_the_break_even_is_the_stop_over_what_a_metre_saves),
        TEST(equal_paces_never_pay_a_stop),
        TEST(at_the_break_even_both_take_the_same),
        TEST(when_the_wind_builds_the_stop_waits_until_the_other_pin_is_faster),
        TEST(what_both_pins_meet_alike_leaves_their_difference_sure),
        TEST(the_less_is_known_the_nearer_the_chance_is_to_one_half),
        TEST(the_wind_goes_evenly_with_the_distance_and_puffs_go_with_it),
        TEST(rides_reach_so_far_and_no_further),
        TEST(swims_an_hour_are_those_to_the_finish_over_its_time),
    };
    return RUN_TESTS(tests);
}
