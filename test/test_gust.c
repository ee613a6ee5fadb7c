// test_gust.c - claims about wind in time.
// SPDX-License-Identifier: MIT

#include <stdlib.h>

#include "lullwise/elementary.h"
#include "lullwise/weather.h"
#include "medium/gust_lanes.h"
#include "medium/wind.h"
#include "test/check.h"

#define STEP    0.1
#define RECORD  100000  // steps: 10,000 s
#define RECORDS 64
#define COUNT   (RECORD * RECORDS)

static const lw_gust_kind gusty = {
    .lull = 4.0, .mean = 6.0, .puff = 9.0, .period = 60.0, .turbulence = 0.1, .height = 2.5};

static lw_gust_lanes lanes_of(uint64_t first)
{
    lw_gust_lanes lanes;
    for (int i = 0; i < LW_WIDTH; i++)
        lw_gust_lanes_put(&lanes, i, lw_seed_of(first + (uint64_t)i, LW_SEED_GUST));
    return lanes;
}

// What a record tells of: the wind, one of its parts, or its direction.
typedef lw_lanes (*part)(const lw_gust_lanes *gust, const lw_gust_filter *filter);
static lw_lanes wind(const lw_gust_lanes *gust, const lw_gust_filter *filter)
{
    return lw_gust_lanes_wind(gust, filter);
}
static lw_lanes direction(const lw_gust_lanes *gust, const lw_gust_filter *filter)
{
    return lw_gust_lanes_shift(gust, filter);
}
static lw_lanes swing(const lw_gust_lanes *gust, const lw_gust_filter *filter)
{
    (void)filter;
    return gust->puff.at;
}
static lw_lanes eddies(const lw_gust_lanes *gust, const lw_gust_filter *filter)
{
    lw_lanes sum = lw_all(0.0);
    for (int i = 0; i < LW_GUST_EDDIES; i++) sum += filter->eddy_weight[i] * gust->eddy[i];
    return sum;
}

// 64 records of 100,000 steps, one after the other.
static const double *records_of(part part_of, lw_gust_kind kind, double step, double apparent)
{
    static double records[COUNT];
    const lw_gust_filter filter = lw_gust_filter_of(kind, step);
    for (int first = 0; first < RECORDS; first += LW_WIDTH) {
        lw_gust_lanes lanes = lanes_of((uint64_t)first);
        for (int i = 0; i < RECORD; i++) {
            lw_gust_lanes_advance(&lanes, &filter, lw_all(apparent));
            const lw_lanes now = part_of(&lanes, &filter);
            for (int k = 0; k < LW_WIDTH; k++) records[(first + k) * RECORD + i] = now[k];
        }
    }
    return records;
}

static double mean_of(const double *x)
{
    double sum = 0.0;
    for (int i = 0; i < COUNT; i++) sum += x[i];
    return sum / COUNT;
}

static double variance_of(const double *x)
{
    const double mean = mean_of(x);
    double sum = 0.0;
    for (int i = 0; i < COUNT; i++) sum += (x[i] - mean) * (x[i] - mean);
    return sum / COUNT;
}

static double share_below(const double *x, double limit)
{
    int below = 0;
    for (int i = 0; i < COUNT; i++) below += x[i] < limit;
    return (double)below / COUNT;
}

TEST_FUNCTION(a_tenth_of_the_wind_lies_below_the_lull_half_below_the_mean_nine_below_the_puff)
{
    const double *x = records_of(wind, gusty, STEP, 10.0);
    CHECK_NEAR(share_below(x, gusty.lull), 0.1, 0.005);
    CHECK_NEAR(share_below(x, gusty.mean), 0.5, 0.01);
    CHECK_NEAR(share_below(x, gusty.puff), 0.9, 0.005);
}

// Two halves of normal distributions of unequal widths a above and b below:
// variance = (a^2 + b^2) / 2 - (a - b)^2 / (2 pi); the floor at half the lull cuts a little off.
TEST_FUNCTION(variance_of_gusts_comes_back_from_records_of_10000_s_within_3_percent)
{
    const double a = 3.0 / LW_NORMAL_90, b = 2.0 / LW_NORMAL_90;
    const double want = 0.5 * (a * a + b * b) - (a - b) * (a - b) / (2.0 * LW_PI);
    CHECK_RELATIVE(variance_of(records_of(wind, gusty, STEP, 10.0)), want, 0.03);

    lw_gust_kind even = gusty;
    even.puff = 8.0;
    CHECK_RELATIVE(variance_of(records_of(wind, even, STEP, 10.0)), b * b, 0.03);
}

