// linear_many.c - forward and back substitution along rows of right sides.
// SPDX-License-Identifier: MIT

#include "solve/linear_many.h"

#include <stddef.h>

// row -= f other
static void take_off(double *restrict row, const double *restrict other, double f, int count)
{
    for (int j = 0; j < count; j++) row[j] -= f * other[j];
}

static void swap_rows(double *restrict a, double *restrict b, int count)
{
    for (int j = 0; j < count; j++) {
        const double old = a[j];
        a[j] = b[j];
        b[j] = old;
    }
}

void lw_linear_solve_many(const double *factors, int n, const int *pivot, double *b, int columns)
{
    const size_t width = (size_t)columns;
    for (int k = 0; k < n; k++) {
        if (pivot[k] != k) swap_rows(b + (size_t)k * width, b + (size_t)pivot[k] * width, columns);
    }
    for (int i = 1; i < n; i++) {
        const double *row = factors + (size_t)i * (size_t)n;
        for (int k = 0; k < i; k++) {
            take_off(b + (size_t)i * width, b + (size_t)k * width, row[k], columns);
        }
    }
    for (int i = n - 1; i >= 0; i--) {
        const double *row = factors + (size_t)i * (size_t)n;
        double *x = b + (size_t)i * width;
        for (int k = i + 1; k < n; k++) take_off(x, b + (size_t)k * width, row[k], columns);
        const double per_pivot = 1.0 / row[i];
        for (int j = 0; j < columns; j++) x[j] *= per_pivot;
    }
}
