// test_random.c - claims about the tools that the other tests rest on.
// SPDX-License-Identifier: MIT

#include "test/check.h"

TEST_FUNCTION(random_stream_gives_the_published_first_value)
{
    random_stream stream = {0};
    CHECK(random_bits(&stream) == UINT64_C(0xe220a8397b1dcdaf));  // [splitmix64] from seed 0
}

static bool lies_in_its_span(const double *x) { return x[0] >= -1.0 && x[0] <= 2.0 && x[1] == 3.0; }

TEST_FUNCTION(random_doubles_lie_in_their_span)
{
    CHECK_HOLDS(lies_in_its_span, 10000, {-1.0, 2.0}, {3.0, 3.0});
}

static bool is_below_a_half(const double *x) { return x[0] < 0.5; }

TEST_FUNCTION(a_false_claim_is_found_out)
{
    const span unit = {0.0, 1.0};
    CHECK(!holds_for_all(is_below_a_half, 100, &unit, 1));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(random_stream_gives_the_published_first_value),
        TEST(random_doubles_lie_in_their_span),
        TEST(a_false_claim_is_found_out),
    };
    return RUN_TESTS(tests);
}
