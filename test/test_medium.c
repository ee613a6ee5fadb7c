// test_medium.c - claims about what surrounds the boat, and about the day's lull, mean and puff.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "lullwise/elementary.h"
#include "lullwise/medium.h"
#include "medium/air.h"
#include "medium/water.h"
#include "medium/wind.h"
#include "test/check.h"

static const lw_medium lake = {.wind_height = 2.0, .fetch = 2000.0};

// A day without wind: whatever a test adds is all there is.
static lw_day bare_day(void)
{
    lw_day day = {.wind = {.height = 2.0, .period = 90.0},
                  .water = {15.0, 35.0},
                  .air = {15.0, 101325.0},
                  .sea = {.fetch = 2000.0}};
    strcpy(day.exposure, "off-sea");
    return day;
}

static lw_day forecast_day(double mean, double gust)
{
    lw_day day = bare_day();
    day.has_forecast = true;
    day.forecast = (lw_forecast){.mean = mean, .gust = gust, .height = 10.0};
    return day;
}

static bool settles(lw_day *day)
{
    const char *why;
    const bool settled = lw_day_settle(day, &why);
    return settled && why == NULL;
}

static void check_refused(lw_day day, const char *part_of_why)
{
    const lw_wind before = day.wind;
    const char *why = NULL;
    CHECK(!lw_day_settle(&day, &why));
    CHECK(why != NULL && strstr(why, part_of_why) != NULL);
    CHECK(memcmp(&before, &day.wind, sizeof before) == 0);
}

TEST_FUNCTION(medium_of_a_day_is_its_water_and_air)
{
    const lw_day day = bare_day();
    const lw_medium medium = lw_medium_of(&day);
    CHECK(medium.water_density == lw_water_density(day.water));
    CHECK(medium.water_viscosity == lw_water_viscosity(day.water));
    CHECK(medium.vapour_pressure == lw_vapour_pressure(day.water));
    CHECK(medium.air_density == lw_air_density(day.air));
    CHECK(medium.wind_height == 2.0 && medium.fetch == 2000.0);
}

static bool saltier_water_is_denser_and_stickier(const double *x)
{
    const lw_water fresh = {x[0], x[1]}, salt = {x[0], x[1] + 1.0};
    return lw_water_density(salt) > lw_water_density(fresh) &&
           lw_water_viscosity(salt) > lw_water_viscosity(fresh) &&
           lw_vapour_pressure(salt) < lw_vapour_pressure(fresh);
}

TEST_FUNCTION(water_grows_denser_and_stickier_with_salt)
{
    CHECK_HOLDS(saltier_water_is_denser_and_stickier, 1000, {0.0, 35.0}, {0.0, 40.0});
}

TEST_FUNCTION(sea_is_flat_without_fetch_or_wind)
{
    lw_medium pond = lake;
    pond.fetch = 0.0;
    CHECK(lw_medium_wave(&pond, 8.0).height == 0.0);
    CHECK(lw_medium_wave(&pond, 8.0).period > 0.0);
    CHECK(lw_medium_wave(&lake, 0.0).height == 0.0);
    CHECK(lw_medium_wave(&lake, 0.0).period > 0.0);
}

TEST_FUNCTION(sea_is_what_the_day_says_where_it_says)
{
    lw_medium said = lake;
    said.wave_height = 0.4;
    CHECK(lw_medium_wave(&said, 8.0).height == 0.4);
    CHECK(lw_medium_wave(&said, 8.0).period > lw_medium_wave(&lake, 8.0).period);
    said.wave_period = 3.0;
    CHECK(lw_medium_wave(&said, 8.0).period == 3.0);
    CHECK(lw_medium_wave(&said, 0.0).height == 0.4);
}

static bool more_wind_makes_more_sea(const double *x)
{
    const lw_wave less = lw_wave_of_fetch(x[0], x[1]), more = lw_wave_of_fetch(x[0] + 0.1, x[1]);
    const lw_wave longer = lw_wave_of_fetch(x[0], x[1] + 10.0);
    return more.height > less.height && more.period > less.period && longer.height >= less.height &&
           longer.period >= less.period;
}

