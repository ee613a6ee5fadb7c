// test_eigen.c - claims about eigenvalues and vectors, beside LAPACK's dgeev.
// SPDX-License-Identifier: MIT

#include "lullwise/base.h"
#include "solve/eigen.h"
#include "test/check.h"

#define MOST LW_EIGEN_MOST

void dgeev_(const char *left, const char *right, const int *n, double *a, const int *lda,
            double *re, double *im, double *vl, const int *ldvl, double *vr, const int *ldvr,
            double *work, const int *room, int *info);

// LAPACK stores columns one after the other; a matrix and its transpose have the same values.
static bool values_of_lapack(const double *matrix, int n, lw_complex *values)
{
    double a[MOST * MOST], re[MOST], im[MOST], none[1], work[20 * MOST];
    const int one = 1, room = 20 * MOST;
    int info = 1;
    for (int i = 0; i < n * n; i++) a[i] = matrix[i];
    dgeev_("N", "N", &n, a, &n, re, im, none, &one, none, &one, work, &room, &info);
    for (int i = 0; i < n; i++) values[i] = (lw_complex){re[i], im[i]};
    return info == 0;
}

static double apart(lw_complex a, lw_complex b) { return hypot(a.re - b.re, a.im - b.im); }

// How far the farthest of n values is from the other list, each taken once.
static double farthest(const lw_complex *got, const lw_complex *want, int n)
{
    bool taken[MOST] = {false};
    double worst = 0.0;
    for (int i = 0; i < n; i++) {
        int nearest = -1;
        for (int j = 0; j < n; j++) {
            if (taken[j]) continue;
            if (nearest < 0 || apart(got[i], want[j]) < apart(got[i], want[nearest])) nearest = j;
        }
        taken[nearest] = true;
        worst = fmax(worst, apart(got[i], want[nearest]));
    }
    return worst;
}

static double size_of(const double *matrix, int n)
{
    double sum = 0.0;
    for (int i = 0; i < n * n; i++) sum += matrix[i] * matrix[i];
    return sqrt(sum);
}

// Greatest component of A v - value v.
static double left_over(const double *matrix, int n, lw_complex value, const lw_complex *v)
{
    double worst = 0.0;
    for (int i = 0; i < n; i++) {
        lw_complex sum = {0.0, 0.0};
        for (int j = 0; j < n; j++) {
            sum.re += matrix[i * n + j] * v[j].re, sum.im += matrix[i * n + j] * v[j].im;
        }
        const lw_complex want = {value.re * v[i].re - value.im * v[i].im,
                                 value.re * v[i].im + value.im * v[i].re};
        worst = fmax(worst, apart(sum, want));
    }
    return worst;
}

static bool vectors_are_kept(const double *matrix, int n, const lw_complex *values, double allowed)
{
    lw_complex vector[MOST];
    for (int i = 0; i < n; i++) {
        if (!lw_eigen_vector(matrix, n, values[i], vector)) return false;
        if (!(left_over(matrix, n, values[i], vector) < allowed)) return false;
    }
    return true;
}

static bool values_are_those_of_lapack(const double *x)
{
    const int n = 1 + (int)(x[1] * MOST);
    double matrix[MOST * MOST];
    lw_complex got[MOST], want[MOST];
    random_stream stream = {(uint64_t)(x[0] * 1e9)};
    for (int i = 0; i < n * n; i++) matrix[i] = random_between(&stream, -1.0, 1.0);
    const double size = size_of(matrix, n);
    if (!lw_eigen_values(matrix, n, got) || !values_of_lapack(matrix, n, want)) return false;
    return farthest(got, want, n) < 1e-9 * size && vectors_are_kept(matrix, n, got, 1e-9 * size);
}

TEST_FUNCTION(eigenvalues_of_dense_matrices_are_those_of_lapack)
{
    CHECK_HOLDS(values_are_those_of_lapack, 2000, {0.0, 1.0}, {0.0, 0.999});
}

