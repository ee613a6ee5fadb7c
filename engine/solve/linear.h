// linear.h - dense linear equations of any size, in the caller's storage.
// SPDX-License-Identifier: MIT

#ifndef LW_LINEAR_H
#define LW_LINEAR_H

#include <stdbool.h>

// Factors a matrix of n rows of n, row after row, in place: P A = L U, rows interchanged for the
// largest pivot. `pivot` takes n row numbers. False when the matrix is singular to working
// precision or holds a NaN; it is then of no use.
bool lw_linear_factor(double *matrix, int n, int *pivot);

// Solves A x = b with the factors; x replaces b. One factoring serves any number of b.
void lw_linear_solve(const double *factors, int n, const int *pivot, double *b);

#endif
