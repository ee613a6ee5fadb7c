// rate.h - how often something happens, as smooth functions of one variable, from counts of it.
// SPDX-License-Identifier: MIT

#ifndef LW_RATE_H
#define LW_RATE_H

#include "lullwise/base.h"

#define LW_RATE_TERMS 6
#define LW_RATE_ROWS  (LW_PINS_MOST * LW_RATE_TERMS)

// What was counted at x during some time, by one of several alike.
typedef struct lw_rate_count {
    double x;
    double events;
    double time;
    size_t curve;  // which of them
} lw_rate_count;

// What is held of ln rate before anything is counted, as standard deviations about nothing but for
// the level.
typedef struct lw_rate_prior {
    double mean, deviation;  // of the level
    double bend;             // of second differences from term to term
    double step;             // from one curve to the next; a single curve needs none
} lw_rate_prior;

// ln rate at x = 0, 1, 2, ...; straight lines between them, and the nearer end beyond.
typedef struct lw_rate_curve {
    double term[LW_RATE_TERMS];
    double covariance[LW_RATE_TERMS][LW_RATE_TERMS];
    double scatter;  // 1: as Poisson's
} lw_rate_curve;

// Curves that lie beside each other, as those of pins with ever less lift do: each is pulled towards
// its neighbours. Of k curves with terms t_ij, m events being expected where n were counted:
//
//     ln p = sum (n ln m - m) - sum (t_ij - mean)^2 / (2 k terms deviation^2)
//            - sum (t_i(j-1) - 2 t_ij + t_i(j+1))^2 / (2 bend^2)
//            - sum (t_(i+1)j - t_ij)^2 / (2 step^2)
//
// The terms are where this posterior of Poisson counts is greatest, by Newton's method; the
// covariance is the inverse of its curvature there. Counts that scatter more than Poisson's, as
// those do that come in clusters, make all errors greater: by the sum of (n - m)^2 over that of
// the counts m expected, where that is above one.
typedef struct lw_rate_family {
    size_t count;
    double term[LW_RATE_ROWS];                       // those of the first, of the second, ...
    double covariance[LW_RATE_ROWS * LW_RATE_ROWS];  // count * LW_RATE_TERMS rows
    double scatter;
} lw_rate_family;

void lw_rate_family_of(lw_rate_family *family, size_t curves, const lw_rate_count *counts, size_t n,
                       const lw_rate_prior *prior);
lw_rate_curve lw_rate_family_curve(const lw_rate_family *family, size_t i);

// Covariance of the logarithms of two rates, of curve i at x and of curve j at y.
double lw_rate_family_covariance(const lw_rate_family *family, size_t i, double x, size_t j,
                                 double y);

// A single curve.
lw_rate_curve lw_rate_curve_of(const lw_rate_count *counts, size_t n, const lw_rate_prior *prior);

double lw_rate_at(const lw_rate_curve *curve, double x);

// Standard error of the rate's logarithm: 0.5 is about a factor of 1.6 either way.
double lw_rate_log_error(const lw_rate_curve *curve, double x);

#endif
