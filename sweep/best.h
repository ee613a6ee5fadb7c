// best.h - hardware sought within bounds: which candidates are tried, and what comes of it.
// SPDX-License-Identifier: MIT
//
// A compass search [hooke-jeeves-1961] on the grid of the bounds, from the boat as she is: of all
// neighbours a step away along one quantity it goes to the best; where none is better the steps are
// halved, down to one of the grid. First all quantities together, then each alone. Every candidate
// meets the same cases with the same seeds. What was found is then judged by other seeds, so that a
// lucky set is not taken for a good foil.
//
// It asks for points and is told what they are worth, in any order; which candidates it tries hangs
// on nothing else.

#ifndef LW_BEST_H
#define LW_BEST_H

#include <math.h>

#include "sweep/sweep.h"

#define LW_BEST_FOUND (LW_SOUGHT_MOST + 1)  // all together, then each alone

#define LW_NOT_YET INFINITY

// A candidate with a set of seeds, in all cases.
typedef struct lw_trial {
    size_t candidate, set;
    double *worth;  // case by case; NAN: nothing; LW_NOT_YET: not worked out
} lw_trial;

typedef struct lw_best {
    const lw_sweep *sweep;
    lw_trial *trials;
    size_t trial_count, trial_room;
    size_t batch;   // trials from here on are under way
    size_t next;    // of their points
    size_t waited;  // points of theirs that are not there yet
    // the search
    size_t found_count;           // searches: all together, and each alone where two are sought
    size_t found[LW_BEST_FOUND];  // candidates where they ended
    size_t searched;              // of these that have ended
    size_t at[LW_SOUGHT_MOST];    // where the one that is under way stands
    size_t steps[LW_SOUGHT_MOST];
    bool has_begun, is_checking, is_checked, is_over;
    bool is_short;  // of memory
} lw_best;

void lw_best_begin(lw_best *best, const lw_sweep *sweep);
void lw_best_end(lw_best *best);

// A point to be worked out; false: there is none until more are told, or it is over.
bool lw_best_next(lw_best *best, size_t *point);
void lw_best_put(lw_best *best, size_t point, double worth);

// Points that may be handed out now, and all that were wanted so far.
size_t lw_best_waiting(const lw_best *best);
size_t lw_best_wanted(const lw_best *best);

// What a candidate gains over the boat as she is, on average over the cases in which she can be
// sailed, or in one case; by the seeds of the checks once they are there. error: a standard error
// by the sets of seeds; 0 where there are no rides. NAN: nothing is known.
#define LW_ALL_CASES ((size_t)-1)
typedef struct lw_gain {
    double mean, error;
} lw_gain;
lw_gain lw_best_gain(const lw_best *best, size_t candidate, size_t which);
double lw_best_own_worth(const lw_best *best, size_t which);  // of the boat as she is

#endif
