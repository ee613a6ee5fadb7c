// rank.h - the two parts in a sweep on many machines: one root, and ranks that work for it.
// SPDX-License-Identifier: MIT

#ifndef LW_RANK_H
#define LW_RANK_H

#include "sweep/store.h"

#define LW_BEAT 1.0  // [s] between words that a rank is still there

// The root: hands points out in chunks, keeps what comes of them, and works itself with so many
// threads, until all is done, or named as a gap: points of a rank from which nothing was heard for
// `patience` [s] are handed out once more. wants_end: by Ctrl-C. True when every rank was there to
// the end. MPI_Init_thread before; lw_root_dismiss behind, when the table is written.
typedef struct lw_root_plan {
    size_t threads;
    double patience;  // [s]
    int ranks;        // the root among them
    bool (*wants_end)(void);
    void (*progress)(const char *what, size_t done, size_t all);
} lw_root_plan;
bool lw_root_run(lw_store *store, const lw_root_plan *plan);

// Tells all ranks that it is over. are_whole: all are there; else they end without MPI_Finalize,
// which would wait for those that are gone.
void lw_root_dismiss(int ranks, bool are_whole);

// A rank: works until the root says that it is over. True: MPI_Finalize may be called.
bool lw_rank_run(const lw_sweep *sweep, size_t threads);

// One that cannot take part, in place of that.
bool lw_rank_decline(void);

#endif
