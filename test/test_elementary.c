// test_elementary.c - the elementary functions against mpfr, at their edges, and as laws.
// SPDX-License-Identifier: MIT

#include <float.h>
#include <mpfr.h>
#include <string.h>

#include "lullwise/elementary.h"
#include "solve/elementary.h"
#include "test/check.h"

#if defined(__SANITIZE_ADDRESS__)
#define CASES 10000  // a range; the sanitizers look for faults, not for the last bit
#else
#define CASES 50000
#endif

#define HALF_PI 1.57079632679489661923

typedef double (*one)(double x);
typedef int (*mpfr_one)(mpfr_t, const mpfr_t, mpfr_rnd_t);

typedef enum spread_kind {
    EVEN,      // evenly between low and high
    RATIO,     // evenly in the logarithm, either sign when `both`
    BOTH,      // the same, of either sign
    QUARTERS,  // the double nearest to a multiple of pi/2, up to `high` of them
} spread_kind;

typedef struct one_range {
    const char *name;
    one function;
    mpfr_one reference;
    double bound;  // [ulp]
    double low, high;
    spread_kind spread;
} one_range;

#define ROW(name, bound, low, high, spread)                     \
    {                                                           \
#name, lw_##name, mpfr_##name, bound, low, high, spread \
    }

// clang-format off
static const one_range ranges[] = {
    ROW(sin,   0.80, -0.8,     0.8,    EVEN),  ROW(sin,   0.80, -1e5,    1e5,   EVEN),
    ROW(sin,   0.80,  1e-300,  1e6,    BOTH),  ROW(sin,   0.80,  0.0,    60000, QUARTERS),
    ROW(cos,   0.80, -0.8,     0.8,    EVEN),  ROW(cos,   0.80, -1e5,    1e5,   EVEN),
    ROW(cos,   0.80,  1e-300,  1e6,    BOTH),  ROW(cos,   0.80,  0.0,    60000, QUARTERS),
    ROW(tan,   0.90, -1.6,     1.6,    EVEN),  ROW(tan,   0.90, -1e5,    1e5,   EVEN),
    ROW(tan,   0.90,  1e-300,  1e6,    BOTH),  ROW(tan,   0.90,  0.0,    60000, QUARTERS),
    ROW(asin,  0.90, -1.0,     1.0,    EVEN),  ROW(asin,  0.90,  0.9,    1.0,   EVEN),
    ROW(asin,  0.90,  0.4,     0.6,    EVEN),  ROW(asin,  0.90,  1e-300, 1.0,   BOTH),
    ROW(acos,  0.90, -1.0,     1.0,    EVEN),  ROW(acos,  0.90,  0.9,    1.0,   EVEN),
    ROW(acos,  0.90, -1.0,    -0.4,    EVEN),  ROW(acos,  0.90,  1e-300, 1.0,   BOTH),
    ROW(atan,  0.90, -1.0,     1.0,    EVEN),  ROW(atan,  0.90, -10.0,   10.0,  EVEN),
    ROW(atan,  0.90,  0.1,     10.0,   BOTH),  ROW(atan,  0.90,  1e-300, 1e300, BOTH),
    ROW(exp,   0.70, -1.0,     1.0,    EVEN),  ROW(exp,   0.70, -50.0,   50.0,  EVEN),
    ROW(exp,   0.70, -708.0,   709.7,  EVEN),  ROW(exp,   0.70,  1e-300, 1.0,   BOTH),
    ROW(exp,   1.10, -745.0,  -708.0,  EVEN),
    ROW(log,   0.90,  0.5,     2.0,    EVEN),  ROW(log,   0.90,  0.9,    1.1,   EVEN),
    ROW(log,   0.90,  1.0,     1e8,    RATIO), ROW(log,   0.90,  5e-324, 1e308, RATIO),
    ROW(log10, 0.80,  0.5,     2.0,    EVEN),  ROW(log10, 0.80,  0.9,    1.1,   EVEN),
    ROW(log10, 0.80,  1.0,     1e8,    RATIO), ROW(log10, 0.80,  5e-324, 1e308, RATIO),
    ROW(cbrt,  0.70, -2.0,     2.0,    EVEN),  ROW(cbrt,  0.70,  1e-3,   1e3,   BOTH),
    ROW(cbrt,  0.70,  1e-300,  1e300,  BOTH),  ROW(cbrt,  0.70,  5e-324, 1e-308, BOTH),
    ROW(tanh,  0.90, -1.0,     1.0,    EVEN),  ROW(tanh,  0.90, -25.0,   25.0,  EVEN),
    ROW(tanh,  0.90,  0.3,     3.0,    BOTH),  ROW(tanh,  0.90,  1e-300, 1.0,   BOTH),
    ROW(sinh,  0.90, -1.5,     1.5,    EVEN),  ROW(sinh,  0.90, -25.0,   25.0,  EVEN),
    ROW(sinh,  0.90, -710.4,   710.4,  EVEN),  ROW(sinh,  0.90,  1e-300, 1.0,   BOTH),
    ROW(cosh,  0.90, -1.5,     1.5,    EVEN),  ROW(cosh,  0.90, -25.0,   25.0,  EVEN),
    ROW(cosh,  0.90, -710.4,   710.4,  EVEN),  ROW(cosh,  0.90,  1e-300, 1.0,   BOTH),
};
// clang-format on

