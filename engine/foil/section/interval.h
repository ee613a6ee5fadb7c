// interval.h - inside the section folder: the equations of a layer between two stations.
// SPDX-License-Identifier: MIT

#ifndef LW_INTERVAL_H
#define LW_INTERVAL_H

#include "foil/section/closure.h"

enum { LW_OF_MOMENTUM, LW_OF_ENERGY, LW_OF_THIRD, LW_EQUATIONS };

// A station: how far from the stagnation point, its unknowns, and what they make.
typedef struct lw_station {
    double x;
    lw_layer_place at;
    lw_closure closure;
} lw_station;

// What is left of the equations, and its slopes along the unknowns and places of both ends, and
// along those of the station before the first, on which waves depend.
typedef struct lw_interval {
    double left[LW_EQUATIONS];
    lw_four by_0[LW_EQUATIONS], by_1[LW_EQUATIONS], by_2[LW_EQUATIONS];
    double by_x_1[LW_EQUATIONS], by_x_2[LW_EQUATIONS];
} lw_interval;

// Between two stations of one kind. Of a laminar layer the third is left to lw_waves_grow.
void lw_interval_of(lw_layer_kind kind, const lw_station *a, const lw_station *b, lw_interval *of);

// n a little behind a station, drawn on from its growth there and at the station before (NULL:
// none), never falling:
//
//     n(x) = n_1 + a_1 d + b d^2 / 2,   d = x - x_1,   b = (a_1 - a_0) / (x_1 - x_0)
//
// So n follows from what is upstream, and a place of transition from n is the only one.
typedef struct lw_waves {
    double n, slope;     // behind the way asked for
    lw_four by_0, by_1;  // of n
} lw_waves;
void lw_waves_grow(const lw_station *before, const lw_station *from, double way, double full,
                   lw_waves *waves);

// Transition between two stations.
typedef struct lw_turn {
    double part;         // of the way that is laminar
    lw_four by_0, by_1;  // its slopes
} lw_turn;

// The way, at most `full`, after which waves have grown to `most`; above it none.
void lw_turn_of(const lw_station *before, const lw_station *from, double full, double most,
                lw_turn *turn);

// Laminar up to there, turbulent from there on.
void lw_interval_turning(double log_reynolds, const lw_station *a, const lw_station *b,
                         const lw_turn *turn, lw_interval *of);

#endif
