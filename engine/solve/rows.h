// rows.h - dense linear equations with their right sides at the end of each row.
// SPDX-License-Identifier: MIT

#ifndef LW_ROWS_H
#define LW_ROWS_H

#include <stdbool.h>

// Eliminates n rows, each `stride` apart, of n numbers and `sides` right sides, downwards, with the
// largest pivot of a column; four columns at a time, so that a row is fetched once for four. False
// when the equations are singular or hold no number.
bool lw_rows_eliminate(double *rows, int n, int sides, int stride);

// The solution for one of the sides, of rows that are eliminated.
void lw_rows_solve(const double *rows, int n, int side, int stride, double *x);

// Rows of n numbers times x.
void lw_rows_times(const double *rows, int n, int stride, const double *x, double *to);

#endif
