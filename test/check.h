// check.h - cmocka, and the checks that tests of numbers need.
// SPDX-License-Identifier: MIT
//
// A failed check prints what was got, wanted and allowed, and ends its test.

#ifndef LW_TEST_CHECK_H
#define LW_TEST_CHECK_H

// clang-format off
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <cmocka.h>
// clang-format on

#include <math.h>

#include "test/random.h"

#define TEST(name)          cmocka_unit_test(name)
#define RUN_TESTS(tests)    cmocka_run_group_tests(tests, NULL, NULL)
#define TEST_FUNCTION(name) static void name(void **cmocka_state __attribute__((unused)))

#define CHECK(claim) assert_true(claim)
#define CHECK_NEAR(got, want, tolerance) \
    check_near((claimed){#got, __FILE__, __LINE__}, (got), (want), (tolerance))
#define CHECK_RELATIVE(got, want, tolerance) \
    check_near((claimed){#got, __FILE__, __LINE__}, (got), (want), (tolerance)*fabs(want))
#define CHECK_TEXT(got, want) assert_string_equal((got), (want))

// CHECK_HOLDS(claim, 1000, {0.0, 1.0}, {-5.0, 5.0}): the claim sees x[0] in 0..1, x[1] in -5..5.
#define CHECK_HOLDS(holds, runs, ...)                                 \
    CHECK(holds_for_all((holds), (runs), (const span[]){__VA_ARGS__}, \
                        sizeof((const span[]){__VA_ARGS__}) / sizeof(span)))

// What a check is of, and where it stands.
typedef struct claimed {
    const char *what, *file;
    int line;
} claimed;

static inline void check_near(claimed of, double got, double want, double allowed)
{
    if (fabs(got - want) <= allowed || (got == want)) return;  // false for NaN
    print_error("%s:%d  %s\n    got  %.17g\n    want %.17g\n    off  %.3g, allowed %.3g\n", of.file,
                of.line, of.what, got, want, fabs(got - want), allowed);
    _fail(of.file, of.line);
}

#endif