// One unit in the last place of a double near x.
static double unit_at(double x)
{
    const double size = fabs(x);
    return size < DBL_MIN ? 0x1p-1074 : ldexp(1.0, ilogb(size) - 52);
}

static double units_off(double got, const mpfr_t want, mpfr_t scratch)
{
    mpfr_sub_d(scratch, want, got, MPFR_RNDN);
    return fabs(mpfr_get_d(scratch, MPFR_RNDN)) / unit_at(mpfr_get_d(want, MPFR_RNDZ));
}

static double argument(random_stream *stream, double low, double high, spread_kind spread)
{
    if (spread == EVEN) return random_between(stream, low, high);
    if (spread == QUARTERS) return round(random_between(stream, low, high)) * 1.5707963267948966;
    const double size = exp(random_between(stream, log(low), log(high)));
    return spread == BOTH && (random_bits(stream) & 1) ? -size : size;
}

// The worst error over a range, in units in the last place; not a number counts as endless.
static double worst_over(const one_range *range, double *at)
{
    mpfr_t x, want, scratch;
    mpfr_inits2(160, x, want, scratch, (mpfr_ptr)0);
    random_stream stream = {7};
    double worst = 0.0;
    for (int i = 0; i < CASES * soak_times(); i++) {
        const double a = argument(&stream, range->low, range->high, range->spread);
        mpfr_set_d(x, a, MPFR_RNDN);
        range->reference(want, x, MPFR_RNDN);
        const double off = units_off(range->function(a), want, scratch);
        if (off <= worst) continue;
        worst = off == off ? off : (double)INFINITY;
        *at = a;
    }
    mpfr_clears(x, want, scratch, (mpfr_ptr)0);
    return worst;
}

TEST_FUNCTION(functions_of_one_number_keep_their_bounds)
{
    int broken = 0;
    for (size_t i = 0; i < sizeof ranges / sizeof ranges[0]; i++) {
        const one_range *r = &ranges[i];
        double at = 0.0;
        const double worst = worst_over(r, &at);
        print_message("%-6s %9.3g .. %-9.3g %.3f ulp, bound %.2f, at %.17g\n", r->name, r->low,
                      r->high, worst, r->bound, at);
        broken += worst > r->bound;
    }
    CHECK(broken == 0);
}

typedef struct two_range {
    const char *name;
    double (*function)(double, double);
    int (*reference)(mpfr_t, const mpfr_t, const mpfr_t, mpfr_rnd_t);
    double bound;
    double low, high;  // of the first argument
    spread_kind spread;
    double low_2, high_2;
    spread_kind spread_2;
} two_range;

