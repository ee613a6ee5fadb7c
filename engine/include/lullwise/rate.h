// rate.h - how often something happens, as a smooth function of one variable, from counts of it.
// SPDX-License-Identifier: MIT

#ifndef LW_RATE_H
#define LW_RATE_H

#include "lullwise/base.h"

#define LW_RATE_TERMS 3

// What was counted at x during some time.
typedef struct lw_rate_count {
    double x;
    double events;
    double time;
} lw_rate_count;

// What is held of the terms before anything is counted: normal, with these deviations.
typedef struct lw_rate_prior {
    double mean[LW_RATE_TERMS], deviation[LW_RATE_TERMS];
} lw_rate_prior;

//     ln rate = a + b x + c x^2
//
// The terms are where the posterior of Poisson counts is greatest, by Newton's method; the
// covariance is the inverse of its curvature there. Counts that scatter more than Poisson's, as
// those do that come in clusters, make all errors greater: by the sum of (n - m)^2 over that of
// the counts m expected, where that is above one.
typedef struct lw_rate_curve {
    double term[LW_RATE_TERMS];
    double covariance[LW_RATE_TERMS][LW_RATE_TERMS];
    double scatter;  // 1: as Poisson's
} lw_rate_curve;

lw_rate_curve lw_rate_curve_of(const lw_rate_count *counts, size_t n, const lw_rate_prior *prior);

double lw_rate_at(const lw_rate_curve *curve, double x);

// Standard error of the rate's logarithm: 0.5 is about a factor of 1.6 either way.
double lw_rate_log_error(const lw_rate_curve *curve, double x);

#endif
