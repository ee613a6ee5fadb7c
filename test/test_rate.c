// test_rate.c - claims about a rate fitted to counts.
// SPDX-License-Identifier: MIT

#include "lullwise/chance.h"
#include "test/check.h"

#define POINTS 48
#define RUNS   400

static const lw_rate_prior wide = {-3.0, 3.0, 1.0, 0.5};

// A Poisson number by multiplying uniforms.
static double poisson(random_stream *stream, double mean)
{
    double product = random_between(stream, 0.0, 1.0), count = 0.0;
    for (; product > exp(-mean); count += 1.0) product *= random_between(stream, 0.0, 1.0);
    return count;
}

// Counts where the terms are, eight times each, of a known curve; each event brings others with it.
static void draw(random_stream *stream, const double term[LW_RATE_TERMS], double cluster,
                 lw_rate_count counts[POINTS])
{
    for (int i = 0; i < POINTS; i++) {
        const double rate = exp(term[i / 8]);
        counts[i] = (lw_rate_count){
            .x = i / 8, .events = cluster * poisson(stream, 40.0 * rate / cluster), .time = 40.0};
    }
}

// Terms as the prior has them: a level, a slope, and bends.
static void draw_terms(random_stream *stream, double term[LW_RATE_TERMS])
{
    term[0] = random_between(stream, -4.0, -2.0), term[1] = term[0];
    for (int k = 2; k < LW_RATE_TERMS; k++) {
        term[k] = 2.0 * term[k - 1] - term[k - 2] + random_between(stream, -0.8, 0.8);
    }
}

TEST_FUNCTION(rate_is_events_over_time_and_its_error_one_over_the_root_of_events)
{
    const lw_rate_prior open = {0.0, 1e4, 1e4, 1.0};
    const lw_rate_count counts[] = {{2.0, 3.0, 50.0, 0}, {2.0, 6.0, 70.0, 0}};
    const lw_rate_curve curve = lw_rate_curve_of(counts, 2, &open);
    CHECK_RELATIVE(lw_rate_at(&curve, 2.0), 9.0 / 120.0, 1e-7);
    CHECK_RELATIVE(lw_rate_log_error(&curve, 2.0), 1.0 / 3.0, 1e-6);
}

TEST_FUNCTION(rate_without_counts_is_what_was_held_before)
{
    const lw_rate_curve curve = lw_rate_curve_of(NULL, 0, &wide);
    CHECK_RELATIVE(lw_rate_at(&curve, 1.7), exp(-3.0), 1e-12);
    CHECK(lw_rate_log_error(&curve, 2.5) > 3.0);
}

TEST_FUNCTION(rate_between_two_terms_is_their_geometric_mean_and_beyond_them_the_nearer)
{
    random_stream stream = {3};
    double term[LW_RATE_TERMS];
    lw_rate_count counts[POINTS];
    draw_terms(&stream, term);
    draw(&stream, term, 1.0, counts);
    const lw_rate_curve curve = lw_rate_curve_of(counts, POINTS, &wide);
    CHECK_RELATIVE(lw_rate_at(&curve, 2.5), sqrt(lw_rate_at(&curve, 2.0) * lw_rate_at(&curve, 3.0)),
                   1e-12);
    CHECK(lw_rate_at(&curve, -1.0) == lw_rate_at(&curve, 0.0));
    CHECK(lw_rate_at(&curve, 9.0) == lw_rate_at(&curve, LW_RATE_TERMS - 1.0));
}

// The slope of the posterior is nothing at its top: summed over terms, and over terms times their
// number, the bends drop out, so that events expected and counted differ by the pull of the level.
TEST_FUNCTION(fit_expects_as_many_events_as_were_counted)
{
    random_stream stream = {5};
    for (int run = 0; run < RUNS; run++) {
        double term[LW_RATE_TERMS], sum[2] = {0}, pull[2] = {0};
        draw_terms(&stream, term);
        lw_rate_count counts[POINTS];
        draw(&stream, term, 1.0, counts);
        const lw_rate_curve curve = lw_rate_curve_of(counts, POINTS, &wide);
        for (int i = 0; i < POINTS; i++) {
            const double x = counts[i].x;
            const double off = counts[i].events - counts[i].time * lw_rate_at(&curve, x);
            sum[0] += off, sum[1] += off * x;
        }
        for (int k = 0; k < LW_RATE_TERMS; k++) {
            const double off = (curve.term[k] + 3.0) / (LW_RATE_TERMS * 9.0);
            pull[0] += off, pull[1] += off * k;
        }
        CHECK_NEAR(sum[0], pull[0], 1e-6);
        CHECK_NEAR(sum[1], pull[1], 1e-6);
    }
}

