// test_ascent.c - claims about the search for the greatest value, on textbook functions.
// SPDX-License-Identifier: MIT

#include "solve/ascent.h"
#include "test/check.h"

static double rosenbrock(const double *x)  // greatest at (1, 1): [rosenbrock-1960]
{
    const double a = x[1] - x[0] * x[0], b = 1.0 - x[0];
    return -100.0 * a * a - b * b;
}

// A bowl stretched along a diagonal, greatest at (0.3, 0.3, 0.3) and beyond a bound in the fourth.
static double valley(const double *x)
{
    double sum = 0.0;
    for (int i = 0; i < 3; i++) sum += (x[i] - 0.3) * (x[i] - 0.3);
    const double across = x[0] - 2.0 * x[1] + x[2];
    return -sum - 50.0 * across * across + 0.5 * x[3];
}

// Two limits that bind at once, with rounded edges: greatest near (0.5, 0.25).
static double cornered(const double *x)
{
    const double edge = 0.02;
    const double over_1 = x[0] + 2.0 * x[1] - 1.0, over_2 = x[0] - 2.0 * x[1];
    return x[0] + 0.1 * x[1] - 4.0 * edge * log1p(exp(over_1 / edge)) -
           4.0 * edge * log1p(exp(over_2 / edge));
}

// As far as x_0 = 0.5 there is a value, beyond it none.
static double torn(const double *x)
{
    return x[0] > 0.5 ? -1e9 : -(x[0] - 0.4) * (x[0] - 0.4) - x[1] * x[1];
}

typedef double function(const double *x);

typedef struct counted {
    function *value;
    size_t evaluations;
} counted;

static void evaluate(void *of, const lw_point *points, double *values, size_t n)
{
    counted *c = of;
    for (size_t i = 0; i < n; i++) values[i] = c->value(points[i].x);
    c->evaluations += n;
}

static lw_point climbed(function *value, size_t count, lw_point from, double bound)
{
    counted c = {.value = value};
    lw_ascent ascent = {.evaluate = evaluate,
                        .of = &c,
                        .count = count,
                        .apart = 1e-3,
                        .gain = 1e-12,
                        .rounds = 200};
    for (size_t i = 0; i < count; i++) ascent.low.x[i] = -bound, ascent.high.x[i] = bound;
    lw_ascent_from(&ascent, &from);
    return from;
}

TEST_FUNCTION(ascent_finds_the_end_of_rosenbrocks_valley)
{
    const lw_point top = climbed(rosenbrock, 2, (lw_point){{-1.2, 1.0}}, 3.0);
    CHECK_NEAR(top.x[0], 1.0, 1e-3);
    CHECK_NEAR(top.x[1], 1.0, 1e-3);
}

TEST_FUNCTION(ascent_follows_a_slanting_ridge_and_stops_at_a_bound)
{
    const lw_point top = climbed(valley, 4, (lw_point){{-0.9, 0.8, -0.5, -0.7}}, 1.0);
    for (int i = 0; i < 3; i++) CHECK_NEAR(top.x[i], 0.3, 1e-4);
    CHECK_NEAR(top.x[3], 1.0, 0.0);
}

TEST_FUNCTION(ascent_ends_where_two_limits_meet)
{
    const lw_point top = climbed(cornered, 2, (lw_point){{-0.8, 0.7}}, 1.0);
    CHECK_NEAR(top.x[0], 0.5, 0.05);
    CHECK_NEAR(top.x[1], 0.25, 0.03);
}

// From anywhere where there is a value, never to where there is none.
static bool stays_on_the_sheet(const double *x)
{
    const lw_point top = climbed(torn, 2, (lw_point){{0.5 - x[0], x[1]}}, 2.0);
    return fabs(top.x[0] - 0.4) < 1e-3 && fabs(top.x[1]) < 1e-3;
}

TEST_FUNCTION(ascent_does_not_step_where_there_is_no_value)
{
    CHECK_HOLDS(stays_on_the_sheet, 200, {0.01, 1.5}, {-1.5, 1.5});
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(ascent_finds_the_end_of_rosenbrocks_valley),
        TEST(ascent_follows_a_slanting_ridge_and_stops_at_a_bound),
        TEST(ascent_ends_where_two_limits_meet),
        TEST(ascent_does_not_step_where_there_is_no_value),
    };
    return RUN_TESTS(tests);
}
