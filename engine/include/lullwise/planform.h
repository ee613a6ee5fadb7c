// planform.h - wings of finite span: lift slope and induced drag by the lifting line.
// SPDX-License-Identifier: MIT

#ifndef LW_PLANFORM_H
#define LW_PLANFORM_H

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

// Straight-tapered, untwisted, unswept wing far below the surface.
//
//     sum_n A_n sin(n t) (mu n + sin t) = mu alpha sin t,   mu = c(t) a_0 / (4 b),  n odd
//     a = pi A A_1 / alpha,   delta = sum_n>1 n (A_n / A_1)^2                     [glauert-1926]
//
// Met at 24 points of the half span, y = b/2 cos t.
// Holds for    A above 4; within 0.1 % of the theory for tapers from 0.2 to 1.
// Leaves out   sweep; chordwise spread of the load: a lifting surface is 7 % lower at A = 6.
lw_lifting_line lw_planform_lifting_line(lw_planform planform);

// Lift slope of a wing of any aspect, with a_0 = 2 pi [1/rad].
//
//     a = 2 pi A / (2 + sqrt(A^2 + 4))                                            [helmbold]
//
// Within 3 % of a lifting surface, from slender to slim wings.
double lw_planform_helmbold(double aspect);

// Induced drag of one wing from another of the same elliptic load at a gap above it, as a part of
// its own: C_Di = C_L^2 (1 + delta + sigma) / (pi A). A foil at depth h has its image at 2 h.
//
//     sigma = -1/pi^2 int int cos t cos u ln((cos t - cos u)^2 + 4 (G/b)^2) dt du
//                                         t, u from 0 to pi; the Trefftz plane  [prandtl-116]
//
// Holds for    G/b >= 0.02 (within 1e-4); below, held at 0.02.
double lw_planform_interference(double gap_over_span);

#endif
