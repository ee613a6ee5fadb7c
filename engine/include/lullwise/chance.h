// chance.h - how surely a mean or a rate is known that was counted on rides.
// SPDX-License-Identifier: MIT

#ifndef LW_CHANCE_H
#define LW_CHANCE_H

#include "lullwise/base.h"

// --- how surely a mean over blocks is known, and the chance that it has the right sign

// Blocks of rides: each with its own gusts and waves, and its own draws of boat, sailor and judged
// numbers (draw.h). Sets of them: set 0 has all; set b leaves out block b - 1.
#define LW_BLOCKS      8
#define LW_DRAWS       32
#define LW_BLOCK_DRAWS (LW_DRAWS / LW_BLOCKS)
#define LW_SETS        (LW_BLOCKS + 1)

// Standard error of what was worked out from all blocks, from what comes out with each left out:
// the jackknife [tukey-1958].
//
//     e^2 = (n - 1) / n  sum (x_b - mean of x_b)^2
double lw_jackknife(const double of_set[LW_SETS]);

// How far draws move a thing, from what each changes of it: standard deviation.
double lw_spread(const double moved[LW_DRAWS]);

// Chance that a thing is above zero which is expected to be `mean`: rides leave an error, and what
// is not known of boat, sailor and model spreads it. Student's t
// with LW_BLOCKS - 1 degrees of freedom at mean / sqrt(error^2 + spread^2).
double lw_chance(double mean, double error, double spread);

// Chance that Student's t is below t; degrees of freedom: odd. 26.7.3 of [abramowitz-stegun].
double lw_student_below(double t, int freedom);

// Too close to call: nearer than two errors.
#define LW_CLOSE 2.0

// --- how often something happens, as smooth functions of one variable, from counts of it

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

// Curves that lie beside each other, as those of pins with ever less lift do: each is pulled
// towards its neighbours. Of k curves with terms t_ij, m events being expected where n were
// counted:
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