TEST_FUNCTION(wind_swings_through_its_mean_once_in_a_period)
{
    const double *x = records_of(swing, gusty, STEP, 10.0);
    int rises = 0;
    for (int i = 1; i < COUNT; i++) rises += i % RECORD != 0 && x[i - 1] < 0.0 && x[i] >= 0.0;
    CHECK_RELATIVE(COUNT * STEP / rises, gusty.period, 0.03);
    CHECK_RELATIVE(variance_of(x), 1.0, 0.03);
    CHECK_NEAR(mean_of(x), 0.0, 0.03);
}

// n S(n) / sigma^2 of the eddies by the filters' constants.
static double filters_at(const lw_gust_filter *filter, double apparent, double n)
{
    double sum = 0.0;
    for (int i = 0; i < LW_GUST_EDDIES; i++) {
        const double T = filter->step / (filter->eddy_pass[i] * apparent);
        const double share = filter->eddy_weight[i] * filter->eddy_weight[i];
        sum += share * 4.0 * T * n / (1.0 + (2.0 * LW_PI * n * T) * (2.0 * LW_PI * n * T));
    }
    return sum;
}

static double kaimal_at(double U, double z, double n)
{
    const double u_star = 0.4 * U / lw_log(z / LW_ROUGHNESS), sigma = 2.184 * u_star;
    return n * lw_wind_spectrum(U, z, LW_ROUGHNESS, n) / (sigma * sigma);
}

TEST_FUNCTION(eddies_have_the_published_spectrum_within_7_percent)  // [kaimal-1972]
{
    const double U = 6.0, z = gusty.height;
    const lw_gust_filter filter = lw_gust_filter_of(gusty, STEP);
    for (double f = 0.003; f < 3.0; f *= 1.05) {
        const double n = f * U / z;
        CHECK_RELATIVE(filters_at(&filter, U, n), kaimal_at(U, z, n), 0.07);
    }
}

// Variance of the means over `steps` steps, which is what the spectrum's slow part leaves.
static double variance_of_means(const double *x, int steps)
{
    double sum = 0.0;
    for (int i = 0; i + steps <= COUNT; i += steps) {
        double mean = 0.0;
        for (int k = 0; k < steps; k++) mean += x[i + k] / steps;
        sum += mean * mean * steps;
    }
    return sum / COUNT;
}

// The same from the published spectrum: int S(n) (sin(pi n T) / (pi n T))^2 dn.
static double kaimal_variance_of_means(double U, double z, double T)
{
    const double step = 0.01;
    double sum = 0.0;
    for (double x = -14.0; x < 8.0; x += step) {
        const double n = exp(x), a = LW_PI * n * T;
        sum += kaimal_at(U, z, n) * sin(a) * sin(a) / (a * a) * step;
    }
    return sum;
}

TEST_FUNCTION(records_of_eddies_have_the_published_spectrum)  // [kaimal-1972]
{
    const double U = 6.0, z = gusty.height, step = 0.02;
    const double *x = records_of(eddies, gusty, step, U);
    CHECK_RELATIVE(variance_of(x), 1.0, 0.01);
    CHECK_RELATIVE(variance_of_means(x, 50), kaimal_variance_of_means(U, z, 1.0), 0.03);
    CHECK_RELATIVE(variance_of_means(x, 250), kaimal_variance_of_means(U, z, 5.0), 0.05);
    CHECK_RELATIVE(variance_of_means(x, 1000), kaimal_variance_of_means(U, z, 20.0), 0.1);
}

TEST_FUNCTION(a_boat_meets_eddies_as_fast_as_the_air_passes)
{
    const double still = variance_of_means(records_of(eddies, gusty, 0.02, 6.0), 100);
    const double fast = variance_of_means(records_of(eddies, gusty, 0.02, 12.0), 50);
    CHECK_RELATIVE(fast, still, 0.03);
}

