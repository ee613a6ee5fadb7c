// planform.h - the lifting line and other closed forms of wings, against which the lattice is held.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PLANFORM_H
#define LW_TEST_PLANFORM_H

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/elementary.h"

typedef struct lw_planform {
    double aspect;         // A   [-]  span^2 / area
    double taper;          // lambda [-] tip chord / root chord
    double section_slope;  // a_0 [1/rad]
} lw_planform;

typedef struct lw_lifting_line {
    double slope;  // a     [1/rad]  lift slope of the wing
    double drag;   // delta [-]      C_Di = C_L^2 (1 + delta) / (pi A)
    double lift;   // tau   [-]      a = a_0 / (1 + a_0 (1 + tau) / (pi A))
} lw_lifting_line;

#define LW_PLANFORM_TERMS 24  // odd ones: 1, 3, ... 47

// Gauss elimination with row interchange; the answer replaces b.
static inline void lw_planform_solve(double matrix[LW_PLANFORM_TERMS][LW_PLANFORM_TERMS],
                                     double b[LW_PLANFORM_TERMS])
{
    for (int k = 0; k < LW_PLANFORM_TERMS; k++) {
        int pivot = k;
        for (int i = k + 1; i < LW_PLANFORM_TERMS; i++) {
            if (fabs(matrix[i][k]) > fabs(matrix[pivot][k])) pivot = i;
        }
        for (int j = 0; j < LW_PLANFORM_TERMS; j++) {
            const double swap = matrix[k][j];
            matrix[k][j] = matrix[pivot][j], matrix[pivot][j] = swap;
        }
        const double swap = b[k];
        b[k] = b[pivot], b[pivot] = swap;

        for (int i = k + 1; i < LW_PLANFORM_TERMS; i++) {
            const double factor = matrix[i][k] / matrix[k][k];
            for (int j = k; j < LW_PLANFORM_TERMS; j++) matrix[i][j] -= factor * matrix[k][j];
            b[i] -= factor * b[k];
        }
    }
    for (int k = LW_PLANFORM_TERMS - 1; k >= 0; k--) {
        for (int j = k + 1; j < LW_PLANFORM_TERMS; j++) b[k] -= matrix[k][j] * b[j];
        b[k] /= matrix[k][k];
    }
}

// Coefficients A_1, A_3, ... at one radian.
static inline void lw_planform_series(lw_planform planform, double A_n[LW_PLANFORM_TERMS])
{
    const double A = planform.aspect, lambda = planform.taper, a_0 = planform.section_slope;
    double matrix[LW_PLANFORM_TERMS][LW_PLANFORM_TERMS];
    for (int i = 0; i < LW_PLANFORM_TERMS; i++) {
        const double t = (i + 1) * LW_PI / (2.0 * LW_PLANFORM_TERMS);
        const double sin_t = lw_sin(t);
        // chord / span = 2 / (A (1 + lambda)) (1 - (1 - lambda) |y| / (b/2))
        const double c = 2.0 / (A * (1.0 + lambda)) * (1.0 - (1.0 - lambda) * lw_cos(t));
        const double mu = 0.25 * a_0 * c;
        for (int j = 0; j < LW_PLANFORM_TERMS; j++) {
            const double n = 2 * j + 1;
            matrix[i][j] = lw_sin(n * t) * (mu * n + sin_t);
        }
        A_n[i] = mu * sin_t;
    }
    lw_planform_solve(matrix, A_n);
}

// Straight-tapered, untwisted, unswept wing far below the surface.
//
//     sum_n A_n sin(n t) (mu n + sin t) = mu alpha sin t,   mu = c(t) a_0 / (4 b),  n odd
//     a = pi A A_1 / alpha,   delta = sum_n>1 n (A_n / A_1)^2                     [glauert-1926]
//
// Met at 24 points of the half span, y = b/2 cos t.
// Holds for    A above 4; within 0.1 % of the theory for tapers from 0.2 to 1.
// Leaves out   sweep; chordwise spread of the load: a lifting surface is 7 % lower at A = 6.
static inline lw_lifting_line lw_planform_lifting_line(lw_planform planform)
{
    const double A = planform.aspect, a_0 = planform.section_slope;
    double A_n[LW_PLANFORM_TERMS];
    lw_planform_series(planform, A_n);

    double delta = 0.0;
    for (int j = 1; j < LW_PLANFORM_TERMS; j++) {
        const double part = A_n[j] / A_n[0];
        delta += (2 * j + 1) * part * part;
    }
    const double a = LW_PI * A * A_n[0];
    return (lw_lifting_line){
        .slope = a, .drag = delta, .lift = LW_PI * A * (1.0 / a - 1.0 / a_0) - 1.0};
}

// Lift slope of a wing of any aspect, with a_0 = 2 pi [1/rad].
//
//     a = 2 pi A / (2 + sqrt(A^2 + 4))                                            [helmbold]
//
// Within 3 % of a lifting surface, from slender to slim wings.
static inline double lw_planform_helmbold(double aspect)
{
    return 2.0 * LW_PI * aspect / (2.0 + sqrt(aspect * aspect + 4.0));
}

#define LW_PLANFORM_POINTS \
    256  // the integrand is even and periodic: midpoints converge like exp(-4 n G/b)

// Induced drag of one wing from another of the same elliptic load at a gap above it, as a part of
// its own: C_Di = C_L^2 (1 + delta + sigma) / (pi A). A foil at depth h has its image at 2 h.
//
//     sigma = -1/pi^2 int int cos t cos u ln((cos t - cos u)^2 + 4 (G/b)^2) dt du
//                                         t, u from 0 to pi; the Trefftz plane  [prandtl-116]
//
// Holds for    G/b >= 0.02 (within 1e-4); below, held at 0.02.
static inline double lw_planform_interference(double gap_over_span)
{
    const double gap = 2.0 * fmax(gap_over_span, 0.02);
    double cosine[LW_PLANFORM_POINTS];
    for (int i = 0; i < LW_PLANFORM_POINTS; i++)
        cosine[i] = lw_cos((i + 0.5) * LW_PI / LW_PLANFORM_POINTS);

    double sum = 0.0;
    for (int i = 0; i < LW_PLANFORM_POINTS; i++) {
        for (int j = 0; j <= i; j++) {
            const double apart = cosine[i] - cosine[j];
            const double part = cosine[i] * cosine[j] * lw_log(apart * apart + gap * gap);
            sum += i == j ? part : 2.0 * part;
        }
    }
    return -sum / ((double)LW_PLANFORM_POINTS * LW_PLANFORM_POINTS);
}

#endif
