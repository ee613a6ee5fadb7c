// learning.h - what nobody can measure of a boat, learned from days that were sailed.
// SPDX-License-Identifier: MIT
//
// A day tells numbers, each with a standard error; the engine foresees each from the hidden
// quantities. They are what is most likely, given the days and what was thought before
// [tarantola-2005]:
//
//     min  sum over days r^T C^-1 r + sum over quantities ((x - x_0) / e_0)^2
//
// r: told less foreseen; C: the errors of a day's numbers and that of its wind, which they share.
// Turns are foreseen by steady flight, all else by rides through gusts and chop, in which she is
// not as fast as in an even wind: in the lulls of a light day she flies on, in puffs she is eased.
//
// Holds for    one boat, and sailors of about one weight and skill; errors that are normal.
// Leaves out   how far lulls and puffs go from the mean, chop, water and air of single days, for
//              which those in their middle stand.

#ifndef LW_LEARNING_H
#define LW_LEARNING_H

#include "lullwise/foreseen.h"
#include "lullwise/learned.h"

// How a row of rides moves with a quantity: a line over the wind, and more of one in light winds.
#define LW_TREND_TERMS 3
typedef struct lw_trend {
    double line[LW_LESSON_COUNT][LW_HIDDEN_COUNT][LW_TREND_TERMS];
} lw_trend;

// A round is of what was thought before, by rides too; the next of one error beside that; then what
// is most likely by these is the middle, by rides too; the fourth is of steady flight beside it.
// If what comes of that is far from the middle, steady flight is asked twice more, from there.
#define LW_LEARNING_ROUNDS 6
#define LW_LEARNING_SETS   (2 * LW_HIDDEN_COUNT)  // of values in a round, at most

// On its way, in errors before any day. The season must outlive it.
typedef struct lw_learning {
    const lw_season *season;
    lw_craft craft;  // as measured
    lw_hidden before, errors;
    lw_flights measured;                                      // before
    double middle[LW_HIDDEN_COUNT];                           // of the steady flights tried last
    double ridden_at[LW_HIDDEN_COUNT];                        // and of the rides
    lw_flights first;                                         // there
    lw_walk walks[LW_PINS_MOST][LW_COURSE_COUNT];             // there; of no craft any more
    lw_flights more[LW_HIDDEN_COUNT], less[LW_HIDDEN_COUNT];  // one error beside
    lw_trend trend;
    size_t round, rounds;                           // that is to be done, of so many
    bool is_done[LW_LEARNING_SETS * LW_PINS_MOST];  // of its steps
} lw_learning;

void lw_learning_begin(lw_learning *learning, const lw_season *season);

// Steps that there are by now; when all are done there may be more. Those of now stand apart.
size_t lw_learning_steps(lw_learning *learning);
void lw_learning_step(lw_learning *learning, size_t step);
bool lw_learning_is_whole(const lw_learning *learning);  // all those of now are done

// With all steps done: what is learned of all days; how well those left out are foreseen.
lw_learned lw_learning_end(const lw_learning *learning);
lw_left_out lw_learning_left_out(const lw_learning *learning);

#endif
