// test_swims.c - claims about how often a pin swims, as rides count it.
// SPDX-License-Identifier: MIT

#include "lullwise/swims.h"
#include "test/check.h"
#include "test/preset.h"

static lw_weather breeze(lw_craft *craft)
{
    lw_day day;
    lw_record_preset(&lw_day_record, &day);
    day.wind.lull = 10.0 * LW_KN, day.wind.mean = 12.5 * LW_KN, day.wind.puff = 15.5 * LW_KN;
    day.sea.fetch = 2000.0;
    *craft = preset_craft();
    return lw_weather_of(craft, &day);
}

TEST_FUNCTION(lull_and_puff_go_with_the_mean_wind)
{
    static lw_craft craft;
    const lw_weather weather = breeze(&craft);
    lw_motion motion = lw_motion_of(&craft);
    lw_weather_put(&weather, 2.0 * weather.gust.mean, &motion);
    CHECK_RELATIVE(motion.gust.kind.lull, 2.0 * weather.gust.lull, 1e-15);
    CHECK_RELATIVE(motion.gust.kind.puff, 2.0 * weather.gust.puff, 1e-15);
    CHECK(motion.is_gusty);
}

// Counts of two pins in every wind, the second with more by a factor.
static size_t counts_of(double rate, double factor, double time, lw_rate_count counts[])
{
    size_t n = 0;
    for (size_t pin = 0; pin < 2; pin++) {
        for (int k = 0; k < LW_RIDE_WINDS; k++) {
            counts[n++] = (lw_rate_count){k, time * rate * (pin ? factor : 1.0), time, pin};
        }
    }
    return n;
}

TEST_FUNCTION(many_counts_give_their_own_rate_and_few_lean_on_the_neighbour)
{
    static lw_craft craft;
    const lw_weather weather = breeze(&craft);
    lw_rate_count counts[2 * LW_RIDE_WINDS];
    lw_swims swims[2];
    size_t n = counts_of(0.01, 3.0, 1e5, counts);
    lw_swims_fit(&weather, counts, n, 2, swims);
    CHECK_RELATIVE(lw_swims_rate(&swims[0], weather.gust.mean), 0.01, 0.02);
    CHECK_RELATIVE(lw_swims_rate(&swims[1], weather.gust.mean), 0.03, 0.02);
    n = counts_of(0.01, 3.0, 20.0, counts);
    lw_swims_fit(&weather, counts, n, 2, swims);
    const double apart =
        lw_swims_rate(&swims[1], weather.gust.mean) / lw_swims_rate(&swims[0], weather.gust.mean);
    CHECK(apart > 1.0 && apart < 2.5);
    CHECK(swims[0].is_known && swims[0].time == LW_RIDE_WINDS * 20.0);
}

// Rates that rise by a factor from wind to wind: where they cross once in five minutes, by hand.
TEST_FUNCTION(held_by_rides_is_the_puff_of_the_wind_with_a_swim_in_five_minutes)
{
    static lw_craft craft;
    const lw_weather weather = breeze(&craft);
    const double mean = weather.gust.mean, puff = weather.gust.puff;
    lw_swims swims = {
        .first = LW_RIDE_LEAST * mean, .apart = LW_RIDE_APART * mean, .is_known = true};
    for (int k = 0; k < LW_RATE_TERMS; k++) swims.curve.term[k] = log(4.0 / 3600.0) + 0.4 * k;
    const double x = log(3.0) / 0.4, wind = swims.first + x * swims.apart;
    const lw_ride_hold hold = lw_swims_hold(&swims, &weather);
    CHECK(hold.has_end);
    CHECK_NEAR(hold.mean, wind, 0.11 * LW_KN);
    CHECK_RELATIVE(hold.puff, hold.mean * puff / mean, 1e-12);

    for (int k = 0; k < LW_RATE_TERMS; k++) swims.curve.term[k] = log(4.0 / 3600.0);
    CHECK(!lw_swims_hold(&swims, &weather).has_end);
    for (int k = 0; k < LW_RATE_TERMS; k++) swims.curve.term[k] = log(40.0 / 3600.0);
    CHECK(lw_swims_hold(&swims, &weather).puff == 0.0 && lw_swims_hold(&swims, &weather).has_end);
}

// Swims in the lulls of little wind are no loss of hold: the greatest wind counts.
TEST_FUNCTION(swims_in_little_wind_do_not_end_the_hold)
{
    static lw_craft craft;
    const lw_weather weather = breeze(&craft);
    const double mean = weather.gust.mean;
    lw_swims swims = {
        .first = LW_RIDE_LEAST * mean, .apart = LW_RIDE_APART * mean, .is_known = true};
    for (int k = 0; k < LW_RATE_TERMS; k++) {
        swims.curve.term[k] = log((k == 0 ? 60.0 : k == LW_RATE_TERMS - 1 ? 60.0 : 2.0) / 3600.0);
    }
    const lw_ride_hold hold = lw_swims_hold(&swims, &weather);
    CHECK(hold.mean > 1.6 * mean && hold.mean < LW_RIDE_MOST * mean);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(lull_and_puff_go_with_the_mean_wind),
        TEST(many_counts_give_their_own_rate_and_few_lean_on_the_neighbour),
        TEST(held_by_rides_is_the_puff_of_the_wind_with_a_swim_in_five_minutes),
        TEST(swims_in_little_wind_do_not_end_the_hold),
    };
    return RUN_TESTS(tests);
}
