// rate.c - rates as smooth functions of one variable, from counts.
// SPDX-License-Identifier: MIT

#include "lullwise/chance.h"

#include <math.h>
#include <string.h>

#include "lullwise/elementary.h"
#include "solve/linear.h"

#define N          LW_RATE_TERMS
#define STEPS_MOST 100
#define STEP_MOST  1.0  // of any term: Newton's steps overshoot where far too few are expected

// The two terms between which x lies, and their parts.
typedef struct between {
    size_t at;
    double part[2];
} between;

static between between_of(double x)
{
    const double along = fmin(fmax(x, 0.0), N - 1.0);
    const double at = fmin(floor(along), N - 2.0);
    return (between){(size_t)at, {at + 1.0 - along, along - at}};
}

static double rate_at(const double term[N], double x)
{
    const between b = between_of(x);
    const double sum = b.part[0] * term[b.at] + b.part[1] * term[b.at + 1];
    return lw_exp(fmin(fmax(sum, -700.0), 700.0));
}

double lw_rate_at(const lw_rate_curve *curve, double x) { return rate_at(curve->term, x); }

double lw_rate_log_error(const lw_rate_curve *curve, double x)
{
    const between b = between_of(x);
    double sum = 0.0;
    for (size_t i = 0; i < 2; i++) {
        for (size_t j = 0; j < 2; j++) {
            sum += b.part[i] * b.part[j] * curve->covariance[b.at + i][b.at + j];
        }
    }
    return sqrt(fmax(sum, 0.0));
}

double lw_rate_family_covariance(const lw_rate_family *family, size_t i, double x, size_t j,
                                 double y)
{
    const size_t rows = N * family->count;
    const between one = between_of(x), other = between_of(y);
    double sum = 0.0;
    for (size_t a = 0; a < 2; a++) {
        const double *row = family->covariance + (N * i + one.at + a) * rows;
        for (size_t b = 0; b < 2; b++) {
            sum += one.part[a] * other.part[b] * row[N * j + other.at + b];
        }
    }
    return sum;
}

lw_rate_curve lw_rate_family_curve(const lw_rate_family *family, size_t i)
{
    const size_t rows = N * family->count;
    lw_rate_curve curve = {.scatter = family->scatter};
    for (size_t a = 0; a < N; a++) {
        curve.term[a] = family->term[N * i + a];
        for (size_t b = 0; b < N; b++) {
            curve.covariance[a][b] = family->covariance[(N * i + a) * rows + N * i + b];
        }
    }
    return curve;
}

// The slope of the posterior's logarithm, and its curvature, both to be less of at the top.
typedef struct peak {
    double slope[LW_RATE_ROWS], factors[LW_RATE_ROWS * LW_RATE_ROWS];
    int pivot[LW_RATE_ROWS];
} peak;

// A normal prior: the sum of n terms, each times its part and `apart` rows from the one before, is
// `mean` within a deviation of 1 / sqrt(weight).
typedef struct normal {
    double part[3];
    size_t n, apart;
    double mean, weight;
} normal;

// Adds that of the terms from row `first` on.
static void add_normal(const lw_rate_family *family, const normal *p, size_t first, peak *top)
{
    const size_t rows = N * family->count;
    double off = -p->mean;
    for (size_t i = 0; i < p->n; i++) off += p->part[i] * family->term[first + i * p->apart];
    for (size_t i = 0; i < p->n; i++) {
        const size_t row = first + i * p->apart;
        top->slope[row] -= p->weight * p->part[i] * off;
        for (size_t j = 0; j < p->n; j++) {
            top->factors[row * rows + first + j * p->apart] += p->weight * p->part[i] * p->part[j];
        }
    }
}

static double weight_of(double deviation) { return 1.0 / (deviation * deviation); }

