// linear.c - our dense solve beside LAPACK's dgesv on the same matrix.
// SPDX-License-Identifier: MIT

#include "bench/linear.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

#include "bench/stopwatch.h"
#include "solve/linear.h"
#include "test/random.h"

#define ORDER 160  // unknowns, as many as a section has panels
#define RUNS  20

// LAPACK by its Fortran name: no header is needed for one call.
void dgesv_(const int *n, const int *columns, double *a, const int *lda, int *pivot, double *b,
            const int *ldb, int *info);

// Vortices on a line, felt between them: the kind of matrix that panels make.
static void fill(double *row_major, double *column_major, double *b)
{
    random_stream stream = {3};
    for (int i = 0; i < ORDER; i++) {
        for (int j = 0; j < ORDER; j++) {
            const double a = 1.0 / (i - j + 0.5) + 0.01 * random_between(&stream, -1.0, 1.0);
            row_major[i * ORDER + j] = column_major[j * ORDER + i] = a;
        }
        b[i] = random_between(&stream, -1.0, 1.0);
    }
}

void bench_linear(void)
{
    static double rows[ORDER * ORDER], columns[ORDER * ORDER], a[ORDER * ORDER];
    double b[ORDER], x[ORDER], y[ORDER], ours[REPEATS], theirs[REPEATS], ratio[REPEATS];
    int pivot[ORDER];
    fill(rows, columns, b);
    const int n = ORDER, one = 1;
    for (int k = 0; k < REPEATS; k++) {
        const double start = seconds_now();
        for (int run = 0; run < RUNS; run++) {
            memcpy(a, rows, sizeof a);
            memcpy(x, b, sizeof x);
            if (lw_linear_factor(a, n, pivot)) lw_linear_solve(a, n, pivot, x);
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
    for (int i = 0; i < ORDER; i++) off = fmax(off, fabs(x[i] - y[i]));
    printf("dense equations, %d unknowns, one right-hand side\n", ORDER);
    printf("  lw_linear       %7.0f us\n", 1e6 * median_of(ours));
    printf("  LAPACK dgesv    %7.0f us   answers differ by %.0e\n", 1e6 * median_of(theirs), off);
    printf("  ratio           %7.1f\n\n", median_of(ratio));
}
