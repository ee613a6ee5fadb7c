// lifting_line.c - Prandtl's lifting line by Glauert's series.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/elementary.h"
#include "lullwise/planform.h"

#define TERMS 24  // odd ones: 1, 3, ... 47

// Gauss elimination with row interchange; the answer replaces b.
static void solve(double matrix[TERMS][TERMS], double b[TERMS])
{
    for (int k = 0; k < TERMS; k++) {
        int pivot = k;
        for (int i = k + 1; i < TERMS; i++) {
            if (fabs(matrix[i][k]) > fabs(matrix[pivot][k])) pivot = i;
        }
        for (int j = 0; j < TERMS; j++) {
            const double swap = matrix[k][j];
            matrix[k][j] = matrix[pivot][j], matrix[pivot][j] = swap;
        }
        const double swap = b[k];
        b[k] = b[pivot], b[pivot] = swap;

        for (int i = k + 1; i < TERMS; i++) {
            const double factor = matrix[i][k] / matrix[k][k];
            for (int j = k; j < TERMS; j++) matrix[i][j] -= factor * matrix[k][j];
            b[i] -= factor * b[k];
        }
    }
    for (int k = TERMS - 1; k >= 0; k--) {
        for (int j = k + 1; j < TERMS; j++) b[k] -= matrix[k][j] * b[j];
        b[k] /= matrix[k][k];
    }
}

// Coefficients A_1, A_3, ... at one radian.
static void series_of(lw_planform planform, double A_n[TERMS])
{
    const double A = planform.aspect, lambda = planform.taper, a_0 = planform.section_slope;
    double matrix[TERMS][TERMS];
    for (int i = 0; i < TERMS; i++) {
        const double t = (i + 1) * LW_PI / (2.0 * TERMS);
        const double sin_t = lw_sin(t);
        // chord / span = 2 / (A (1 + lambda)) (1 - (1 - lambda) |y| / (b/2))
        const double c = 2.0 / (A * (1.0 + lambda)) * (1.0 - (1.0 - lambda) * lw_cos(t));
        const double mu = 0.25 * a_0 * c;
        for (int j = 0; j < TERMS; j++) {
            const double n = 2 * j + 1;
            matrix[i][j] = lw_sin(n * t) * (mu * n + sin_t);
        }
        A_n[i] = mu * sin_t;
    }
    solve(matrix, A_n);
}

lw_lifting_line lw_planform_lifting_line(lw_planform planform)
{
    const double A = planform.aspect, a_0 = planform.section_slope;
    double A_n[TERMS];
    series_of(planform, A_n);

    double delta = 0.0;
    for (int j = 1; j < TERMS; j++) {
        const double part = A_n[j] / A_n[0];
        delta += (2 * j + 1) * part * part;
    }
    const double a = LW_PI * A * A_n[0];
    return (lw_lifting_line){
        .slope = a, .drag = delta, .lift = LW_PI * A * (1.0 / a - 1.0 / a_0) - 1.0};
}

double lw_planform_helmbold(double aspect)
{
    return 2.0 * LW_PI * aspect / (2.0 + sqrt(aspect * aspect + 4.0));
}