// As a boat's: many zeros, and units that differ by a million.
static bool scaled_values_are_those_of_lapack(const double *x)
{
    const int n = 2 + (int)(x[1] * (MOST - 1));
    double matrix[MOST * MOST], scale[MOST];
    lw_complex got[MOST], want[MOST];
    random_stream stream = {(uint64_t)(x[0] * 1e9)};
    for (int i = 0; i < n; i++) scale[i] = pow(10.0, random_between(&stream, -3.0, 3.0));
    for (int i = 0; i < n * n; i++) {
        const bool is_zero = random_between(&stream, 0.0, 1.0) < 0.5;
        matrix[i] =
            is_zero ? 0.0 : random_between(&stream, -1.0, 1.0) * scale[i / n] / scale[i % n];
    }
    if (!lw_eigen_values(matrix, n, got) || !values_of_lapack(matrix, n, want)) return false;
    return farthest(got, want, n) < 1e-6 * n;
}

TEST_FUNCTION(eigenvalues_of_badly_scaled_matrices_are_those_of_lapack)
{
    CHECK_HOLDS(scaled_values_are_those_of_lapack, 2000, {0.0, 1.0}, {0.0, 0.999});
}

// Nine states that know nothing of the rest, and eleven that follow them with the same lag: eleven
// values of -5.
static bool lags_are_found(const double *x)
{
    enum { N = 20, FREE = 9 };
    double matrix[N * N] = {0.0};
    lw_complex got[N], want[N];
    random_stream stream = {(uint64_t)(x[0] * 1e9)};
    for (int i = 0; i < N; i++) {
        for (int j = 0; j < FREE; j++) matrix[i * N + j] = random_between(&stream, -3.0, 3.0);
        if (i >= FREE) matrix[i * N + i] = -5.0;
    }
    if (!lw_eigen_values(matrix, N, got) || !values_of_lapack(matrix, N, want)) return false;
    return farthest(got, want, N) < 1e-7 && vectors_are_kept(matrix, N, got, 1e-6);
}

TEST_FUNCTION(many_equal_lags_do_not_end_the_search)
{
    CHECK_HOLDS(lags_are_found, 1000, {0.0, 1.0});
}

// The roots of a polynomial are the values of its companion: here 1, 2, ... 8.
TEST_FUNCTION(a_companion_matrix_has_the_roots_of_its_polynomial)
{
    enum { N = 8 };
    double matrix[N * N] = {0.0}, c[N + 1] = {1.0};  // c[k] of x^(degree - k)
    for (int root = 1; root <= N; root++) {
        for (int k = root; k > 0; k--) c[k] -= root * c[k - 1];
    }
    for (int k = 0; k < N; k++) matrix[k] = -c[k + 1];
    for (int i = 1; i < N; i++) matrix[i * N + i - 1] = 1.0;
    lw_complex got[N], want[N];
    for (int i = 0; i < N; i++) want[i] = (lw_complex){i + 1.0, 0.0};
    CHECK(lw_eigen_values(matrix, N, got));
    CHECK(farthest(got, want, N) < 1e-7);
}

// A ring of n: each row hands on to the next. Its values are the n-th roots of one; all have the
// same size, on which a sweep without another shift would run in a circle.
TEST_FUNCTION(a_ring_has_the_roots_of_one)
{
    for (int n = 2; n <= MOST; n++) {
        double matrix[MOST * MOST] = {0.0};
        lw_complex got[MOST], want[MOST];
        for (int i = 0; i < n; i++) {
            matrix[i * n + (i + 1) % n] = 1.0;
            want[i] = (lw_complex){cos(2.0 * LW_PI * i / n), sin(2.0 * LW_PI * i / n)};
        }
        CHECK(lw_eigen_values(matrix, n, got));
        CHECK(farthest(got, want, n) < 1e-12);
        CHECK(vectors_are_kept(matrix, n, got, 1e-9));
    }
}

// A spring of a mass: s^2 + 2 zeta w s + w^2 = 0 with w = 3, zeta = 0.2.
TEST_FUNCTION(a_damped_spring_has_a_pair_with_its_frequency_and_damping)
{
    const double w = 3.0, zeta = 0.2;
    const double matrix[4] = {0.0, 1.0, -w * w, -2.0 * zeta * w};
    lw_complex got[2], vector[2];
    CHECK(lw_eigen_values(matrix, 2, got));
    CHECK_NEAR(got[0].re, -zeta * w, 1e-14);
    CHECK_NEAR(got[0].im, w * sqrt(1.0 - zeta * zeta), 1e-14);
    CHECK(got[1].re == got[0].re && got[1].im == -got[0].im);
    CHECK(lw_eigen_vector(matrix, 2, got[0], vector));
    CHECK_NEAR(hypot(vector[0].re, vector[0].im), 1.0 / w, 1e-12);
}

