// test_newton_many.c - claims about systems solved side by side, on textbook functions.
// SPDX-License-Identifier: MIT
//
// Functions, starts and roots of [more-garbow-hillstrom-1981], by its numbers. Those of fewer than
// six unknowns have x = 0 for the others.

#include <string.h>

#include "lullwise/base.h"
#include "solve/newton_many.h"
#include "test/check.h"

#define N LW_UNKNOWNS

static double squared(double x) { return x * x; }

static void rosenbrock(const double *x, double *r)  // 1
{
    r[0] = 10.0 * (x[1] - x[0] * x[0]);
    r[1] = 1.0 - x[0];
}

static void powell_badly_scaled(const double *x, double *r)  // 3
{
    r[0] = 1e4 * x[0] * x[1] - 1.0;
    r[1] = exp(-x[0]) + exp(-x[1]) - 1.0001;
}

static void helical_valley(const double *x, double *r)  // 7; its jump lies at x_0 = 0, x_1 < 0
{
    r[0] = 10.0 * (x[2] - 10.0 * atan2(x[1], x[0]) / (2.0 * LW_PI));
    r[1] = 10.0 * (hypot(x[0], x[1]) - 1.0);
    r[2] = x[2];
}

static void powell_singular(const double *x, double *r)  // 13
{
    r[0] = x[0] + 10.0 * x[1];
    r[1] = sqrt(5.0) * (x[2] - x[3]);
    r[2] = squared(x[1] - 2.0 * x[2]);
    r[3] = sqrt(10.0) * squared(x[0] - x[3]);
}

static void brown_almost_linear(const double *x, double *r)  // 27
{
    double sum = 0.0, product = 1.0;
    for (int i = 0; i < N; i++) sum += x[i], product *= x[i];
    for (int i = 0; i < N - 1; i++) r[i] = x[i] + sum - (N + 1.0);
    r[N - 1] = product - 1.0;
}

static void discrete_boundary_value(const double *x, double *r)  // 28
{
    const double h = 1.0 / (N + 1.0);
    for (int i = 0; i < N; i++) {
        const double below = i > 0 ? x[i - 1] : 0.0, above = i < N - 1 ? x[i + 1] : 0.0;
        r[i] = 2.0 * x[i] - below - above + 0.5 * h * h * pow(x[i] + (i + 1) * h + 1.0, 3.0);
    }
}

static void broyden_tridiagonal(const double *x, double *r)  // 30
{
    for (int i = 0; i < N; i++) {
        const double below = i > 0 ? x[i - 1] : 0.0, above = i < N - 1 ? x[i + 1] : 0.0;
        r[i] = (3.0 - 2.0 * x[i]) * x[i] - below - 2.0 * above + 1.0;
    }
}

static void chebyquad(const double *x, double *r)  // 35
{
    for (int i = 0; i < N; i++) {
        double mean = 0.0;
        for (int j = 0; j < N; j++) mean += cos((i + 1) * acos(2.0 * x[j] - 1.0)) / N;
        const double n = i + 1.0;
        r[i] = mean - (i % 2 ? 1.0 / (1.0 - n * n) : 0.0);
    }
}

typedef struct textbook {
    const char *name;
    void (*function)(const double *x, double *r);
    double start[N], bound[2], low, high;  // bound: of x_0, and of the others
    double root[N], off;                   // off: how well it is known, or can be found
} textbook;

#define GUESS(i)  ((i) / 7.0 * ((i) / 7.0 - 1.0))
#define SMOOTH(i) (2.0 / (2.0 - (i) / 7.0) - (i) / 7.0 - 1.0)

