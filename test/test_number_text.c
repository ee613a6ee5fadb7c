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

TEST_FUNCTION(a_time_over_an_hour_is_told_in_hours_and_minutes)
{
    static const struct {
        double seconds;
        const char *text;
    } times[] = {{59.4, "59 s"},           {60.0, "1 min 00 s"},   {3599.0, "59 min 59 s"},
                 {3600.0, "1 h 00 min"},   {3929.0, "1 h 05 min"}, {7170.0, "2 h 00 min"},
                 {-4000.0, "-1 h 07 min"}, {-0.4, "0 s"}};
    for (size_t i = 0; i < sizeof times / sizeof *times; i++) {
        char text[LW_CELL_LENGTH];
        lw_cell_time(text, times[i].seconds);
        CHECK_TEXT(text, times[i].text);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_time_over_an_hour_is_told_in_hours_and_minutes),
        TEST(a_number_told_is_to_the_bit_what_twelve_digits_print),
        TEST(a_number_told_that_ends_in_a_half_goes_to_even),
        TEST(what_is_no_number_stays_so_and_zero_has_no_sign),
    };
    return RUN_TESTS(tests);
}