// How often the true rate lies within so many errors of the fitted one.
static double covered(double errors, double cluster)
{
    random_stream stream = {7};
    int inside = 0, looks = 0;
    for (int run = 0; run < RUNS; run++) {
        double term[LW_RATE_TERMS];
        lw_rate_count counts[POINTS];
        draw_terms(&stream, term);
        draw(&stream, term, cluster, counts);
        const lw_rate_curve curve = lw_rate_curve_of(counts, POINTS, &wide);
        for (int k = 0; k < LW_RATE_TERMS; k++, looks++) {
            const double off = log(lw_rate_at(&curve, k)) - term[k];
            inside += fabs(off) < errors * lw_rate_log_error(&curve, k);
        }
    }
    return (double)inside / looks;
}

// Of a normal error 68.3 and 95.4 %; four standard deviations of 400 runs are 9 and 4 %. The bends
// drawn are half as great as those held likely, so that errors are told rather too great.
TEST_FUNCTION(true_rate_lies_within_its_error_as_often_as_a_normal_error_has_it)
{
    CHECK_NEAR(covered(1.0, 1.0), 0.683, 0.12);
    CHECK_NEAR(covered(2.0, 1.0), 0.954, 0.04);
}

TEST_FUNCTION(events_that_come_three_at_a_time_make_the_error_greater_and_no_less_true)
{
    CHECK_NEAR(covered(1.0, 3.0), 0.683, 0.14);
    CHECK(covered(2.0, 3.0) > 0.90);
}

// Two curves that are the same, little counted of the one.
TEST_FUNCTION(neighbours_lend_each_other_what_they_know)
{
    const lw_rate_prior near = {-3.0, 3.0, 1.0, 0.1};
    const lw_rate_count counts[] = {{2.0, 60.0, 1000.0, 0}, {2.0, 0.0, 5.0, 1}};
    static lw_rate_family family;
    lw_rate_family_of(&family, 2, counts, 2, &near);
    const lw_rate_curve known = lw_rate_family_curve(&family, 0);
    const lw_rate_curve lent = lw_rate_family_curve(&family, 1);
    const lw_rate_curve alone = lw_rate_curve_of(&(lw_rate_count){2.0, 0.0, 5.0, 0}, 1, &near);
    CHECK_RELATIVE(lw_rate_at(&lent, 2.0), 0.06, 0.1);
    CHECK(lw_rate_log_error(&lent, 2.0) < 0.2 && lw_rate_log_error(&alone, 2.0) > 1.0);

    // of the difference: near a step of the prior, far less than of either level in a wide prior
    const double apart = lw_rate_family_covariance(&family, 0, 2.0, 0, 2.0) +
                         lw_rate_family_covariance(&family, 1, 2.0, 1, 2.0) -
                         2.0 * lw_rate_family_covariance(&family, 0, 2.0, 1, 2.0);
    CHECK_NEAR(sqrt(apart), 0.1, 0.02);
    CHECK_RELATIVE(sqrt(lw_rate_family_covariance(&family, 0, 2.0, 0, 2.0)),
                   lw_rate_log_error(&known, 2.0), 1e-12);
}

TEST_FUNCTION(rate_stays_finite_for_counts_that_no_curve_fits)
{
    random_stream stream = {9};
    for (int run = 0; run < 10 * RUNS; run++) {
        lw_rate_count counts[POINTS];
        for (int i = 0; i < POINTS; i++) {
            const bool some = random_between(&stream, 0.0, 1.0) < 0.1;
            counts[i] = (lw_rate_count){random_between(&stream, -2.0, 7.0),
                                        some ? random_between(&stream, 0.0, 1e3) : 0.0,
                                        random_between(&stream, 0.0, 1e3), 0};
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
        TEST(rate_between_two_terms_is_their_geometric_mean_and_beyond_them_the_nearer),
        TEST(fit_expects_as_many_events_as_were_counted),
        TEST(true_rate_lies_within_its_error_as_often_as_a_normal_error_has_it),
        TEST(events_that_come_three_at_a_time_make_the_error_greater_and_no_less_true),
        TEST(neighbours_lend_each_other_what_they_know),
        TEST(rate_stays_finite_for_counts_that_no_curve_fits),
    };
    return RUN_TESTS(tests);
}