// Bounds are ours. Roots of six numbers are computed apart, to 40 digits,
// but for two: of the boundary value that of its differential equation, 2 / (2 - t) - t - 1, from
// which its differences stand a little off; of chebyquad (1 + x) / 2 of the abscissas in table 25.5
// of [abramowitz-stegun], in the order in which this search comes upon them.
// clang-format off
static const textbook book[] = {
    {"Rosenbrock", rosenbrock, {-1.2, 1.0}, {0.25, 1.0}, -9.0, 9.0, {1.0, 1.0}, 1e-9},
    {"Powell badly scaled", powell_badly_scaled, {0.0, 1.0}, {1e-3, 1.0}, -20.0, 20.0,
     {1.098159e-5, 9.106147}, 1e-6},
    {"helical valley", helical_valley, {-1.0, 0.0, 0.0}, {1.0, 1.0}, -9.0, 9.0,
     {1.0, 0.0, 0.0}, 1e-9},
    {"Powell singular", powell_singular, {3.0, -1.0, 0.0, 1.0}, {1.0, 1.0}, -9.0, 9.0,
     {0.0}, 1e-5},  // where its Jacobian is singular
    {"Brown almost-linear", brown_almost_linear, {0.5, 0.5, 0.5, 0.5, 0.5, 0.5}, {1.0, 1.0},
     -9.0, 9.0, {0.942149734286, 0.942149734286, 0.942149734286, 0.942149734286, 0.942149734286,
                 1.347101594282}, 1e-9},
    {"discrete boundary value", discrete_boundary_value,
     {GUESS(1), GUESS(2), GUESS(3), GUESS(4), GUESS(5), GUESS(6)}, {1.0, 1.0}, -9.0, 9.0,
     {SMOOTH(1), SMOOTH(2), SMOOTH(3), SMOOTH(4), SMOOTH(5), SMOOTH(6)}, 2e-3},
    {"Broyden tridiagonal", broyden_tridiagonal, {-1.0, -1.0, -1.0, -1.0, -1.0, -1.0}, {1.0, 1.0},
     -9.0, 9.0, {-0.568588219630, -0.676174892950, -0.687180715480, -0.664900962480,
                 -0.595854375910, -0.416373519910}, 1e-9},
    {"chebyquad", chebyquad, {1 / 7.0, 2 / 7.0, 3 / 7.0, 4 / 7.0, 5 / 7.0, 6 / 7.0}, {1.0, 1.0},
     0.0, 1.0, {0.0668765909, 0.3666822992, 0.2887406731, 0.7112593269, 0.6333177008,
                0.9331234091}, 1e-9},
};
// clang-format on
enum { BOOK = sizeof book / sizeof book[0] };

// Which of the book each system is.
static void enter(const void *of, size_t which, int lane, lw_iterate *at)
{
    const int number = ((const int *)of)[which];
    const textbook *t = &book[number];
    at->given[0][lane] = number;
    for (int i = 0; i < N; i++) {
        at->x[i][lane] = t->start[i];
        at->bound[i][lane] = t->bound[i > 0];
        at->low[i][lane] = t->low, at->high[i][lane] = t->high;
    }
}

static void evaluate(const void *of, const lw_iterate *at, const lw_lanes x[N], lw_lanes r[N])
{
    (void)of;
    for (int lane = 0; lane < LW_WIDTH; lane++) {
        double in[N], out[N];
        for (int i = 0; i < N; i++) in[i] = out[i] = x[i][lane];
        book[(int)at->given[0][lane]].function(in, out);
        for (int i = 0; i < N; i++) r[i][lane] = out[i];
    }
}

#define TOLERANCE  1e-10
#define ITERATIONS 100.0
#define LIMITS \
    .tolerance = TOLERANCE, .most_iterations = ITERATIONS, .most_idle = 30.0, .least_damping = 1e-2
#define IN_ORDER .unknown_place = as_they_are, .equation_place = as_they_are

static const int as_they_are[N] = {0, 1, 2, 3, 4, 5};
static const lw_newton_problem textbooks = {LIMITS, IN_ORDER, .given = 1, .enter = enter,
                                            .evaluate = evaluate};

TEST_FUNCTION(textbook_systems_end_at_their_roots)
{
    int order[BOOK];
    lw_solution solutions[BOOK];
    for (int i = 0; i < BOOK; i++) order[i] = i;
    lw_newton_many(&textbooks, order, false, solutions, BOOK);
    for (int i = 0; i < BOOK; i++) {
        print_message("%s: %g iterations\n", book[i].name, solutions[i].iterations);
        CHECK(solutions[i].residual < TOLERANCE);
        for (int k = 0; k < N; k++) CHECK_NEAR(solutions[i].x[k], book[i].root[k], book[i].off);
    }
}

static void draw_order(int *order, int count, uint64_t seed)
{
    random_stream stream = {seed};
    for (int i = 0; i < count; i++) order[i] = (int)(random_bits(&stream) % BOOK);
}

// More of them than the groups have lanes, in any order: each ends as it does alone, to the bit.
TEST_FUNCTION(a_solution_does_not_depend_on_its_neighbours)
{
    enum { MANY = 3 * LW_NEWTON_GROUPS * LW_WIDTH + 1 };
    static int order[MANY];
    static lw_solution together[MANY];
    draw_order(order, MANY, 81);
    lw_newton_many(&textbooks, order, false, together, MANY);
    for (int i = 0; i < MANY; i++) {
        lw_solution alone;
        lw_newton_many(&textbooks, &order[i], false, &alone, 1);
        CHECK(memcmp(&alone, &together[i], sizeof alone) == 0);
    }
}

