// bspline.c - coefficients of a cubic B-spline from its values.
// SPDX-License-Identifier: MIT

#include "solve/bspline.h"

#include <assert.h>

#define MOST 64

// (c_k-1 + 4 c_k + c_k+1) / 6 = f_k, and the fourth difference of the first and last five c is
// none: that alone gives c_1 = (8 f_1 - f_0 - f_2) / 6, and the same at the end. The rest between
// them is tridiagonal.
void lw_bspline_fit(double *row, int n, ptrdiff_t stride)
{
    assert(n >= 5 && n <= MOST);
    double f[MOST], c[MOST + 2], part[MOST];
    for (int k = 0; k < n; k++) f[k] = row[(k + 1) * stride];
    double *const at = c + 1;
    at[1] = (8.0 * f[1] - f[0] - f[2]) / 6.0;
    at[n - 2] = (8.0 * f[n - 2] - f[n - 1] - f[n - 3]) / 6.0;
    part[1] = 0.0;
    for (int k = 2; k < n - 2; k++) {
        part[k] = 1.0 / (4.0 - part[k - 1]);
        at[k] = part[k] * (6.0 * f[k] - at[k - 1]);
    }
    for (int k = n - 3; k > 1; k--) at[k] -= part[k] * at[k + 1];
    at[0] = 6.0 * f[1] - 4.0 * at[1] - at[2];
    at[-1] = 6.0 * f[0] - 4.0 * at[0] - at[1];
    at[n - 1] = 6.0 * f[n - 2] - 4.0 * at[n - 2] - at[n - 3];
    at[n] = 6.0 * f[n - 1] - 4.0 * at[n - 1] - at[n - 2];
    for (int k = -1; k <= n; k++) row[(k + 1) * stride] = at[k];
}
