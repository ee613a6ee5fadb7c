// eigen.h - eigenvalues and eigenvectors of a small real matrix of any kind.
// SPDX-License-Identifier: MIT

#ifndef LW_EIGEN_H
#define LW_EIGEN_H

#include <stdbool.h>

#define LW_EIGEN_MOST 24  // rows at most

// A complex number.
typedef struct lw_complex {
    double re, im;
} lw_complex;

// All n eigenvalues of a matrix of n rows of n, row after row: A x = lambda x. Pairs stand
// together, the one with the positive imaginary part first, and are conjugate to the last bit.
// False when the matrix holds what is no number or the search does not end; the values are then of
// no use.
//
// Balanced [parlett-reinsch-1969], brought to Hessenberg's form by reflections [householder-1958],
// then QR with two shifts a sweep [francis-1961].
bool lw_eigen_values(const double *matrix, int n, lw_complex *values);

// The vector of an eigenvalue, its greatest component 1; by inverse iteration
// [peters-wilkinson-1971]. Of an eigenvalue met several times: one of its vectors. False as above.
bool lw_eigen_vector(const double *matrix, int n, lw_complex value, lw_complex *vector);

#endif
