// eigen.c - eigenvalues by Francis's QR sweeps, vectors by inverse iteration.
// SPDX-License-Identifier: MIT

#include "solve/eigen.h"

#include <assert.h>
#include <math.h>
#include <stddef.h>

#include "solve/linear.h"

#define MOST    LW_EIGEN_MOST
#define EPSILON 2.2204460492503131e-16

typedef struct square {
    int n;
    double a[MOST][MOST];
} square;

// Largest size of an element; infinite when one is no number.
static double largest_of(const square *m)
{
    double most = 0.0;
    for (int i = 0; i < m->n; i++) {
        for (int j = 0; j < m->n; j++) {
            const double size = fabs(m->a[i][j]);
            if (!(size <= most)) most = size < 1e300 ? size : INFINITY;
        }
    }
    return most;
}

// Loads the matrix, row after row; false when it holds what is no number.
static bool put(square *m, const double *matrix, int n)
{
    assert(n <= MOST);
    m->n = n;
    for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) m->a[i][j] = matrix[(size_t)i * (size_t)n + (size_t)j];
    }
    return largest_of(m) < 1e300;
}

// The power of two that brings a row and a column of these sums nearest to each other.
static double power_between(double column, double row)
{
    double factor = 1.0;
    while (column < 0.5 * row) column *= 4.0, factor *= 2.0;
    while (column >= 2.0 * row) column *= 0.25, factor *= 0.5;
    return factor;
}

// D^-1 A D with D of powers of two, so that no bit is lost; `scale` takes D.
static void balance(square *m, double *scale)
{
    const int n = m->n;
    bool has_changed = true;
    for (int i = 0; i < n; i++) scale[i] = 1.0;
    for (int round = 0; has_changed && round < 100; round++) {
        has_changed = false;
        for (int i = 0; i < n; i++) {
            double column = 0.0, row = 0.0;
            for (int j = 0; j < n; j++) {
                if (j != i) column += fabs(m->a[j][i]), row += fabs(m->a[i][j]);
            }
            if (!(column > 0.0 && row > 0.0)) continue;
            const double by = power_between(column, row);
            if (column * by + row / by >= 0.95 * (column + row)) continue;
            has_changed = true;
            scale[i] *= by;
            for (int j = 0; j < n; j++) m->a[j][i] *= by, m->a[i][j] /= by;
        }
    }
}

// I - scale v v', which turns a vector x into one along the first axis.
typedef struct reflection {
    int count;
    double v[MOST], scale;
} reflection;

static reflection reflection_of(const double *x, int count)
{
    reflection r = {.count = count};
    double most = 0.0, square_sum = 0.0, rest = 0.0;
    for (int i = 0; i < count; i++) most = fmax(most, fabs(x[i]));
    if (most == 0.0) return r;
    for (int i = 0; i < count; i++) {
        r.v[i] = x[i] / most;
        square_sum += r.v[i] * r.v[i];
        if (i > 0) rest += r.v[i] * r.v[i];
    }
    if (rest == 0.0) return r;
    r.v[0] += copysign(sqrt(square_sum), r.v[0]);
    r.scale = 2.0 / (rest + r.v[0] * r.v[0]);
    return r;
}

// Rows `at`... of the matrix, from one column to another.
static void reflect_rows(square *m, const reflection *r, int at, int first, int last)
{
    for (int j = first; j <= last; j++) {
        double sum = 0.0;
        for (int i = 0; i < r->count; i++) sum += r->v[i] * m->a[at + i][j];
        sum *= r->scale;
        for (int i = 0; i < r->count; i++) m->a[at + i][j] -= sum * r->v[i];
    }
}

static void reflect_columns(square *m, const reflection *r, int at, int first, int last)
{
    for (int i = first; i <= last; i++) {
        double sum = 0.0;
        for (int j = 0; j < r->count; j++) sum += r->v[j] * m->a[i][at + j];
        sum *= r->scale;
        for (int j = 0; j < r->count; j++) m->a[i][at + j] -= sum * r->v[j];
    }
}

// To zeros below the first subdiagonal.
static void to_hessenberg(square *m)
{
    const int n = m->n;
    for (int k = 0; k + 2 < n; k++) {
        double x[MOST];
        for (int i = k + 1; i < n; i++) x[i - k - 1] = m->a[i][k];
        const reflection r = reflection_of(x, n - k - 1);
        reflect_rows(m, &r, k + 1, k, n - 1);
        reflect_columns(m, &r, k + 1, 0, n - 1);
        for (int i = k + 2; i < n; i++) m->a[i][k] = 0.0;
    }
}

// Two shifts: the eigenvalues of {one, ..; .., other} with this product of what stands beside.
typedef struct shifts {
    double one, other, across;
} shifts;

// One sweep over rows first..last: the bulge that the shifts make is chased down the diagonal. Its
// first column is written in differences, and divided by the element below the first: where many
// values are nearly the same, as many of a boat's lags are, nothing else would be left of it.
static void sweep(square *m, int first, int last, shifts at)
{
    double(*h)[MOST] = m->a;
    const double a = h[first][first], below = h[first + 1][first];
    const double p = at.one - a, q = at.other - a, product = p * q;
    double x[3] = {(product - at.across) / below + h[first][first + 1],
                   h[first + 1][first + 1] - a - p - q, h[first + 2][first + 1]};
    for (int k = first; k < last; k++) {
        const int count = k + 2 <= last ? 3 : 2;
        if (k > first) {
            for (int i = 0; i < count; i++) x[i] = h[k + i][k - 1];
        }
        const reflection r = reflection_of(x, count);
        reflect_rows(m, &r, k, k > first ? k - 1 : first, last);
        reflect_columns(m, &r, k, first, k + 3 < last ? k + 3 : last);
        for (int i = 1; i < count && k > first; i++) h[k + i][k - 1] = 0.0;
    }
}