// clang-format off
static const two_range two_ranges[] = {
    {"atan2", lw_atan2, mpfr_atan2, 0.80, -1.0,   1.0,   EVEN,  -1.0,   1.0,   EVEN},
    {"atan2", lw_atan2, mpfr_atan2, 0.80, -0.5,   0.5,   EVEN,   5.0,   15.0,  EVEN},
    {"atan2", lw_atan2, mpfr_atan2, 0.80,  1e-3,  1e3,   BOTH,   1e-3,  1e3,   BOTH},
    {"atan2", lw_atan2, mpfr_atan2, 0.80,  1e-200, 1e200, BOTH,  1e-100, 1e100, BOTH},
    {"pow",   lw_pow,   mpfr_pow,   0.75,  0.001, 100.0, RATIO, -4.0,   4.0,   EVEN},
    {"pow",   lw_pow,   mpfr_pow,   0.75,  0.9,   1.1,   EVEN,  -5000,  5000,  EVEN},
    {"pow",   lw_pow,   mpfr_pow,   0.75,  0.99999, 1.00001, EVEN, -6e7, 6e7,  EVEN},
    {"pow",   lw_pow,   mpfr_pow,   0.75,  5e-324, 1e308, RATIO, -0.99,  0.99, EVEN},
    {"pow",   lw_pow,   mpfr_pow,   0.75,  1e-100, 1e100, RATIO, -3.0,   3.0,  EVEN},
};
// clang-format on

static double worst_over_two(const two_range *range, double at[2])
{
    mpfr_t x, y, want, scratch;
    mpfr_inits2(160, x, y, want, scratch, (mpfr_ptr)0);
    random_stream stream = {11};
    double worst = 0.0;
    for (int i = 0; i < CASES * soak_times(); i++) {
        const double a = argument(&stream, range->low, range->high, range->spread);
        const double b = argument(&stream, range->low_2, range->high_2, range->spread_2);
        mpfr_set_d(x, a, MPFR_RNDN);
        mpfr_set_d(y, b, MPFR_RNDN);
        range->reference(want, x, y, MPFR_RNDN);
        if (!(fabs(mpfr_get_d(want, MPFR_RNDN)) >= DBL_MIN) ||
            !isfinite(mpfr_get_d(want, MPFR_RNDN)))
            continue;
        const double off = units_off(range->function(a, b), want, scratch);
        if (off <= worst) continue;
        worst = off == off ? off : (double)INFINITY;
        at[0] = a;
        at[1] = b;
    }
    mpfr_clears(x, y, want, scratch, (mpfr_ptr)0);
    return worst;
}

TEST_FUNCTION(functions_of_two_numbers_keep_their_bounds)
{
    int broken = 0;
    for (size_t i = 0; i < sizeof two_ranges / sizeof two_ranges[0]; i++) {
        const two_range *r = &two_ranges[i];
        double at[2] = {0.0, 0.0};
        const double worst = worst_over_two(r, at);
        print_message("%-6s %9.3g .. %-9.3g %.3f ulp, bound %.2f, at %.17g, %.17g\n", r->name,
                      r->low, r->high, worst, r->bound, at[0], at[1]);
        broken += worst > r->bound;
    }
    CHECK(broken == 0);
}

// --- edges

static bool is_same(double a, double b)
{
    return (isnan(a) && isnan(b)) || (a == b && !signbit(a) == !signbit(b));
}

static void check_same(const char *what, double x, double y, double got, double want)
{
    if (is_same(got, want)) return;
    print_error("%s(%g, %g) is %.17g, wanted %.17g\n", what, x, y, got, want);
    fail();
}

