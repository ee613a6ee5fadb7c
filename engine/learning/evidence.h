// evidence.h - what days add to what is known of the hidden quantities, which are counted here in
// their errors before any day, from what was thought then: z = (x - x_0) / e_0.
// SPDX-License-Identifier: MIT

#ifndef LW_EVIDENCE_H
#define LW_EVIDENCE_H

#include "lullwise/learning.h"

// Behind them stands what days are off alike, for each row of the lessons: in any wind, and then
// evenly more with the wind. Steady flight is not gusts and chop, and a sailor may have a habit.
// In its own error, which is a part of the row's.
#define LW_UNKNOWNS (LW_HIDDEN_COUNT + 2 * LW_LESSON_COUNT)

// Quantities that steady flight shows are the first of the table.
#define LW_STEADY_COUNT 6

// How numbers told depend on z, all of one day, in one wind.
#define LW_TERMS_MOST (2 * LW_LESSON_COUNT)
typedef struct lw_terms {
    size_t count;
    size_t row[LW_TERMS_MOST];       // of the lesson
    double foreseen[LW_TERMS_MOST];  // [SI] at z
    double error[LW_TERMS_MOST];     // [SI] of the number told
    double by_wind[LW_TERMS_MOST];   // [SI/(m/s)]
    double slope[LW_TERMS_MOST][LW_UNKNOWNS];
} lw_terms;

// Adds a row of the lessons with a pin in a wind, at z. False: it is not foreseen for all that was
// tried.
bool lw_terms_add(lw_terms *terms, const lw_learning *learning, const lw_lesson_day *day,
                  size_t row, const double z[LW_UNKNOWNS]);

// Precision, and what it pulls towards: before any day one and nothing.
typedef struct lw_evidence {
    double precision[LW_UNKNOWNS][LW_UNKNOWNS];
    double pull[LW_UNKNOWNS];
} lw_evidence;

lw_evidence lw_evidence_before(const double z[LW_UNKNOWNS]);

// With C = E + s s^T, E the errors squared and s = by_wind x the wind's error, C^-1 is by
// Sherman and Morrison  [golub-van-loan].
//     C^-1 = E^-1 - E^-1 s s^T E^-1 / (1 + s^T E^-1 s)
// told: NULL, where only the precision matters.
void lw_evidence_add(lw_evidence *evidence, const lw_terms *terms, const double *told);

// Solves precision x = right, in place; false where it cannot be.
bool lw_evidence_solve(const lw_evidence *evidence, double right[LW_UNKNOWNS]);

// How far the told numbers of a day are from those foreseen once its wind is taken as it fits best,
// within its error: put in the place of `off`.
//     w = s^T E^-1 r / (1 + s^T E^-1 s),   r - w s
void lw_terms_fit_wind(const lw_terms *terms, double off[LW_TERMS_MOST]);

// Most likely z of all days but every LW_FOLDS-th from `left_out` on; LW_FOLDS: none is left out.
#define LW_FOLDS 5
lw_evidence lw_evidence_of(const lw_learning *learning, size_t left_out, double z[LW_UNKNOWNS]);

// Nothing is off alike in the second.
lw_hidden lw_hidden_at(const lw_learning *learning, const double z[LW_UNKNOWNS]);
void lw_hidden_from(const lw_learning *learning, const lw_hidden *hidden, double z[LW_UNKNOWNS]);

#endif
