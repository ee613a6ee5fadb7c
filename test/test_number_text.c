// test_number_text.c - claims about numbers as they are told.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdio.h>
#include <stdlib.h>

#include "answer/words/number_text.h"
#include "test/check.h"
#include "test/random.h"

static double printed(double x)
{
    char text[64];
    snprintf(text, sizeof text, "%.12g", x);
    return strtod(text, NULL);
}

static void check_told(double x) { CHECK(lw_told(x) == printed(x)); }

// printf rounds the exact binary number; where twelve digits end in a half it goes to even.
TEST_FUNCTION(a_number_told_is_to_the_bit_what_twelve_digits_print)
{
    random_stream stream = {5};
    for (int i = 0; i < 300000; i++) {
        const double size = pow(10.0, random_between(&stream, -10.0, 21.9));
        check_told(i % 2 ? size : -size);
    }
}

TEST_FUNCTION(a_number_told_that_ends_in_a_half_goes_to_even)
{
    for (int i = 0; i < 2000; i++) {
        const double half = 100000000000.5 + i;
        check_told(half);
        check_told(half / 1024.0);
        check_told(nextafter(half, 0.0));
        check_told(nextafter(half, 1e12));
    }
}

TEST_FUNCTION(what_is_no_number_stays_so_and_zero_has_no_sign)
{
    CHECK(isnan(lw_told(NAN)) && isinf(lw_told(INFINITY)) && lw_told(-INFINITY) < 0.0);
    CHECK(lw_told(-0.0) == 0.0 && !signbit(lw_told(-0.0)));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_number_told_is_to_the_bit_what_twelve_digits_print),
        TEST(a_number_told_that_ends_in_a_half_goes_to_even),
        TEST(what_is_no_number_stays_so_and_zero_has_no_sign),
    };
    return RUN_TESTS(tests);
}