// clang-format off
static const struct {
    const char *name;
    one function;
    double x, want;
} edges[] = {
    {"sin", lw_sin, 0.0, 0.0},   {"sin", lw_sin, -0.0, -0.0},  {"sin", lw_sin, INFINITY, NAN},
    {"sin", lw_sin, NAN, NAN},   {"sin", lw_sin, 1e7, 0.0},    {"sin", lw_sin, 5e-324, 5e-324},
    {"cos", lw_cos, 0.0, 1.0},   {"cos", lw_cos, -0.0, 1.0},   {"cos", lw_cos, -INFINITY, NAN},
    {"cos", lw_cos, NAN, NAN},   {"cos", lw_cos, 1e300, 1.0},
    {"tan", lw_tan, 0.0, 0.0},   {"tan", lw_tan, -0.0, -0.0},  {"tan", lw_tan, INFINITY, NAN},
    {"tan", lw_tan, NAN, NAN},   {"tan", lw_tan, -5e-324, -5e-324},
    {"asin", lw_asin, 0.0, 0.0}, {"asin", lw_asin, -0.0, -0.0}, {"asin", lw_asin, 1.0, HALF_PI},
    {"asin", lw_asin, -1.0, -HALF_PI}, {"asin", lw_asin, 1.0000000000000002, NAN},
    {"asin", lw_asin, -INFINITY, NAN}, {"asin", lw_asin, NAN, NAN},
    {"acos", lw_acos, 1.0, 0.0}, {"acos", lw_acos, -1.0, 2.0 * HALF_PI},
    {"acos", lw_acos, 0.0, HALF_PI}, {"acos", lw_acos, -1.0000000000000002, NAN},
    {"acos", lw_acos, INFINITY, NAN}, {"acos", lw_acos, NAN, NAN},
    {"atan", lw_atan, 0.0, 0.0}, {"atan", lw_atan, -0.0, -0.0}, {"atan", lw_atan, 1.0, HALF_PI / 2},
    {"atan", lw_atan, INFINITY, HALF_PI}, {"atan", lw_atan, -INFINITY, -HALF_PI},
    {"atan", lw_atan, NAN, NAN}, {"atan", lw_atan, -5e-324, -5e-324},
    {"exp", lw_exp, 0.0, 1.0},   {"exp", lw_exp, -0.0, 1.0},   {"exp", lw_exp, INFINITY, INFINITY},
    {"exp", lw_exp, -INFINITY, 0.0}, {"exp", lw_exp, NAN, NAN}, {"exp", lw_exp, 709.79, INFINITY},
    {"exp", lw_exp, -746.0, 0.0}, {"exp", lw_exp, -745.13, 5e-324},
    {"exp", lw_exp, 1e300, INFINITY},
    {"log", lw_log, 1.0, 0.0},   {"log", lw_log, 0.0, -INFINITY}, {"log", lw_log, -0.0, -INFINITY},
    {"log", lw_log, -1.0, NAN},  {"log", lw_log, INFINITY, INFINITY}, {"log", lw_log, NAN, NAN},
    {"log", lw_log, -INFINITY, NAN},
    {"log10", lw_log10, 1.0, 0.0}, {"log10", lw_log10, 1000.0, 3.0},
    {"log10", lw_log10, 1e-7, -7.0},
    {"log10", lw_log10, 1e22, 22.0}, {"log10", lw_log10, 0.0, -INFINITY},
    {"log10", lw_log10, -1.0, NAN}, {"log10", lw_log10, INFINITY, INFINITY},
    {"log10", lw_log10, NAN, NAN},
    {"cbrt", lw_cbrt, 0.0, 0.0}, {"cbrt", lw_cbrt, -0.0, -0.0}, {"cbrt", lw_cbrt, 27.0, 3.0},
    {"cbrt", lw_cbrt, -8.0, -2.0}, {"cbrt", lw_cbrt, INFINITY, INFINITY},
    {"cbrt", lw_cbrt, -INFINITY, -INFINITY}, {"cbrt", lw_cbrt, NAN, NAN},
    {"cbrt", lw_cbrt, 0x1p-1074, 0x1p-358},
    {"tanh", lw_tanh, 0.0, 0.0}, {"tanh", lw_tanh, -0.0, -0.0}, {"tanh", lw_tanh, INFINITY, 1.0},
    {"tanh", lw_tanh, -INFINITY, -1.0}, {"tanh", lw_tanh, NAN, NAN}, {"tanh", lw_tanh, 25.0, 1.0},
    {"sinh", lw_sinh, 0.0, 0.0}, {"sinh", lw_sinh, -0.0, -0.0},
    {"sinh", lw_sinh, INFINITY, INFINITY},
    {"sinh", lw_sinh, -INFINITY, -INFINITY}, {"sinh", lw_sinh, NAN, NAN},
    {"sinh", lw_sinh, 711.0, INFINITY}, {"sinh", lw_sinh, -1e300, -INFINITY},
    {"cosh", lw_cosh, 0.0, 1.0}, {"cosh", lw_cosh, -INFINITY, INFINITY},
    {"cosh", lw_cosh, NAN, NAN},
    {"cosh", lw_cosh, 711.0, INFINITY},
};
// clang-format on

