// test_rough.c - claims about sine, cosine and exponential to six digits.
// SPDX-License-Identifier: MIT

#include "lullwise/elementary.h"
#include "solve/rough.h"
#include "test/check.h"

static bool sine_and_cosine_are_near(const double *x)
{
    lw_lanes s, c;
    lw_rough_of_turns(lw_all(x[0]), &s, &c);
    const double angle = 2.0 * LW_PI * (x[0] - floor(x[0]));
    return fabs(s[0] - lw_sin(angle)) < 2e-6 && fabs(c[0] - lw_cos(angle)) < 2e-6;
}

TEST_FUNCTION(sine_and_cosine_are_within_2e_6)
{
    CHECK_HOLDS(sine_and_cosine_are_near, 100000, {-2.0, 2.0});
    CHECK_HOLDS(sine_and_cosine_are_near, 100000, {-1e6, 1e6});
}

static bool decay_is_near(const double *x)
{
    const double got = lw_rough_decay(lw_all(x[0]))[0];
    return fabs(got - lw_exp(-x[0])) < 4e-6 && got > 0.0;
}

TEST_FUNCTION(decay_is_within_4e_6_and_never_negative)
{
    CHECK(lw_rough_decay(lw_all(0.0))[0] == 1.0);
    CHECK_HOLDS(decay_is_near, 100000, {0.0, 1.0});
    CHECK_HOLDS(decay_is_near, 100000, {0.0, 20.0});
    CHECK_HOLDS(decay_is_near, 1000, {20.0, 1e9});
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(sine_and_cosine_are_within_2e_6),
        TEST(decay_is_within_4e_6_and_never_negative),
    };
    return RUN_TESTS(tests);
}
