// test_rough.c - claims about sine, cosine and exponential to eight digits.
// SPDX-License-Identifier: MIT

#include "lullwise/elementary.h"
#include "solve/rough.h"
#include "test/check.h"

static bool sine_and_cosine_are_near(const double *x)
{
    lw_lanes s, c;
    lw_rough_sincos(lw_all(x[0]), &s, &c);
    return fabs(s[0] - lw_sin(x[0])) < 2e-8 && fabs(c[0] - lw_cos(x[0])) < 2e-8;
}

TEST_FUNCTION(sine_and_cosine_are_within_2e_8)
{
    CHECK_HOLDS(sine_and_cosine_are_near, 100000, {-10.0, 10.0});
    CHECK_HOLDS(sine_and_cosine_are_near, 100000, {-1e6, 1e6});
}

static bool decay_is_near(const double *x)
{
    const double got = lw_rough_decay(lw_all(x[0]))[0];
    return fabs(got - lw_exp(-x[0])) < 1.2e-7 && got > 0.0;
}

TEST_FUNCTION(decay_is_within_1_2e_7_and_never_negative)
{
    CHECK(lw_rough_decay(lw_all(0.0))[0] == 1.0);
    CHECK_HOLDS(decay_is_near, 100000, {0.0, 1.0});
    CHECK_HOLDS(decay_is_near, 100000, {0.0, 20.0});
    CHECK_HOLDS(decay_is_near, 1000, {20.0, 1e9});
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(sine_and_cosine_are_within_2e_8),
        TEST(decay_is_within_1_2e_7_and_never_negative),
    };
    return RUN_TESTS(tests);
}