TEST_FUNCTION(sea_grows_with_wind_and_fetch)
{
    CHECK_HOLDS(more_wind_makes_more_sea, 1000, {0.5, 25.0}, {50.0, 1e5});
}

static bool period_comes_back_from_height(const double *x)
{
    const lw_wave sea = lw_wave_of_fetch(x[0], x[1]);
    return fabs(lw_wave_period_of_height(x[0], sea.height) / sea.period - 1.0) < 2e-3;
}

TEST_FUNCTION(wave_period_comes_back_from_the_height)
{
    CHECK_HOLDS(period_comes_back_from_height, 1000, {0.5, 25.0}, {50.0, 1e6});
}

TEST_FUNCTION(wind_at_its_own_height_is_itself)
{
    CHECK_NEAR(lw_wind_at(7.0, 3.0, 3.0), 7.0, 1e-14);
    CHECK_NEAR(lw_wind_at(lw_wind_at(7.0, 2.0, 10.0), 10.0, 2.0), 7.0, 1e-14);
}

static bool gusts_fall_with_their_length(const double *x)
{
    static const char *const exposures[] = {"in-land", "off-land", "off-sea", "at-sea"};
    for (int i = 0; i < 4; i++) {
        if (lw_wind_puff_factor(exposures[i], x[0] + 1.0) >
            lw_wind_puff_factor(exposures[i], x[0])) {
            return false;
        }
        if (lw_wind_gust_factor(exposures[i], x[0] + 1.0) <
            lw_wind_gust_factor(exposures[i], x[0])) {
            return false;
        }
    }
    return true;
}

TEST_FUNCTION(gust_factors_fall_with_the_gust_and_rise_with_the_time)
{
    CHECK_HOLDS(gusts_fall_with_their_length, 1000, {0.0, 5000.0});
    CHECK(lw_wind_gust_factor("in-land", 3.0) == 1.0);
    CHECK(lw_wind_puff_factor("in-land", 600.0) == 1.0);
    CHECK(lw_wind_puff_factor("nonsense", 60.0) == lw_wind_puff_factor("off-sea", 60.0));
}

TEST_FUNCTION(wind_chill_is_the_air_where_it_does_not_apply)
{
    CHECK(lw_wind_chill(10.01, 10.0) == 10.01 && lw_wind_chill(10.0, 10.0) < 10.0);
    CHECK(lw_wind_chill(5.0, 4.79 / 3.6) == 5.0 && lw_wind_chill(-20.0, 4.81 / 3.6) < -20.0);
}

TEST_FUNCTION(cold_bands_rise_and_cover_every_temperature)
{
    double before = -1.0;
    for (double t = -3.0; t < 40.0; t += 0.1) {
        const lw_cold_band band = lw_cold_band_of(t);
        CHECK(t < band.below && band.able_to >= before && band.alive_to >= band.able_to);
        before = band.able_to;
    }
}

// 11 readings 5.0, 5.1 ... 6.0 out of order: 10 % point 5.1, average 5.5, 90 % point 5.9.
TEST_FUNCTION(readings_give_their_tenth_average_and_ninetieth)
{
    lw_day day = bare_day();
    day.reading_count = 11;
    for (int i = 0; i < 11; i++) day.readings[i] = 5.0 + 0.1 * (i * 7 % 11);
    CHECK(settles(&day));
    CHECK_NEAR(day.wind.lull, 5.1, 1e-12);
    CHECK_NEAR(day.wind.mean, 5.5, 1e-12);
    CHECK_NEAR(day.wind.puff, 5.9, 1e-12);
}

// 6 m/s at 10 m is 6 x 0.8513 = 5.108 at 2 m; a 45 s mean off the sea: 1.11 + 0.27 x ln(60/45) /
// ln(20) = 1.136; the lull as far below.
TEST_FUNCTION(forecast_without_gust_takes_the_exposure)
{
    lw_day day = forecast_day(6.0, 0.0);
    CHECK(settles(&day));
    CHECK_NEAR(day.wind.mean, 5.108, 1e-3);
    CHECK_NEAR(day.wind.puff / day.wind.mean, 1.0 + 0.11 + 0.27 * 0.28768 / 2.99573, 1e-4);
    CHECK_NEAR(day.wind.lull + day.wind.puff, 2.0 * day.wind.mean, 1e-12);
}

