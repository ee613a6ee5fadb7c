// linear.c - our dense solves beside LAPACK's dgesv on the same matrix.
// SPDX-License-Identifier: MIT

#include "bench/linear.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "bench/stopwatch.h"
#include "solve/linear.h"
#include "solve/rows.h"
#include "test/random.h"

#define MOST   188  // numbers of a row
#define PANELS 160  // unknowns, as many as a section has panels
#define LAYERS 185  // as many as outer flow and layers have together
#define RUNS   20

// LAPACK by its Fortran name: no header is needed for one call.
void dgesv_(const int *n, const int *columns, double *a, const int *lda, int *pivot, double *b,
            const int *ldb, int *info);

// Vortices on a line, felt between them: the kind of matrix that panels make. The right side stands
// at the end of each row as well.
static void fill(int n, int stride, double *rows, double *columns, double *b)
{
    random_stream stream = {3};
    for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
            const double a = 1.0 / (i - j + 0.5) + 0.01 * random_between(&stream, -1.0, 1.0);
            rows[i * stride + j] = columns[j * n + i] = a;
        }
        b[i] = random_between(&stream, -1.0, 1.0);
        if (stride > n) rows[i * stride + n] = b[i];
    }
}

static void by_panels(double *a, double *x)
{
    int pivot[PANELS];
    if (lw_linear_factor(a, PANELS, pivot)) lw_linear_solve(a, PANELS, pivot, x);
}

static void by_layers(double *a, double *x)
{
    if (lw_rows_eliminate(a, LAYERS, 1, MOST)) lw_rows_solve(a, LAYERS, 0, MOST, x);
}

static void compare(const char *name, int n, int stride, void (*solve)(double *a, double *x))
{
    static double rows[MOST * MOST], columns[MOST * MOST], a[MOST * MOST];
    double b[MOST], x[MOST], y[MOST], ours[REPEATS], theirs[REPEATS], ratio[REPEATS];
    int pivot[MOST];
    const int one = 1;
    fill(n, stride, rows, columns, b);
    for (int k = 0; k < REPEATS; k++) {
        const double start = seconds_now();
        for (int run = 0; run < RUNS; run++) {
            memcpy(a, rows, sizeof a);
            memcpy(x, b, sizeof x);
            solve(a, x);
        }
        const double middle = seconds_now();
        for (int run = 0; run < RUNS; run++) {
            int info;
            memcpy(a, columns, sizeof a);
            memcpy(y, b, sizeof y);
            dgesv_(&n, &one, a, &n, pivot, y, &n, &info);
        }
        const double end = seconds_now();
        ours[k] = (middle - start) / RUNS, theirs[k] = (end - middle) / RUNS;
        ratio[k] = theirs[k] / ours[k];
    }
    double off = 0.0;
    for (int i = 0; i < n; i++) off = fmax(off, fabs(x[i] - y[i]));
    printf("dense equations, %d unknowns, one right-hand side\n", n);
    printf("  %-15s %7.0f us\n", name, 1e6 * median_of(ours));
    printf("  LAPACK dgesv    %7.0f us   answers differ by %.0e\n", 1e6 * median_of(theirs), off);
    printf("  ratio           %7.1f\n\n", median_of(ratio));
}

void bench_linear(void)
{
    compare("lw_linear", PANELS, PANELS, by_panels);
    compare("lw_rows", LAYERS, MOST, by_layers);
}
