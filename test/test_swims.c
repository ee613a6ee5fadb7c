// test_swims.c - claims about how often a set-up swims, as rides count it.
// SPDX-License-Identifier: MIT

#include "lullwise/swims.h"
#include "test/check.h"
#include "test/preset.h"

typedef struct scene {
    lw_craft craft;
    lw_setup setup;
    lw_range range;
    lw_weather weather;
} scene;

// The preset boat with a pin on a course, in a puffy breeze over two kilometres of water.
static void scene_fill(scene *s, int pin, lw_course_kind course)
{
    lw_day day;
    lw_record_preset(&lw_day_record, &day);
    day.wind.lull = 10.0 * LW_KN, day.wind.mean = 12.5 * LW_KN, day.wind.puff = 15.5 * LW_KN;
    day.sea.fetch = 2000.0;
    const lw_boat boat = preset_boat();
    const lw_person person = preset_person();
    const lw_medium medium = lw_medium_of(&day);
    lw_craft_prepare(&s->craft, &boat, preset_sections(), &person, &medium);
    s->setup = preset_setup(&s->craft, pin);
    s->weather = lw_weather_of(&s->craft, &day);
    const lw_gust_kind *gust = &s->weather.gust;
    lw_range_of(&s->craft, &s->setup, lw_course_of(course), gust->puff - gust->mean, &s->range);
}

static lw_swims swims_of(const scene *s, double seconds, uint64_t seed)
{
    return lw_swims_of(&s->craft, &s->setup, &s->range, &s->weather,
                       (lw_swim_effort){seconds, seed});
}

TEST_FUNCTION(lull_and_puff_go_with_the_mean_wind)
{
    static scene s;
    scene_fill(&s, 1, LW_REACH);
    lw_motion motion = lw_motion_of(&s.craft);
    lw_weather_put(&s.weather, 2.0 * s.weather.gust.mean, &motion);
    CHECK_RELATIVE(motion.gust.kind.lull, 2.0 * s.weather.gust.lull, 1e-15);
    CHECK_RELATIVE(motion.gust.kind.puff, 2.0 * s.weather.gust.puff, 1e-15);
    CHECK(motion.is_gusty);
}

// Four standard errors of the difference of two logarithms.
TEST_FUNCTION(other_seeds_and_longer_rides_come_to_the_same_rate_within_their_errors)
{
    static scene s;
    for (int course = 0; course < LW_COURSE_COUNT; course += 2) {
        scene_fill(&s, 0, (lw_course_kind)course);
        const lw_swims brief = swims_of(&s, 40.0, 1), lengthy = swims_of(&s, 160.0, 1000);
        CHECK(brief.is_known && lengthy.time > 2.0 * brief.time);
        for (double part = 0.8; part < 1.7; part += 0.2) {
            const double wind = part * s.weather.gust.mean;
            const double a = lw_swims_rate(&brief, wind), b = lw_swims_rate(&lengthy, wind);
            const double error_a = lw_swims_log_error(&brief, wind);
            const double error_b = lw_swims_log_error(&lengthy, wind);
            CHECK_NEAR(log(a / b), 0.0, 4.0 * sqrt(error_a * error_a + error_b * error_b));
        }
    }
}

TEST_FUNCTION(longer_rides_know_the_rate_better_where_she_swims)
{
    static scene s;
    scene_fill(&s, 0, LW_DOWNWIND);
    const lw_swims brief = swims_of(&s, 20.0, 1), lengthy = swims_of(&s, 160.0, 1);
    const double wind = 1.6 * s.weather.gust.mean;
    CHECK(lw_swims_log_error(&lengthy, wind) < lw_swims_log_error(&brief, wind));
}

// Common practice: what is too strong a pin for a wind cannot be carried in it.  [common practice]
TEST_FUNCTION(strongest_pin_swims_more_than_the_weakest_downwind_in_much_wind)
{
    static scene strong, weak;
    scene_fill(&strong, 0, LW_DOWNWIND);
    scene_fill(&weak, 3, LW_DOWNWIND);
    const lw_swims much = swims_of(&strong, 80.0, 1), few = swims_of(&weak, 80.0, 1);
    const double wind = 1.6 * strong.weather.gust.mean;
    CHECK(lw_swims_rate(&much, wind) > 2.0 * lw_swims_rate(&few, wind));
    CHECK(lw_swims_limit(&much, 10.0 / 3600.0) <= lw_swims_limit(&few, 10.0 / 3600.0));
}

