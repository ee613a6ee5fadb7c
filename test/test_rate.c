// test_rate.c - claims about a rate fitted to counts.
// SPDX-License-Identifier: MIT

#include "lullwise/rate.h"
#include "test/check.h"

#define POINTS 48
#define RUNS   400

static const lw_rate_prior wide = {.mean = {-3.0, 0.0, 0.0}, .deviation = {3.0, 3.0, 3.0}};

// A Poisson number by multiplying uniforms.
static double poisson(random_stream *stream, double mean)
{
    double product = random_between(stream, 0.0, 1.0), count = 0.0;
    for (; product > exp(-mean); count += 1.0) product *= random_between(stream, 0.0, 1.0);
    return count;
}

// Counts at six values of x, eight times each, of a known curve; each event brings others with it.
static void draw(random_stream *stream, const double term[3], double cluster,
                 lw_rate_count counts[POINTS])
{
    for (int i = 0; i < POINTS; i++) {
        const double x = -1.2 + 0.6 * (i / 8);
        const double rate = exp(term[0] + term[1] * x + term[2] * x * x);
        counts[i] = (lw_rate_count){x, cluster * poisson(stream, 40.0 * rate / cluster), 40.0};
    }
}

TEST_FUNCTION(rate_is_events_over_time_and_its_error_one_over_the_root_of_events)
{
    const lw_rate_prior open = {.deviation = {1e4, 1e-4, 1e-4}};
    const lw_rate_count counts[] = {{0.0, 3.0, 50.0}, {0.0, 6.0, 70.0}};
    const lw_rate_curve curve = lw_rate_curve_of(counts, 2, &open);
    CHECK_RELATIVE(lw_rate_at(&curve, 0.0), 9.0 / 120.0, 1e-7);
    CHECK_RELATIVE(lw_rate_log_error(&curve, 0.0), 1.0 / 3.0, 1e-7);
}

TEST_FUNCTION(rate_without_counts_is_what_was_held_before)
{
    const lw_rate_curve curve = lw_rate_curve_of(NULL, 0, &wide);
    CHECK_RELATIVE(lw_rate_at(&curve, 1.7), exp(-3.0), 1e-12);
    CHECK_RELATIVE(lw_rate_log_error(&curve, 0.0), 3.0, 1e-12);
}

// As many events are expected as were counted, and as far to either side, but for the prior's pull.
TEST_FUNCTION(fit_expects_as_many_events_as_were_counted)
{
    random_stream stream = {5};
    for (int run = 0; run < RUNS; run++) {
        double term[3], sum[3] = {0};
        for (int k = 0; k < 3; k++) term[k] = random_between(&stream, k ? -1.0 : -6.0, 1.0);
        lw_rate_count counts[POINTS];
        draw(&stream, term, 1.0, counts);
        const lw_rate_curve curve = lw_rate_curve_of(counts, POINTS, &wide);
        for (int i = 0; i < POINTS; i++) {
            const double x = counts[i].x;
            const double off = counts[i].events - counts[i].time * lw_rate_at(&curve, x);
            sum[0] += off, sum[1] += off * x, sum[2] += off * x * x;
        }
        for (int k = 0; k < 3; k++) {
            const double pull = (curve.term[k] - wide.mean[k]) / 9.0;
            CHECK_NEAR(sum[k], pull, 1e-6);
        }
    }
}

// How often the true rate lies within so many errors of the fitted one.
static double covered(double errors, double cluster)
{
    random_stream stream = {7};
    const double term[3] = {-3.5, 0.8, 0.3};
    int inside = 0, looks = 0;
    for (int run = 0; run < RUNS; run++) {
        lw_rate_count counts[POINTS];
        draw(&stream, term, cluster, counts);
        const lw_rate_curve curve = lw_rate_curve_of(counts, POINTS, &wide);
        for (double x = -1.0; x < 1.9; x += 1.0, looks++) {
            const double off =
                log(lw_rate_at(&curve, x)) - (term[0] + term[1] * x + term[2] * x * x);
            inside += fabs(off) < errors * lw_rate_log_error(&curve, x);
        }
    }
    return (double)inside / looks;
}

// Of a normal error 68.3 and 95.4 %; four standard deviations of 400 runs are 9 and 4 %.
TEST_FUNCTION(true_rate_lies_within_its_error_as_often_as_a_normal_error_has_it)
{
    CHECK_NEAR(covered(1.0, 1.0), 0.683, 0.09);
    CHECK_NEAR(covered(2.0, 1.0), 0.954, 0.04);
}

TEST_FUNCTION(events_that_come_three_at_a_time_make_the_error_greater_and_no_less_true)
{
    CHECK_NEAR(covered(1.0, 3.0), 0.683, 0.12);
    CHECK(covered(2.0, 3.0) > 0.90);
}

TEST_FUNCTION(rate_stays_finite_for_counts_that_no_curve_fits)
{
    random_stream stream = {9};
    for (int run = 0; run < 10 * RUNS; run++) {
        lw_rate_count counts[POINTS];
        for (int i = 0; i < POINTS; i++) {
            const bool some = random_between(&stream, 0.0, 1.0) < 0.1;
            counts[i] = (lw_rate_count){random_between(&stream, -2.0, 2.0),
                                        some ? random_between(&stream, 0.0, 1e3) : 0.0,
                                        random_between(&stream, 0.0, 1e3)};
        }
        const lw_rate_curve curve = lw_rate_curve_of(counts, POINTS, &wide);
        CHECK(isfinite(lw_rate_at(&curve, 2.0)) && lw_rate_log_error(&curve, 2.0) > 0.0);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(rate_is_events_over_time_and_its_error_one_over_the_root_of_events),
        TEST(rate_without_counts_is_what_was_held_before),
        TEST(fit_expects_as_many_events_as_were_counted),
        TEST(true_rate_lies_within_its_error_as_often_as_a_normal_error_has_it),
        TEST(events_that_come_three_at_a_time_make_the_error_greater_and_no_less_true),
        TEST(rate_stays_finite_for_counts_that_no_curve_fits),
    };
    return RUN_TESTS(tests);
}
