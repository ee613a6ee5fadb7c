// test_logged.c - claims about logged days: how like two are, and dates.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/logged.h"
#include "medium/wind.h"
#include "test/check.h"

#define KN(x) ((x)*LW_KN)

static const lw_wind breeze = {
    .lull = KN(10.0), .mean = KN(12.5), .puff = KN(15.5), .height = 3.0, .period = 60.0};
static const lw_sea lake = {.fetch = 2000.0};

TEST_FUNCTION(a_day_is_no_way_from_itself)
{
    const lw_conditions day = lw_conditions_of(&breeze, &lake, 70.0);
    CHECK(lw_conditions_apart(&day, &day) == 0.0);
}

static bool is_a_distance(const double *x)
{
    const lw_conditions a = {x[0], x[1], x[2], x[3], 70.0}, b = {x[4], x[5], x[6], x[7], 80.0};
    const lw_conditions c = {x[8], x[9], x[10], x[11], 60.0};
    const double ab = lw_conditions_apart(&a, &b), bc = lw_conditions_apart(&b, &c);
    const double ac = lw_conditions_apart(&a, &c);
    return ab > 0.0 && ab == lw_conditions_apart(&b, &a) && ac <= ab + bc + 1e-12;
}

TEST_FUNCTION(days_are_apart_alike_both_ways_and_no_detour_is_shorter)
{
    CHECK_HOLDS(is_a_distance, 1000, {0.0, 20.0}, {0.0, 20.0}, {0.0, 20.0}, {0.0, 2.0}, {0.0, 20.0},
                {0.0, 20.0}, {0.0, 20.0}, {0.0, 2.0}, {0.0, 20.0}, {0.0, 20.0}, {0.0, 20.0},
                {0.0, 2.0});
}

TEST_FUNCTION(one_step_of_one_quantity_is_one_apart)
{
    const lw_conditions day = lw_conditions_of(&breeze, &lake, 70.0);
    for (size_t i = 0; i < lw_conditions_table.count; i++) {
        const lw_quantity *row = &lw_conditions_table.rows[i];
        lw_conditions other = day;
        lw_quantity_put(row, &other, lw_quantity_value(row, &day) + lw_conditions_step(i));
        CHECK_NEAR(lw_conditions_apart(&day, &other), 1.0, 1e-12);
    }
}

TEST_FUNCTION(what_is_not_told_does_not_count)
{
    const lw_conditions light = lw_conditions_of(&breeze, &lake, 60.0);
    const lw_conditions heavy = lw_conditions_of(&breeze, &lake, 92.0);
    const lw_conditions anyone = lw_conditions_of(&breeze, &lake, NAN);
    CHECK_NEAR(lw_conditions_apart(&light, &heavy), 4.0, 1e-12);  // 32 kg by 8 kg
    CHECK(lw_conditions_apart(&light, &anyone) == 0.0);
}

TEST_FUNCTION(the_same_wind_read_higher_up_is_the_same_day)
{
    lw_wind high = breeze;
    high.height = 10.0;
    high.lull = lw_wind_at(breeze.lull, 3.0, 10.0), high.mean = lw_wind_at(breeze.mean, 3.0, 10.0);
    high.puff = lw_wind_at(breeze.puff, 3.0, 10.0);
    const lw_conditions a = lw_conditions_of(&breeze, &lake, 70.0);
    const lw_conditions b = lw_conditions_of(&high, &lake, 70.0);
    CHECK_NEAR(lw_conditions_apart(&a, &b), 0.0, 1e-9);
}

// Kamphuis: H = 0.0016 U sqrt(F / g), U at 10 m by the log law over 0.0002 m.
TEST_FUNCTION(chop_that_nobody_read_is_that_of_fetch_and_wind)
{
    const double U = KN(12.5) * log(10.0 / 0.0002) / log(3.0 / 0.0002);
    const lw_conditions day = lw_conditions_of(&breeze, &lake, 70.0);
    CHECK_NEAR(day.chop, 0.0016 * U * sqrt(2000.0 / LW_GRAVITY), 1e-9);
    const lw_sea read = {.fetch = 2000.0, .height = 0.4};
    CHECK(lw_conditions_of(&breeze, &read, 70.0).chop == 0.4);
}

// Leap years are those that four divides, of full hundreds those that 400 does [iso8601].
TEST_FUNCTION(dates_are_those_of_the_calendar)
{
    static const char *const sound[] = {"2000-02-29", "2024-02-29", "2030-05-17", "1999-12-31"};
    static const char *const unsound[] = {"1900-02-29", "2023-02-29", "2030-13-01", "2030-00-10",
                                          "2030-04-31", "2030-05-00", "2030-5-17",  "2030-05-17 ",
                                          "2030/05/17", "17-05-2030", "2030-05-1x", "",
                                          "2030-05"};
    for (size_t i = 0; i < sizeof sound / sizeof sound[0]; i++) CHECK(lw_date_is_sound(sound[i]));
    for (size_t i = 0; i < sizeof unsound / sizeof unsound[0]; i++)
        CHECK(!lw_date_is_sound(unsound[i]));
}

// Ten seconds upwind at 5 m/s, ten at 7, then twenty on a reach, ten of them flying; and a second
// too close to the wind, which is no course.
TEST_FUNCTION(a_track_keeps_of_each_course_what_was_flown_on_it)
{
    lw_fix fixes[42];
    lw_track_way ways[42] = {{.starts = true}};
    for (int i = 0; i < 42; i++) {
        fixes[i] = (lw_fix){.time = i, .starts = i == 0};
        ways[i] = (lw_track_way){.speed = i <= 10   ? 5.0
                                          : i <= 20 ? 7.0
                                                    : 9.0,
                                 .course = (i <= 20   ? 0.0
                                            : i <= 40 ? 50.0
                                                      : 330.0) *
                                           LW_DEG,
                                 .starts = i == 0,
                                 .flies = i <= 30 || i == 41};
    }
    const lw_track track = {fixes, ways, 42};
    const lw_track_summary summary = {
        .by = LW_TRACK_BY_WORD,
        .from = 310.0 * LW_DEG,
        .sum = {.under_way = 41.0, .flying = 31.0, .count = {[LW_TRACK_TAKE_OFF] = 2}}};
    const lw_sailed sailed = lw_sailed_of(&track, &summary);
    CHECK_NEAR(sailed.upwind_speed, 6.0, 1e-12);
    CHECK_NEAR(sailed.upwind_scatter, 1.0, 1e-12);
    CHECK_NEAR(sailed.upwind_time, 20.0, 1e-12);
    CHECK_NEAR(sailed.reach_speed, 9.0, 1e-12);
    CHECK_NEAR(sailed.reach_time, 10.0, 1e-12);
    CHECK(isnan(sailed.downwind_speed) && sailed.downwind_time == 0.0);
    CHECK_NEAR(sailed.flying, 31.0 / 41.0, 1e-12);
    CHECK(sailed.take_offs == 2.0 && sailed.stops == 0.0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_day_is_no_way_from_itself),
        TEST(days_are_apart_alike_both_ways_and_no_detour_is_shorter),
        TEST(one_step_of_one_quantity_is_one_apart),
        TEST(what_is_not_told_does_not_count),
        TEST(the_same_wind_read_higher_up_is_the_same_day),
        TEST(chop_that_nobody_read_is_that_of_fetch_and_wind),
        TEST(dates_are_those_of_the_calendar),
        TEST(a_track_keeps_of_each_course_what_was_flown_on_it),
    };
    return RUN_TESTS(tests);
}
