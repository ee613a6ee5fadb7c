// linear.c - LU factors with partial pivoting, row by row so that memory is read in order.
// SPDX-License-Identifier: MIT

#include "solve/linear.h"

#include <math.h>
#include <stddef.h>

#include "solve/lanes.h"

static double *row_of(double *matrix, int n, int i) { return matrix + (size_t)i * (size_t)n; }

static double largest_in(const double *matrix, int n)
{
    double most = 0.0;
    for (size_t i = 0; i < (size_t)n * (size_t)n; i++) {
        const double size = fabs(matrix[i]);
        if (!(size <= most)) most = size == size ? size : 1e308;
    }
    return most;
}

static int pivot_of(double *matrix, int n, int k)
{
    int pivot = k;
    double most = fabs(row_of(matrix, n, k)[k]);
    for (int i = k + 1; i < n; i++) {
        const double size = fabs(row_of(matrix, n, i)[k]);
        if (size > most) most = size, pivot = i;
    }
    return pivot;
}

LW_CLONES bool lw_linear_factor(double *matrix, int n, int *pivot)
{
    const double least = 1e-15 * largest_in(matrix, n);
    if (!(least < 1e300)) return false;
    for (int k = 0; k < n; k++) {
        pivot[k] = pivot_of(matrix, n, k);
        double *top = row_of(matrix, n, k), *other = row_of(matrix, n, pivot[k]);
        for (int j = 0; j < n && other != top; j++) {
            const double swap = top[j];
            top[j] = other[j], other[j] = swap;
        }
        if (!(fabs(top[k]) > least)) return false;

        const double per_pivot = 1.0 / top[k];
        for (int i = k + 1; i < n; i++) {
            double *row = row_of(matrix, n, i);
            const double factor = row[k] * per_pivot;
            row[k] = factor;
            for (int j = k + 1; j < n; j++) row[j] -= factor * top[j];
        }
    }
    return true;
}

void lw_linear_solve(const double *factors, int n, const int *pivot, double *b)
{
    for (int k = 0; k < n; k++) {
        const double swap = b[k];
        b[k] = b[pivot[k]], b[pivot[k]] = swap;
    }
    for (int i = 1; i < n; i++) {
        const double *row = factors + (size_t)i * (size_t)n;
        double sum = b[i];
        for (int j = 0; j < i; j++) sum -= row[j] * b[j];
        b[i] = sum;
    }
    for (int i = n - 1; i >= 0; i--) {
        const double *row = factors + (size_t)i * (size_t)n;
        double sum = b[i];
        for (int j = i + 1; j < n; j++) sum -= row[j] * b[j];
        b[i] = sum / row[i];
    }
}