TEST_FUNCTION(forecast_gust_as_in_the_table_changes_nothing)
{
    lw_day plain = forecast_day(6.0, 0.0), gusty = forecast_day(6.0, 6.0 * 1.38);
    CHECK(settles(&plain) && settles(&gusty));
    CHECK_NEAR(gusty.wind.puff, plain.wind.puff, 1e-12);
}

TEST_FUNCTION(forecast_gust_twice_as_strong_doubles_the_swing)
{
    lw_day plain = forecast_day(6.0, 0.0), gusty = forecast_day(6.0, 6.0 * 1.76);
    CHECK(settles(&plain) && settles(&gusty));
    CHECK_NEAR(gusty.wind.puff - gusty.wind.mean, 2.0 * (plain.wind.puff - plain.wind.mean), 1e-12);
}

static bool forecast_settles_in_order(const double *x)
{
    lw_day day = forecast_day(x[0], x[0] * x[1]);
    day.wind.period = x[2];
    return settles(&day) && day.wind.lull > 0.0 && day.wind.lull <= day.wind.mean &&
           day.wind.mean <= day.wind.puff;
}

TEST_FUNCTION(forecast_always_settles_with_a_lull_above_zero)
{
    CHECK_HOLDS(forecast_settles_in_order, 1000, {0.1, 40.0}, {1.0, 4.0}, {1.0, 2000.0});
}

TEST_FUNCTION(wind_as_given_stays)
{
    lw_day day = bare_day();
    day.has_wind = true;
    day.wind.lull = 4.0, day.wind.mean = 5.0, day.wind.puff = 7.0;
    const lw_wind before = day.wind;
    CHECK(settles(&day));
    CHECK(memcmp(&before, &day.wind, sizeof before) == 0);
}

TEST_FUNCTION(day_without_wind_or_with_two_is_refused)
{
    check_refused(bare_day(), "no wind");
    lw_day twice = forecast_day(6.0, 0.0);
    twice.reading_count = 5;
    check_refused(twice, "twice");
}

TEST_FUNCTION(wind_out_of_order_is_refused)
{
    lw_day day = bare_day();
    day.has_wind = true;
    day.wind.lull = 6.0, day.wind.mean = 5.0, day.wind.puff = 7.0;
    check_refused(day, "rise");
    day.wind.lull = 0.0;
    check_refused(day, "missing");
    check_refused(forecast_day(6.0, 5.0), "gust");
}

TEST_FUNCTION(readings_that_are_no_winds_are_refused)
{
    lw_day day = bare_day();
    day.reading_count = 4;
    for (int i = 0; i < 4; i++) day.readings[i] = 5.0;
    day.readings[2] = NAN;
    check_refused(day, "reading");
    day.reading_count = 2;
    check_refused(day, "three");
    day.reading_count = 3;
    for (int i = 0; i < 3; i++) day.readings[i] = 0.0;
    check_refused(day, "no wind at all");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(medium_of_a_day_is_its_water_and_air),
        TEST(water_grows_denser_and_stickier_with_salt),
        TEST(sea_is_flat_without_fetch_or_wind),
        TEST(sea_is_what_the_day_says_where_it_says),
        TEST(sea_grows_with_wind_and_fetch),
        TEST(wave_period_comes_back_from_the_height),
        TEST(wind_at_its_own_height_is_itself),
        TEST(gust_factors_fall_with_the_gust_and_rise_with_the_time),
        TEST(wind_chill_is_the_air_where_it_does_not_apply),
        TEST(cold_bands_rise_and_cover_every_temperature),
        TEST(readings_give_their_tenth_average_and_ninetieth),
        TEST(forecast_without_gust_takes_the_exposure),
        TEST(forecast_gust_as_in_the_table_changes_nothing),
        TEST(forecast_gust_twice_as_strong_doubles_the_swing),
        TEST(forecast_always_settles_with_a_lull_above_zero),
        TEST(wind_as_given_stays),
        TEST(day_without_wind_or_with_two_is_refused),
        TEST(wind_out_of_order_is_refused),
        TEST(readings_that_are_no_winds_are_refused),
    };
    return RUN_TESTS(tests);
}
