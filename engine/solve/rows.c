// rows.c - Gaussian elimination by blocks of four columns.
// SPDX-License-Identifier: MIT

#include "solve/rows.h"

#include <math.h>
#include <stddef.h>

#include "solve/lanes.h"

enum { BLOCK = 4 };

typedef struct equations {
    double *rows;
    int n, width;
    size_t stride;
} equations;

LW_INLINE double *row_of(const equations *e, int i) { return e->rows + (size_t)i * e->stride; }

LW_INLINE bool bring_pivot(const equations *e, int k)
{
    int best = k;
    double most = fabs(row_of(e, k)[k]);
    for (int i = k + 1; i < e->n; i++) {
        const double size = fabs(row_of(e, i)[k]);
        if (size > most) most = size, best = i;
    }
    double *restrict top = row_of(e, k), *restrict other = row_of(e, best);
    for (int j = 0; j < e->width && best != k; j++) {
        const double old = top[j];
        top[j] = other[j];
        other[j] = old;
    }
    return most > 1e-300 && most < 1e300;
}

// Factors of the columns of a block, in the rows below their pivots.
LW_INLINE bool take_block(const equations *e, int k, int end)
{
    for (int c = k; c < end; c++) {
        if (!bring_pivot(e, c)) return false;
        const double *top = row_of(e, c);
        const double per = 1.0 / top[c];
        for (int i = c + 1; i < e->n; i++) {
            double *row = row_of(e, i);
            const double f = row[c] * per;
            row[c] = f;
            for (int j = c + 1; j < end; j++) row[j] -= f * top[j];
        }
    }
    return true;
}

LW_INLINE void take_off(double *restrict row, const double *restrict top, double f, int from,
                        int to)
{
    for (int j = from; j < to; j++) row[j] -= f * top[j];
}

LW_INLINE void take_off_four(double *restrict row, const double *const top[BLOCK], int k, int to)
{
    const double *restrict a = top[0], *restrict b = top[1], *restrict c = top[2],
                           *restrict d = top[3];
    const double f = row[k], g = row[k + 1], h = row[k + 2], m = row[k + 3];
    for (int j = k + BLOCK; j < to; j++)
        row[j] = (((row[j] - f * a[j]) - g * b[j]) - h * c[j]) - m * d[j];
}

LW_CLONES bool lw_rows_eliminate(double *rows, int n, int sides, int stride)
{
    const equations e = {rows, n, n + sides, (size_t)stride};
    for (int k = 0; k < n; k += BLOCK) {
        const int end = k + BLOCK < n ? k + BLOCK : n;
        if (!take_block(&e, k, end)) return false;
        const double *top[BLOCK] = {NULL};
        for (int c = k; c < end; c++) {
            double *row = row_of(&e, c);
            for (int p = k; p < c; p++) take_off(row, row_of(&e, p), row[p], end, e.width);
            top[c - k] = row;
        }
        for (int i = end; i < n; i++) take_off_four(row_of(&e, i), top, k, e.width);
    }
    return true;
}

// Of `count` numbers of a row from `from` on with those of x; four at a time.
LW_INLINE double sum_along(const double *row, const double *x, int from, int count)
{
    double sum[4] = {0.0};
    int j = from;
    for (; j + 4 <= count; j += 4) {
        for (int k = 0; k < 4; k++) sum[k] += row[j + k] * x[j + k];
    }
    for (int k = 0; j < count; j++, k++) sum[k] += row[j] * x[j];
    return (sum[0] + sum[1]) + (sum[2] + sum[3]);
}

void lw_rows_solve(const double *rows, int n, int side, int stride, double *x)
{
    for (int i = n - 1; i >= 0; i--) {
        const double *row = rows + (size_t)i * (size_t)stride;
        x[i] = (row[n + side] - sum_along(row, x, i + 1, n)) / row[i];
    }
}

LW_CLONES void lw_rows_times(const double *rows, int n, int stride, const double *x, double *to)
{
    for (int i = 0; i < n; i++) to[i] = sum_along(rows + (size_t)i * (size_t)stride, x, 0, n);
}
