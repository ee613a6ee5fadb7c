// ascent.h - the greatest value of a function of a few bounded variables, without its slopes.
// SPDX-License-Identifier: MIT
//
// Newton's method on differences. Around the best point so far the function is evaluated a little
// way off along each variable, either way, and every few rounds along each pair; that gives a
// gradient g and a second derivative H. Then
//
//     d = (lambda I - H)^-1 g,     lambda = 0, 10^-3, ... 10^3          [levenberg-1944]
//
// are evaluated side by side, from Newton's own step to a short one straight uphill, and the best
// is moved to. A variable at a bound that the gradient pushes against stays there. Evaluations come
// in batches, so that a caller can work them out side by side.

#ifndef LW_ASCENT_H
#define LW_ASCENT_H

#include <stddef.h>

#define LW_ASCENT_MOST 5  // variables

typedef struct lw_point {
    double x[LW_ASCENT_MOST];
} lw_point;

// Values of n points; one that has none is far below all others (-1e9), never a NaN.
typedef void lw_ascent_function(void *of, const lw_point *points, double *values, size_t n);

// Variables should be in units in which 1 is a long step.
typedef struct lw_ascent {
    lw_ascent_function *evaluate;
    void *of;  // what it is handed
    size_t count;
    lw_point low, high;
    double apart;  // how far the differences reach
    double gain;   // a round that gains less is the last
    int rounds;    // at most
} lw_ascent;

// Moves *at uphill as far as it goes, inside the bounds; returns the value there.
double lw_ascent_from(const lw_ascent *ascent, lw_point *at);

#endif
