// hyperbolic.h - sinh, cosh, tanh over lanes, without a branch or a table.
// SPDX-License-Identifier: MIT

#ifndef LW_HYPERBOLIC_H
#define LW_HYPERBOLIC_H

#include "solve/exponential.h"

// exp(x) / 2 as a pair, infinite only where sinh and cosh are; x >= 0
LW_INLINE lw_pair lw_half_exp(lw_lanes x)
{
    const lw_exponential e = lw_exp_of(x, lw_all(0.0));
    const lw_lanes n = e.power - 1.0;
    return (lw_pair){lw_scaled(e.value.high, n), lw_scaled(e.value.low, n)};
}

// Taylor series below 1, exponentials above.
// Holds for    all x; infinite beyond 710.47.    Below 0.9 ulp.
LW_INLINE lw_lanes lw_lanes_sinh(lw_lanes x)
{
    const lw_lanes ax = lw_lanes_abs(x), z = ax * ax;
    const double S3 = 1.0 / 6, S5 = S3 / 20, S7 = S5 / 42, S9 = S7 / 72, S11 = S9 / 110,
                 S13 = S11 / 156, S15 = S13 / 210, S17 = S15 / 272, S19 = S17 / 342;
    const lw_lanes end = S13 + z * (S15 + z * (S17 + z * S19));
    const lw_lanes bend = S3 + z * (S5 + z * (S7 + z * (S9 + z * (S11 + z * end))));
    const lw_lanes near = ax + ax * (z * bend);

    const lw_pair half = lw_half_exp(ax);
    const lw_lanes far = half.high + (half.low - 0.25 / half.high);
    return lw_flip(lw_select(ax < 1.0, near, far), lw_sign_of(x));
}

// Holds for    all x; infinite beyond 710.47.    Below 0.9 ulp.
LW_INLINE lw_lanes lw_lanes_cosh(lw_lanes x)
{
    const lw_pair half = lw_half_exp(lw_lanes_abs(x));
    return half.high + (half.low + 0.25 / half.high);
}

// A rational function below 0.625 [cephes]; above, 1 - 2 / (exp(2 x) + 1).
// Holds for    all x.    Below 0.9 ulp.
LW_INLINE lw_lanes lw_lanes_tanh(lw_lanes x)
{
    const double P0 = -1.61468768441708447952e+03, P1 = -9.92877231001918586564e+01,
                 P2 = -9.64399179425052238628e-01;
    const double Q0 = 4.84406305325125486048e+03, Q1 = 2.23548839060100448583e+03,
                 Q2 = 1.12811678491632931402e+02;

    const lw_lanes ax = lw_lanes_abs(x), z = ax * ax;
    const lw_lanes bend = (P0 + z * (P1 + z * P2)) / (Q0 + z * (Q1 + z * (Q2 + z)));
    const lw_lanes near = ax + ax * (z * bend);

    // from 22 on the result is 1
    const lw_lanes within = lw_select(ax > 22.0, lw_all(22.0), ax);
    const lw_pair half = lw_half_exp(within + within);
    const lw_pair sum = lw_pair_sum(half.high, lw_all(0.5));
    const lw_pair part = lw_pair_quotient(lw_all(1.0), (lw_pair){sum.high, sum.low + half.low});
    const lw_lanes far = 1.0 - (part.high + part.low);
    return lw_flip(lw_select(ax < 0.625, near, far), lw_sign_of(x));
}

#endif
