// chance.h - how surely a mean over blocks is known, and the chance that it has the right sign.
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

// How far draws move a thing, from what they change of it in each block: root mean square.
double lw_spread(const double moved[LW_BLOCKS]);

// Chance that a thing is above zero which is `mean` as far as rides and numbers as given have it: rides
// leave an error, and what is not known of boat, sailor and model spreads it. Student's t with
// LW_BLOCKS - 1 degrees of freedom at mean / sqrt(error^2 + spread^2).
double lw_chance(double mean, double error, double spread);

// Chance that Student's t is below t; degrees of freedom: odd. 26.7.3 of [abramowitz-stegun].
double lw_student_below(double t, int freedom);

// Too close to call: nearer than two errors.
#define LW_CLOSE 2.0

#endif