// Fitted with its neighbour, a pin is nearer to it than alone, and how near is known better.
TEST_FUNCTION(pins_fitted_together_lie_nearer_and_their_difference_is_known_better)
{
    static scene s[2];
    static lw_swim_counts counts[2];
    static lw_rate_family family;
    lw_swims alone[2], together[2], *const to[2] = {&together[0], &together[1]};
    const lw_swim_counts *const from[2] = {&counts[0], &counts[1]};
    for (int i = 0; i < 2; i++) {
        scene_fill(&s[i], i, LW_DOWNWIND);
        const lw_swim_effort effort = {40.0, 1};
        lw_swims_ride(&s[i].craft, &s[i].setup, &s[i].range, &s[i].weather, effort, &counts[i]);
        alone[i] = swims_of(&s[i], 40.0, 1);
        CHECK(alone[i].events > 0.0 && counts[i].count == LW_SWIM_WINDS * LW_SWIM_RIDES);
    }
    lw_swims_fit(&s[0].weather, 2, from, &family, to);
    for (double part = 0.8; part < 1.8; part += 0.2) {
        const double wind = part * s[0].weather.gust.mean;
        const double apart = log(lw_swims_rate(&alone[0], wind) / lw_swims_rate(&alone[1], wind));
        const double near =
            log(lw_swims_rate(&together[0], wind) / lw_swims_rate(&together[1], wind));
        CHECK(fabs(near) < fabs(apart) + 0.2);
        const double x = lw_swims_x(&together[0], wind);
        const double square = lw_rate_family_covariance(&family, 0, x, 0, x) +
                              lw_rate_family_covariance(&family, 1, x, 1, x) -
                              2.0 * lw_rate_family_covariance(&family, 0, x, 1, x);
        CHECK(sqrt(square) <
              hypot(lw_swims_log_error(&alone[0], wind), lw_swims_log_error(&alone[1], wind)));
    }
}

TEST_FUNCTION(hold_of_a_pin_that_swims_as_often_in_any_wind_is_the_greatest_ridden_in)
{
    lw_swims swims = {.first = 5.0, .apart = 1.0, .low = 5.0, .high = 10.0, .is_known = true};
    for (int k = 0; k < LW_RATE_TERMS; k++) swims.curve.term[k] = log(40.0 / 3600.0);
    CHECK(lw_swims_hold(&swims) == 10.0 && lw_swims_limit(&swims, LW_SWIM_MANY) == 0.0);
    for (int k = 0; k < LW_RATE_TERMS; k++) swims.curve.term[k] += 0.2 * k;  // 52 an hour at 6.3
    CHECK_NEAR(lw_swims_hold(&swims), 5.0 + log(52.0 / 40.0) / 0.2, 0.06);
}

TEST_FUNCTION(boat_that_never_flies_has_no_known_rate)
{
    static scene s;
    scene_fill(&s, 1, LW_REACH);
    for (int i = 0; i < LW_RANGE_WINDS; i++) s.range.at[i].trimmed.outcome = LW_NO_BALANCE;
    const lw_swims swims = swims_of(&s, 20.0, 1);
    CHECK(!swims.is_known && swims.time == 0.0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(lull_and_puff_go_with_the_mean_wind),
        TEST(other_seeds_and_longer_rides_come_to_the_same_rate_within_their_errors),
        TEST(longer_rides_know_the_rate_better_where_she_swims),
        TEST(strongest_pin_swims_more_than_the_weakest_downwind_in_much_wind),
        TEST(pins_fitted_together_lie_nearer_and_their_difference_is_known_better),
        TEST(hold_of_a_pin_that_swims_as_often_in_any_wind_is_the_greatest_ridden_in),
        TEST(boat_that_never_flies_has_no_known_rate),
    };
    return RUN_TESTS(tests);
}
