// linear_many.h - factored linear equations solved for many right sides at once.
// SPDX-License-Identifier: MIT

#ifndef LW_LINEAR_MANY_H
#define LW_LINEAR_MANY_H

// Solves A X = B with the factors of lw_linear_factor; X replaces B, of n rows of `columns`
// numbers, row after row. Much faster than one by one: the inner loops run along rows.
void lw_linear_solve_many(const double *factors, int n, const int *pivot, double *b, int columns);

#endif