// Both eigenvalues of the two rows that end with `last`.
static void pair_of(const square *m, int last, lw_complex *values)
{
    const double a = m->a[last - 1][last - 1], b = m->a[last - 1][last];
    const double c = m->a[last][last - 1], d = m->a[last][last];
    const double half = 0.5 * (a - d), across = b * c;
    const double inside = half * half + across;
    if (inside < 0.0) {
        const double im = sqrt(-inside);
        values[last - 1] = (lw_complex){d + half, im};
        values[last] = (lw_complex){d + half, -im};
        return;
    }
    const double z = half + copysign(sqrt(inside), half);
    values[last - 1] = (lw_complex){d + z, 0.0};
    values[last] = (lw_complex){z != 0.0 ? d - across / z : d, 0.0};
}

// First row of the block that ends with `last` and that nothing splits.
static int block_of(square *m, int last, double least)
{
    for (int i = last; i > 0; i--) {
        const double beside = fabs(m->a[i][i]) + fabs(m->a[i - 1][i - 1]);
        if (fabs(m->a[i][i - 1]) <= fmax(EPSILON * beside, least)) {
            m->a[i][i - 1] = 0.0;
            return i;
        }
    }
    return 0;
}

#define SWEEPS_MOST 60  // for one block; four are usual

static bool find_values(square *m, lw_complex *values)
{
    const double least = EPSILON * EPSILON * largest_of(m);
    int sweeps = 0;
    for (int last = m->n - 1; last >= 0;) {
        const int first = block_of(m, last, least);
        if (first + 1 >= last) {
            if (first == last) values[last] = (lw_complex){m->a[last][last], 0.0};
            if (first < last) pair_of(m, last, values);
            last = first - 1;
            sweeps = 0;
            continue;
        }
        if (++sweeps > SWEEPS_MOST) return false;
        const double beside = m->a[last][last - 1], d = m->a[last][last];
        shifts at = {d, m->a[last - 1][last - 1], m->a[last - 1][last] * beside};
        if (sweeps % 10 == 0) {  // others, where the usual ones run in a circle
            const double size = fabs(beside) + fabs(m->a[last - 1][last - 2]);
            at = (shifts){d + 0.75 * size, d + 0.75 * size, -0.4375 * size * size};
        }
        sweep(m, first, last, at);
    }
    return true;
}

bool lw_eigen_values(const double *matrix, int n, lw_complex *values)
{
    square m;
    double scale[MOST];
    if (!put(&m, matrix, n)) return false;
    balance(&m, scale);
    to_hessenberg(&m);
    return find_values(&m, values);
}

// The vector's greatest component becomes 1, in size and phase.
static void normalise(lw_complex *vector, int n)
{
    int top = 0;
    double most = 0.0;
    for (int i = 0; i < n; i++) {
        const double re = vector[i].re * vector[i].re, im = vector[i].im * vector[i].im;
        if (re + im > most) most = re + im, top = i;
    }
    if (most == 0.0) return;
    const lw_complex by = vector[top];
    double re[MOST];  // apart from the other part: side by side gcc 12 fuses their products
    for (int i = 0; i < n; i++) re[i] = (vector[i].re * by.re + vector[i].im * by.im) / most;
    for (int i = 0; i < n; i++) {
        vector[i].im = (vector[i].im * by.re - vector[i].re * by.im) / most;
    }
    for (int i = 0; i < n; i++) vector[i].re = re[i];
}

// (A - value) x = b of real and imaginary parts one below the other, and a little off the value: an
// exact one would leave nothing to divide by.
static bool factor_at(const square *m, lw_complex value, double off, double *matrix, int *pivot)
{
    const size_t n = (size_t)m->n, both = 2 * n;
    for (size_t i = 0; i < both * both; i++) matrix[i] = 0.0;
    for (size_t i = 0; i < n; i++) {
        double *top = matrix + i * both, *low = matrix + (n + i) * both;
        for (size_t j = 0; j < n; j++) top[j] = low[n + j] = m->a[i][j];
        top[i] -= value.re + off, low[n + i] -= value.re + off;
        top[n + i] = value.im, low[i] = -value.im;
    }
    return lw_linear_factor(matrix, (int)both, pivot);
}

// As near to the value as can be: farther where it is met several times.
static bool factor_beside(const square *m, lw_complex value, double *matrix, int *pivot)
{
    const double size = fmax(largest_of(m), 1e-290);
    double part = 1e-10;
    for (int tried = 0; tried < 4; tried++, part *= 100.0) {
        if (factor_at(m, value, part * size, matrix, pivot)) return true;
    }
    return false;
}

bool lw_eigen_vector(const double *matrix, int n, lw_complex value, lw_complex *vector)
{
    square m;
    double scale[MOST], factors[4 * MOST * MOST], x[2 * MOST];
    int pivot[2 * MOST];
    if (!put(&m, matrix, n)) return false;
    balance(&m, scale);
    if (!factor_beside(&m, value, factors, pivot)) return false;
    for (int i = 0; i < n; i++) vector[i] = (lw_complex){1.0 + 0.1 * i, 0.0};
    for (int round = 0; round < 4; round++) {
        for (int i = 0; i < n; i++) x[i] = vector[i].re, x[n + i] = vector[i].im;
        lw_linear_solve(factors, 2 * n, pivot, x);
        for (int i = 0; i < n; i++) vector[i] = (lw_complex){x[i], x[n + i]};
        normalise(vector, n);
    }
    for (int i = 0; i < n; i++) vector[i].re *= scale[i], vector[i].im *= scale[i];
    normalise(vector, n);
    return true;
}
