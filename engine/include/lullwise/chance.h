// chance.h - how surely a mean over blocks is known, and the chance that one more block agrees.
// SPDX-License-Identifier: MIT

#ifndef LW_CHANCE_H
#define LW_CHANCE_H

// Blocks of rides: each with its own gusts and waves, and its own draw of boat, sailor and judged
// numbers (draw.h). Sets of them: set 0 has all; set b leaves out block b - 1.
#define LW_BLOCKS 8
#define LW_SETS   (LW_BLOCKS + 1)

// Standard error of what was worked out from all blocks, from what comes out with each left out: the
// jackknife [tukey-1958].
//
//     e^2 = (n - 1) / n  sum (x_b - mean of x_b)^2
double lw_jackknife(const double of_set[LW_SETS]);

// Chance that a thing that is `mean` on average over blocks, known to `error`, is above zero in one
// block more, which is one day like this, of one boat within her measurements: Student's t with
// LW_BLOCKS - 1 degrees of freedom, at mean / (error sqrt(n + 1)). Not narrower for more rides than a
// day has, and never certain.
double lw_chance(double mean, double error);

// Chance that Student's t is below t; degrees of freedom: odd. 26.7.3 of [abramowitz-stegun].
double lw_student_below(double t, int freedom);

// Too close to call: nearer than two errors.
#define LW_CLOSE 2.0

#endif
