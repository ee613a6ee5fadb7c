// test_linear.c - claims about linear equations and splines.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "solve/linear.h"
#include "solve/linear_many.h"
#include "solve/rows.h"
#include "solve/spline.h"
#include "test/check.h"

static bool equations_are_solved(const double *x)
{
    enum { N = 30 };
    static double matrix[N * N], kept[N * N], b[N], want[N];
    static int pivot[N];
    random_stream stream = {(uint64_t)(x[0] * 1e9)};
    for (int i = 0; i < N * N; i++) kept[i] = matrix[i] = random_between(&stream, -1.0, 1.0);
    for (int i = 0; i < N; i++) want[i] = random_between(&stream, -1.0, 1.0);
    for (int i = 0; i < N; i++) {
        b[i] = 0.0;
        for (int j = 0; j < N; j++) b[i] += kept[i * N + j] * want[j];
    }
    if (!lw_linear_factor(matrix, N, pivot)) return false;
    lw_linear_solve(matrix, N, pivot, b);
    double worst = 0.0;
    for (int i = 0; i < N; i++) worst = fmax(worst, fabs(b[i] - want[i]));
    return worst < 1e-9;
}

TEST_FUNCTION(linear_equations_give_back_what_they_were_made_from)
{
    CHECK_HOLDS(equations_are_solved, 200, {0.0, 1.0});
}

// Rows with their right side at the end, eliminated by fours, against the factors; every size to
// see the last, short block.
TEST_FUNCTION(rows_have_the_solution_of_the_factors)
{
    enum { MOST = 23, STRIDE = 28 };
    random_stream stream = {3};
    for (int n = 1; n <= MOST; n++) {
        double rows[MOST * STRIDE], matrix[MOST * MOST], b[MOST], x[MOST], back[MOST];
        double kept[MOST * STRIDE];
        int pivot[MOST];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= n; j++) rows[i * STRIDE + j] = random_between(&stream, -1.0, 1.0);
            for (int j = 0; j < n; j++) matrix[i * n + j] = rows[i * STRIDE + j];
            b[i] = rows[i * STRIDE + n];
        }
        memcpy(kept, rows, sizeof kept);
        CHECK(lw_linear_factor(matrix, n, pivot));
        lw_linear_solve(matrix, n, pivot, b);
        CHECK(lw_rows_eliminate(rows, n, 1, STRIDE));
        lw_rows_solve(rows, n, 0, STRIDE, x);
        lw_rows_times(kept, n, STRIDE, x, back);
        for (int i = 0; i < n; i++) CHECK_NEAR(x[i], b[i], 1e-9);
        for (int i = 0; i < n; i++) CHECK_NEAR(back[i], kept[i * STRIDE + n], 1e-9);
    }
    CHECK(!lw_rows_eliminate((double[]){1.0, 2.0, 1.0, 2.0, 4.0, 1.0}, 2, 1, 3));
    CHECK(!lw_rows_eliminate((double[]){NAN, 2.0, 1.0, 2.0, NAN, 1.0}, 2, 1, 3));
}

TEST_FUNCTION(singular_and_broken_matrices_are_told)
{
    int pivot[2];
    CHECK(!lw_linear_factor((double[]){1.0, 2.0, 2.0, 4.0}, 2, pivot));
    CHECK(!lw_linear_factor((double[]){0.0, 0.0, 0.0, 0.0}, 2, pivot));
    CHECK(!lw_linear_factor((double[]){1.0, NAN, 2.0, 4.0}, 2, pivot));
    CHECK(lw_linear_factor((double[]){0.0, 1.0, 1.0, 0.0}, 2, pivot));
}

static bool many_solve_like_one(const double *x)
{
    enum { N = 12, COLUMNS = 3 };
    double a[N * N], b[N * COLUMNS], one[COLUMNS][N];
    int pivot[N];
    random_stream random = {(uint64_t)(x[0] * 1e9)};
    for (int i = 0; i < N * N; i++) a[i] = random_between(&random, -1.0, 1.0);
    for (int i = 0; i < N * COLUMNS; i++) {
        b[i] = random_between(&random, -1.0, 1.0);
        one[i % COLUMNS][i / COLUMNS] = b[i];
    }
    if (!lw_linear_factor(a, N, pivot)) return true;
    lw_linear_solve_many(a, N, pivot, b, COLUMNS);
    for (int c = 0; c < COLUMNS; c++) {
        lw_linear_solve(a, N, pivot, one[c]);
        for (int i = 0; i < N; i++) {
            if (fabs(one[c][i] - b[i * COLUMNS + c]) > 1e-9 * (1.0 + fabs(one[c][i]))) return false;
        }
    }
    return true;
}

TEST_FUNCTION(equations_solved_together_are_those_solved_alone)
{
    CHECK_HOLDS(many_solve_like_one, 50, {0.0, 1.0});
}

TEST_FUNCTION(spline_meets_its_points_and_a_parabola)
{
    double s[9], y[9], slope[9], spare[9];
    for (int i = 0; i < 9; i++) {
        s[i] = 0.1 * i * i + i;
        y[i] = 3.0 - 2.0 * s[i] + 0.5 * s[i] * s[i];
    }
    lw_spline_slopes(9, s, y, slope, spare);
    for (double at = 0.0; at < 14.0; at += 0.37) {
        const lw_spline_point p = lw_spline_at(9, s, y, slope, at);
        CHECK_NEAR(p.value, 3.0 - 2.0 * at + 0.5 * at * at, 1e-12);
        CHECK_NEAR(p.slope, -2.0 + at, 1e-12);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(linear_equations_give_back_what_they_were_made_from),
        TEST(rows_have_the_solution_of_the_factors),
        TEST(singular_and_broken_matrices_are_told),
        TEST(equations_solved_together_are_those_solved_alone),
        TEST(spline_meets_its_points_and_a_parabola),
    };
    return RUN_TESTS(tests);
}