TEST_FUNCTION(functions_of_one_number_are_right_at_their_edges)
{
    for (size_t i = 0; i < sizeof edges / sizeof edges[0]; i++) {
        check_same(edges[i].name, edges[i].x, 0.0, edges[i].function(edges[i].x), edges[i].want);
    }
}

static const double odd_numbers[] = {0.0,       -0.0, 1.0,       -1.0,       0.5,   -2.0,  INFINITY,
                                     -INFINITY, NAN,  0x1p-1074, -0x1p-1060, 1e300, -1e300};
#define ODD_NUMBERS (sizeof odd_numbers / sizeof odd_numbers[0])

// The same, or finite and within 1.1 ulp of what the C library says.
static bool is_like(double a, double b)
{
    return is_same(a, b) || (signbit(a) == signbit(b) && fabs(a - b) <= 1.1 * unit_at(b));
}

TEST_FUNCTION(atan2_has_the_quadrants_zeros_and_infinities_of_the_C_library)
{
    for (size_t i = 0; i < ODD_NUMBERS; i++) {
        for (size_t j = 0; j < ODD_NUMBERS; j++) {
            const double y = odd_numbers[i], x = odd_numbers[j];
            const double got = lw_atan2(y, x), want = atan2(y, x);
            if (!is_like(got, want)) check_same("atan2", y, x, got, want);
        }
    }
}

// Below 0 and beside NaN lw_pow is NaN always; elsewhere as the C library, -0 counting as 0.
TEST_FUNCTION(pow_is_right_at_its_edges)
{
    for (size_t i = 0; i < ODD_NUMBERS; i++) {
        for (size_t j = 0; j < ODD_NUMBERS; j++) {
            const double x = odd_numbers[i], y = odd_numbers[j];
            const bool has_power = x >= 0.0 && !isnan(y);
            const double got = lw_pow(x, y), want = has_power ? pow(fabs(x), y) : (double)NAN;
            if (!is_like(got, want)) check_same("pow", x, y, got, want);
        }
    }
}

TEST_FUNCTION(pow_is_exact_where_the_power_is_a_double)
{
    double ten = 1.0;
    for (int n = 0; n <= 22; n++, ten *= 10.0) check_same("pow", 10.0, n, lw_pow(10.0, n), ten);
    for (int n = 1; n < 1000; n++) {
        check_same("pow", n, 2.0, lw_pow(n, 2.0), (double)n * n);
        check_same("pow", n * n, 0.5, lw_pow((double)n * n, 0.5), n);
    }
}

// --- laws

static double number(random_stream *stream)
{
    const uint64_t bits = random_bits(stream);
    if (bits & 1) return random_between(stream, -30.0, 30.0);
    double x;
    memcpy(&x, &bits, sizeof x);
    return x;
}