static void add_prior(const lw_rate_family *family, const lw_rate_prior *prior, peak *top)
{
    const size_t rows = N * family->count;
    const double wide = weight_of(prior->deviation) / (double)rows;
    const normal level = {{1.0}, 1, 1, prior->mean, wide};
    const normal bend = {{1.0, -2.0, 1.0}, 3, 1, 0.0, weight_of(prior->bend)};
    const normal step = {{1.0, -1.0}, 2, N, 0.0, weight_of(prior->step)};
    for (size_t row = 0; row < rows; row++) {
        add_normal(family, &level, row, top);
        if (row % N + 2 < N) add_normal(family, &bend, row, top);
        if (row + N < rows) add_normal(family, &step, row, top);
    }
}

static void add_count(const lw_rate_family *family, const lw_rate_count *count, peak *top)
{
    const size_t first = N * count->curve, rows = N * family->count;
    const double expected = count->time * rate_at(family->term + first, count->x);
    const between b = between_of(count->x);
    for (size_t i = 0; i < 2; i++) {
        const size_t row = first + b.at + i;
        top->slope[row] += (count->events - expected) * b.part[i];
        for (size_t j = 0; j < 2; j++) {
            top->factors[row * rows + first + b.at + j] += expected * b.part[i] * b.part[j];
        }
    }
}

static void look(const lw_rate_family *family, const lw_rate_count *counts, size_t n,
                 const lw_rate_prior *prior, peak *top)
{
    memset(top, 0, sizeof *top);
    add_prior(family, prior, top);
    for (size_t k = 0; k < n; k++) add_count(family, &counts[k], top);
}

// Moves the terms one step of Newton's; returns the greatest move.
static double climb(lw_rate_family *family, peak *top)
{
    const int rows = (int)(N * family->count);
    double most = 0.0;
    lw_linear_solve(top->factors, rows, top->pivot, top->slope);
    for (int i = 0; i < rows; i++) most = fmax(most, fabs(top->slope[i]));
    const double part = most > STEP_MOST ? STEP_MOST / most : 1.0;
    for (int i = 0; i < rows; i++) family->term[i] += part * top->slope[i];
    return most;
}

// Sum of (n - m)^2 over that of m, the counts being fewer by the terms that were fitted to them.
static double scatter_of(const lw_rate_family *family, const lw_rate_count *counts, size_t n)
{
    const size_t rows = N * family->count;
    double squares = 0.0, sum = 0.0;
    for (size_t k = 0; k < n; k++) {
        const double *term = family->term + N * counts[k].curve;
        const double expected = counts[k].time * rate_at(term, counts[k].x);
        const double off = counts[k].events - expected;
        squares += off * off, sum += expected;
    }
    if (n <= rows || sum <= 0.0) return 1.0;
    return fmax(squares / sum * (double)n / (double)(n - rows), 1.0);
}

static void spread(lw_rate_family *family, const peak *top)
{
    const size_t rows = N * family->count;
    for (size_t j = 0; j < rows; j++) {
        double column[LW_RATE_ROWS] = {0};
        column[j] = family->scatter;
        lw_linear_solve(top->factors, (int)rows, top->pivot, column);
        for (size_t i = 0; i < rows; i++) family->covariance[i * rows + j] = column[i];
    }
}

void lw_rate_family_of(lw_rate_family *family, size_t curves, const lw_rate_count *counts, size_t n,
                       const lw_rate_prior *prior)
{
    peak top;
    memset(family, 0, sizeof *family);
    family->count = curves, family->scatter = 1.0;
    for (size_t i = 0; i < N * curves; i++) family->term[i] = prior->mean;
    for (int step = 0; step < STEPS_MOST; step++) {
        look(family, counts, n, prior, &top);
        if (!lw_linear_factor(top.factors, (int)(N * curves), top.pivot)) return;
        if (climb(family, &top) < 1e-12) break;
    }
    family->scatter = scatter_of(family, counts, n);
    spread(family, &top);
}

lw_rate_curve lw_rate_curve_of(const lw_rate_count *counts, size_t n, const lw_rate_prior *prior)
{
    lw_rate_family family;
    lw_rate_family_of(&family, 1, counts, n, prior);
    return lw_rate_family_curve(&family, 0);
}