TEST_FUNCTION(step_of_time_changes_no_variance)
{
    for (int i = 0; i < 3; i++) {
        const double step = i == 0 ? 0.005 : i == 1 ? 0.05 : 1.0;
        CHECK_RELATIVE(variance_of(records_of(eddies, gusty, step, 8.0)), 1.0, 0.03);
    }
    lw_gust_kind slow = gusty;
    slow.period = 1800.0;
    const lw_gust_filter fine = lw_gust_filter_of(slow, 0.002);
    CHECK(fine.noise[0][1] >= 0.0 && fine.noise[1][0] > 0.0);
    CHECK_RELATIVE(fine.noise[1][0], sqrt(4.0 * 0.25 * 2.0 * LW_PI / 1800.0 * 0.002), 1e-3);
}

TEST_FUNCTION(direction_swings_as_said)
{
    lw_gust_kind shifty = gusty;
    shifty.shift = 8.0 * LW_DEG;
    const double *x = records_of(direction, shifty, STEP, 10.0);
    CHECK_RELATIVE(sqrt(variance_of(x)), 8.0 * LW_DEG, 0.02);
    CHECK_NEAR(mean_of(x), 0.0, 0.3 * LW_DEG);
    CHECK(variance_of(records_of(direction, gusty, STEP, 10.0)) == 0.0);
}

TEST_FUNCTION(wind_without_lull_and_puff_is_steady)
{
    lw_gust_kind steady = gusty;
    steady.lull = steady.puff = steady.mean;
    const double *x = records_of(wind, steady, STEP, 10.0);
    for (int i = 0; i < COUNT; i++) CHECK(x[i] == steady.mean);
}

TEST_FUNCTION(wind_stays_above_half_the_lull)
{
    lw_gust_kind wild = gusty;
    wild.lull = 2.0, wild.puff = 14.0;
    const double *x = records_of(wind, wild, STEP, 10.0);
    CHECK(share_below(x, 0.5 * wild.lull) == 0.0);
    CHECK_NEAR(share_below(x, wild.lull), 0.1, 0.005);
}

TEST_FUNCTION(gusts_of_a_day_are_the_days)
{
    const lw_day day = {
        .wind = {
            .lull = 4.0, .mean = 6.0, .puff = 9.0, .height = 2.0, .period = 45.0, .shift = 0.1}};
    const lw_gust_kind kind = lw_gust_kind_of(&day, 2.5);
    CHECK(kind.lull == 4.0 && kind.mean == 6.0 && kind.puff == 9.0);
    CHECK(kind.period == 45.0 && kind.shift == 0.1 && kind.height == 2.5);
    CHECK_NEAR(kind.turbulence, 0.106, 0.001);
}

TEST_FUNCTION(eddies_are_half_of_the_variance_at_most)
{
    lw_gust_kind nearly_steady = gusty;
    nearly_steady.lull = 5.8, nearly_steady.puff = 6.2;
    const lw_gust_filter filter = lw_gust_filter_of(nearly_steady, STEP);
    CHECK_NEAR(filter.eddy_share * filter.eddy_share, 0.5, 1e-12);
    const lw_gust_filter wild = lw_gust_filter_of(gusty, STEP);
    const double eddies_alone = 0.1 * gusty.mean, all = 5.0 / (2.0 * LW_NORMAL_90);
    CHECK_RELATIVE(wild.eddy_share, eddies_alone / all, 1e-12);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_tenth_of_the_wind_lies_below_the_lull_half_below_the_mean_nine_below_the_puff),
        TEST(variance_of_gusts_comes_back_from_records_of_10000_s_within_3_percent),
        TEST(wind_swings_through_its_mean_once_in_a_period),
        TEST(eddies_have_the_published_spectrum_within_7_percent),
        TEST(records_of_eddies_have_the_published_spectrum),
        TEST(a_boat_meets_eddies_as_fast_as_the_air_passes),
        TEST(step_of_time_changes_no_variance),
        TEST(direction_swings_as_said),
        TEST(gusts_of_a_day_are_the_days),
        TEST(eddies_are_half_of_the_variance_at_most),
        TEST(wind_without_lull_and_puff_is_steady),
        TEST(wind_stays_above_half_the_lull),
    };
    return RUN_TESTS(tests);
}