// Akin, they begin with the Jacobian of the first, here another textbook's for most: all end at the
// same roots, and each as it does with the first alone.
TEST_FUNCTION(systems_that_take_the_first_ones_jacobian_end_at_the_same_roots)
{
    enum { MANY = 2 * LW_NEWTON_GROUPS * LW_WIDTH + 1 };
    static int order[MANY];
    static lw_solution akin[MANY];
    draw_order(order, MANY, 82);
    lw_newton_many(&textbooks, order, true, akin, MANY);
    for (int i = 0; i < MANY; i++) {
        const textbook *t = &book[order[i]];
        const int pair[2] = {order[0], order[i]};
        lw_solution alone[2];
        lw_newton_many(&textbooks, pair, true, alone, 2);
        CHECK(memcmp(&alone[1], &akin[i], sizeof alone[1]) == 0);
        CHECK(akin[i].residual < TOLERANCE);
        for (int k = 0; k < N; k++) CHECK_NEAR(akin[i].x[k], t->root[k], t->off);
    }
}

// --- systems of one unknown, the others 0

typedef struct line {
    double (*function)(double x, double ease);
    double start, low, high;
} line;

static double no_root(double x, double ease) { return x * x + 1.0 + 0.0 * ease; }
static double cube(double x, double ease) { return x * x * x - 8.0 + 0.0 * ease; }

// Flat far off; eased it is a straight line.
static double bent(double x, double ease) { return ease > 0.5 ? x : atan(x); }

static void enter_line(const void *of, size_t which, int lane, lw_iterate *at)
{
    const line *l = &((const line *)of)[which];
    at->given[0][lane] = (double)which;
    at->given[1][lane] = 0.0;
    for (int i = 0; i < N; i++) {
        at->x[i][lane] = i ? 0.0 : l->start;
        at->bound[i][lane] = 100.0;
        at->low[i][lane] = i ? -1.0 : l->low, at->high[i][lane] = i ? 1.0 : l->high;
    }
}

static void evaluate_line(const void *of, const lw_iterate *at, const lw_lanes x[N], lw_lanes r[N])
{
    for (int i = 1; i < N; i++) r[i] = x[i];
    for (int lane = 0; lane < LW_WIDTH; lane++) {
        const line *l = &((const line *)of)[(int)at->given[0][lane]];
        r[0][lane] = l->function(x[0][lane], at->given[1][lane]);
    }
}

// As they came in the easier system; that let go when it is solved.
static void ease(lw_newton *s, const lw_mask *came_in)
{
    const lw_mask settled = s->eased & ~*came_in & (s->merit < 1e-6);
    s->eased = (s->eased | *came_in) & ~settled;
    s->at.given[1] = lw_select(s->eased, lw_all(1.0), lw_all(0.0));
    s->entering |= settled | *came_in;
}

static void stay_eased(lw_newton *s, const lw_mask *came_in) { s->eased |= *came_in; }

#define AS_A_LINE LIMITS, IN_ORDER, .given = 2, .enter = enter_line, .evaluate = evaluate_line
static const lw_newton_problem lines = {AS_A_LINE};
static const lw_newton_problem eased_lines = {AS_A_LINE, .ease = ease};
static const lw_newton_problem always_eased = {AS_A_LINE, .ease = stay_eased};

TEST_FUNCTION(where_there_is_no_root_none_is_told)
{
    const line l = {no_root, 3.0, -9.0, 9.0};
    lw_solution solution;
    lw_newton_many(&lines, &l, false, &solution, 1);
    CHECK(solution.residual >= 1.0);
    CHECK(solution.iterations <= ITERATIONS);
}

TEST_FUNCTION(a_root_beyond_the_bounds_is_not_gone_to)
{
    const line l[] = {{cube, 1.0, -9.0, 1.5}, {cube, 1.0, -9.0, 9.0}};
    lw_solution solutions[2];
    lw_newton_many(&lines, l, false, solutions, 2);
    CHECK(solutions[0].x[0] <= 1.5 && solutions[0].residual > 1.0);
    CHECK_NEAR(solutions[1].x[0], 2.0, 1e-9);
}

TEST_FUNCTION(an_easier_system_leads_to_the_root_and_is_none_itself)
{
    const line l = {bent, 50.0, -1e3, 1e3};
    lw_solution eased, still;
    lw_newton_many(&eased_lines, &l, false, &eased, 1);
    lw_newton_many(&always_eased, &l, false, &still, 1);
    CHECK(eased.residual < TOLERANCE);
    CHECK_NEAR(eased.x[0], 0.0, 1e-9);
    CHECK(still.residual == 1.0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(textbook_systems_end_at_their_roots),
        TEST(a_solution_does_not_depend_on_its_neighbours),
        TEST(systems_that_take_the_first_ones_jacobian_end_at_the_same_roots),
        TEST(where_there_is_no_root_none_is_told),
        TEST(a_root_beyond_the_bounds_is_not_gone_to),
        TEST(an_easier_system_leads_to_the_root_and_is_none_itself),
    };
    return RUN_TESTS(tests);
}