// A big aeroplane at 40,000 ft and Mach 0.8: speed, sinking speed [ft/s], pitch rate, pitch.
// Published are periods of 93.4 s and 7.08 s, and 211 s and 1.86 s to half [etkin-reid], to three
// digits.
TEST_FUNCTION(an_aeroplane_has_the_published_phugoid_and_short_swing)
{
    const double matrix[16] = {-0.006868, 0.01395,   0.0,     -32.2,  //
                               -0.09055,  -0.3151,   773.98,  0.0,    //
                               0.0001187, -0.001026, -0.4285, 0.0,    //
                               0.0,       0.0,       1.0,     0.0};
    const double half = log(2.0), turn = 2.0 * LW_PI;
    lw_complex got[4];
    CHECK(lw_eigen_values(matrix, 4, got));
    const bool is_slow_first = fabs(got[0].re) < fabs(got[2].re);
    const lw_complex slow = got[is_slow_first ? 0 : 2], quick = got[is_slow_first ? 2 : 0];
    CHECK_RELATIVE(turn / slow.im, 93.4, 0.005);
    CHECK_RELATIVE(half / -slow.re, 211.0, 0.005);
    CHECK_RELATIVE(turn / quick.im, 7.08, 0.005);
    CHECK_RELATIVE(half / -quick.re, 1.86, 0.005);
}

TEST_FUNCTION(zeros_triangles_and_repeated_values_are_told_exactly)
{
    const double zero[9] = {0.0}, triangle[9] = {1.0, 5.0, -3.0, 0.0, 2.0, 7.0, 0.0, 0.0, 2.0};
    lw_complex got[3], vector[3];
    CHECK(lw_eigen_values(zero, 3, got));
    for (int i = 0; i < 3; i++) CHECK(got[i].re == 0.0 && got[i].im == 0.0);
    CHECK(lw_eigen_vector(zero, 3, got[0], vector));
    CHECK(lw_eigen_values(triangle, 3, got));
    CHECK(farthest(got, (lw_complex[]){{1.0, 0.0}, {2.0, 0.0}, {2.0, 0.0}}, 3) == 0.0);
    CHECK(vectors_are_kept(triangle, 3, got, 1e-4));
}

// Three values of -5 and one vector for all of them.
TEST_FUNCTION(values_that_share_a_vector_have_it)
{
    const double chain[9] = {-5.0, 1.0, 0.0, 0.0, -5.0, 1.0, 0.0, 0.0, -5.0};
    lw_complex vector[3];
    CHECK(lw_eigen_vector(chain, 3, (lw_complex){-5.0, 0.0}, vector));
    CHECK_NEAR(vector[0].re, 1.0, 1e-12);
    CHECK_NEAR(vector[1].re, 0.0, 1e-3);
    CHECK_NEAR(vector[2].re, 0.0, 1e-6);
}

TEST_FUNCTION(a_matrix_that_holds_no_number_is_told)
{
    double matrix[4] = {1.0, 2.0, NAN, 4.0};
    lw_complex got[2];
    CHECK(!lw_eigen_values(matrix, 2, got));
    CHECK(!lw_eigen_vector(matrix, 2, (lw_complex){1.0, 0.0}, got));
    matrix[2] = INFINITY;
    CHECK(!lw_eigen_values(matrix, 2, got));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(eigenvalues_of_dense_matrices_are_those_of_lapack),
        TEST(eigenvalues_of_badly_scaled_matrices_are_those_of_lapack),
        TEST(many_equal_lags_do_not_end_the_search),
        TEST(a_companion_matrix_has_the_roots_of_its_polynomial),
        TEST(a_ring_has_the_roots_of_one),
        TEST(a_damped_spring_has_a_pair_with_its_frequency_and_damping),
        TEST(an_aeroplane_has_the_published_phugoid_and_short_swing),
        TEST(zeros_triangles_and_repeated_values_are_told_exactly),
        TEST(values_that_share_a_vector_have_it),
        TEST(a_matrix_that_holds_no_number_is_told),
    };
    return RUN_TESTS(tests);
}