TEST_FUNCTION(odd_functions_are_odd_and_even_ones_even_to_the_last_bit)
{
    const one odd[] = {lw_sin, lw_tan, lw_asin, lw_atan, lw_cbrt, lw_sinh, lw_tanh};
    const one even[] = {lw_cos, lw_cosh};
    random_stream stream = {3};
    for (int i = 0; i < CASES; i++) {
        const double x = number(&stream);
        for (size_t k = 0; k < sizeof odd / sizeof odd[0]; k++) {
            CHECK(is_same(odd[k](-x), -odd[k](x)));
        }
        for (size_t k = 0; k < sizeof even / sizeof even[0]; k++) {
            CHECK(is_same(even[k](-x), even[k](x)));
        }
    }
}

static bool sine_and_cosine_lie_on_the_circle(const double *x)
{
    const double s = lw_sin(x[0]), c = lw_cos(x[0]);
    return fabs(s) <= 1.0 && fabs(c) <= 1.0 && fabs(s * s + c * c - 1.0) <= 4.5e-16;
}

static bool log_undoes_exp(const double *x)
{
    return fabs(lw_log(lw_exp(x[0])) - x[0]) <= 3e-16 * (1.0 + fabs(x[0]));
}

static bool exp_rises(const double *x) { return lw_exp(x[0]) <= lw_exp(nextafter(x[0], INFINITY)); }

static bool first_power_is_the_number(const double *x) { return lw_pow(x[0], 1.0) == x[0]; }

TEST_FUNCTION(functions_keep_their_laws)
{
    CHECK_HOLDS(sine_and_cosine_lie_on_the_circle, CASES, {-1e5, 1e5});
    CHECK_HOLDS(log_undoes_exp, CASES, {-700.0, 700.0});
    CHECK_HOLDS(exp_rises, CASES, {-700.0, 700.0});
    CHECK_HOLDS(first_power_is_the_number, CASES, {0.0, 1e6});
}

// --- lanes

#define LANE_OF(name)                                                               \
    do {                                                                            \
        const lw_lanes got = lw_lanes_##name(x);                                    \
        for (int k = 0; k < LW_WIDTH; k++) CHECK(is_same(got[k], lw_##name(x[k]))); \
    } while (0)

TEST_FUNCTION(a_lane_has_the_bits_of_the_number_whatever_its_neighbours)
{
    random_stream stream = {5};
    for (int i = 0; i < CASES / 5; i++) {
        lw_lanes x, y;
        for (int k = 0; k < LW_WIDTH; k++) x[k] = number(&stream), y[k] = number(&stream);
        LANE_OF(sin);
        LANE_OF(cos);
        LANE_OF(tan);
        LANE_OF(asin);
        LANE_OF(acos);
        LANE_OF(atan);
        LANE_OF(exp);
        LANE_OF(log);
        LANE_OF(log10);
        LANE_OF(cbrt);
        LANE_OF(tanh);
        LANE_OF(sinh);
        LANE_OF(cosh);
        const lw_lanes angle = lw_lanes_atan2(y, x), power = lw_lanes_pow(x, y);
        for (int k = 0; k < LW_WIDTH; k++) {
            CHECK(is_same(angle[k], lw_atan2(y[k], x[k])));
            CHECK(is_same(power[k], lw_pow(x[k], y[k])));
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(functions_of_one_number_keep_their_bounds),
        TEST(functions_of_two_numbers_keep_their_bounds),
        TEST(functions_of_one_number_are_right_at_their_edges),
        TEST(atan2_has_the_quadrants_zeros_and_infinities_of_the_C_library),
        TEST(pow_is_right_at_its_edges),
        TEST(pow_is_exact_where_the_power_is_a_double),
        TEST(odd_functions_are_odd_and_even_ones_even_to_the_last_bit),
        TEST(functions_keep_their_laws),
        TEST(a_lane_has_the_bits_of_the_number_whatever_its_neighbours),
    };
    return RUN_TESTS(tests);
}
