// rate.c - a rate as a smooth function of one variable, from counts.
// SPDX-License-Identifier: MIT

#include "lullwise/rate.h"

#include <math.h>

#include "lullwise/elementary.h"
#include "solve/linear.h"

#define N          LW_RATE_TERMS
#define STEPS_MOST 100
#define STEP_MOST  1.0  // of any term: Newton's steps overshoot where far too few are expected

static void powers(double x, double power[N])
{
    power[0] = 1.0;
    for (int k = 1; k < N; k++) power[k] = power[k - 1] * x;
}

static double log_rate(const lw_rate_curve *curve, double x)
{
    double power[N], sum = 0.0;
    powers(x, power);
    for (int k = 0; k < N; k++) sum += curve->term[k] * power[k];
    return sum;
}

double lw_rate_at(const lw_rate_curve *curve, double x)
{
    return lw_exp(fmin(fmax(log_rate(curve, x), -700.0), 700.0));
}

double lw_rate_log_error(const lw_rate_curve *curve, double x)
{
    double power[N], sum = 0.0;
    powers(x, power);
    for (int i = 0; i < N; i++) {
        for (int j = 0; j < N; j++) sum += power[i] * curve->covariance[i][j] * power[j];
    }
    return sqrt(fmax(sum, 0.0));
}

// Slope of the posterior's logarithm, and its curvature, both to be less of at the top.
static void look(const lw_rate_curve *curve, const lw_rate_count *counts, size_t n,
                 const lw_rate_prior *prior, double slope[N], double curvature[N * N])
{
    for (int i = 0; i < N; i++) {
        const double weight = 1.0 / (prior->deviation[i] * prior->deviation[i]);
        slope[i] = -weight * (curve->term[i] - prior->mean[i]);
        for (int j = 0; j < N; j++) curvature[i * N + j] = i == j ? weight : 0.0;
    }
    for (size_t k = 0; k < n; k++) {
        double power[N];
        powers(counts[k].x, power);
        const double expected = counts[k].time * lw_rate_at(curve, counts[k].x);
        for (int i = 0; i < N; i++) {
            slope[i] += (counts[k].events - expected) * power[i];
            for (int j = 0; j < N; j++) curvature[i * N + j] += expected * power[i] * power[j];
        }
    }
}

// Moves the terms one step of Newton's; returns the greatest move.
static double climb(lw_rate_curve *curve, const double slope[N], const double factors[N * N],
                    const int pivot[N])
{
    double step[N], most = 0.0;
    for (int i = 0; i < N; i++) step[i] = slope[i];
    lw_linear_solve(factors, N, pivot, step);
    for (int i = 0; i < N; i++) most = fmax(most, fabs(step[i]));
    const double part = most > STEP_MOST ? STEP_MOST / most : 1.0;
    for (int i = 0; i < N; i++) curve->term[i] += part * step[i];
    return most;
}

// Sum of (n - m)^2 over that of m, the counts being fewer by the terms that were fitted to them.
static double scatter_of(const lw_rate_curve *curve, const lw_rate_count *counts, size_t n)
{
    double squares = 0.0, sum = 0.0;
    for (size_t k = 0; k < n; k++) {
        const double expected = counts[k].time * lw_rate_at(curve, counts[k].x);
        const double off = counts[k].events - expected;
        squares += off * off, sum += expected;
    }
    if (n <= N || sum <= 0.0) return 1.0;
    return fmax(squares / sum * (double)n / (double)(n - N), 1.0);
}

static void spread(lw_rate_curve *curve, const double factors[N * N], const int pivot[N])
{
    for (int j = 0; j < N; j++) {
        double column[N] = {0};
        column[j] = curve->scatter;
        lw_linear_solve(factors, N, pivot, column);
        for (int i = 0; i < N; i++) curve->covariance[i][j] = column[i];
    }
}

lw_rate_curve lw_rate_curve_of(const lw_rate_count *counts, size_t n, const lw_rate_prior *prior)
{
    lw_rate_curve curve = {.scatter = 1.0};
    double slope[N], factors[N * N];
    int pivot[N];
    for (int i = 0; i < N; i++) curve.term[i] = prior->mean[i];
    for (int step = 0; step < STEPS_MOST; step++) {
        look(&curve, counts, n, prior, slope, factors);
        if (!lw_linear_factor(factors, N, pivot)) return curve;
        if (climb(&curve, slope, factors, pivot) < 1e-12) break;
    }
    curve.scatter = scatter_of(&curve, counts, n);
    spread(&curve, factors, pivot);
    return curve;
}
