// matrix.h - small square matrices over lanes: inversion and Broyden's update.
// SPDX-License-Identifier: MIT

#ifndef LW_MATRIX_H
#define LW_MATRIX_H

#include "solve/lanes.h"

#define LW_ORDER 6

typedef struct lw_matrix {
    lw_lanes at[LW_ORDER][LW_ORDER];
} lw_matrix;

LW_INLINE void lw_matrix_take(lw_matrix *matrix, const lw_matrix *other, lw_mask where)
{
    for (int i = 0; i < LW_ORDER; i++) {
        for (int j = 0; j < LW_ORDER; j++) {
            matrix->at[i][j] = lw_select(where, other->at[i][j], matrix->at[i][j]);
        }
    }
}

LW_INLINE void lw_matrix_times(const lw_matrix *matrix, const lw_lanes v[LW_ORDER],
                               lw_lanes out[LW_ORDER])
{
    for (int i = 0; i < LW_ORDER; i++) {
        out[i] = lw_all(0.0);
        for (int j = 0; j < LW_ORDER; j++) out[i] += matrix->at[i][j] * v[j];
    }
}

LW_INLINE void lw_swap_where(lw_mask where, lw_lanes *a, lw_lanes *b)
{
    const lw_lanes old = *a;
    *a = lw_select(where, *b, old);
    *b = lw_select(where, old, *b);
}

// Brings the largest of column k, at or below the diagonal, to the diagonal, lane by lane.
LW_INLINE void lw_matrix_pivot(lw_matrix *a, lw_matrix *inverse, int k)
{
    for (int i = k + 1; i < LW_ORDER; i++) {
        const lw_mask larger = lw_lanes_abs(a->at[i][k]) > lw_lanes_abs(a->at[k][k]);
        if (!lw_any(larger)) continue;
        for (int j = 0; j < LW_ORDER; j++) {
            if (j >= k) lw_swap_where(larger, &a->at[k][j], &a->at[i][j]);
            lw_swap_where(larger, &inverse->at[k][j], &inverse->at[i][j]);
        }
    }
}

// Inverse by Gauss-Jordan elimination; `a` is used up. A pivot below 1e-12 counts as 1e-12.
LW_INLINE void lw_matrix_invert(lw_matrix *a, lw_matrix *inverse)
{
    for (int i = 0; i < LW_ORDER; i++) {
        for (int j = 0; j < LW_ORDER; j++) inverse->at[i][j] = lw_all(i == j);
    }
    for (int k = 0; k < LW_ORDER; k++) {
        lw_matrix_pivot(a, inverse, k);
        const lw_lanes pivot = a->at[k][k];
        const lw_lanes d = 1.0 / lw_select(lw_lanes_abs(pivot) < 1e-12, lw_all(1e-12), pivot);
        for (int j = 0; j < LW_ORDER; j++) {
            if (j > k) a->at[k][j] *= d;
            inverse->at[k][j] *= d;
        }
        for (int i = 0; i < LW_ORDER; i++) {
            if (i == k) continue;
            const lw_lanes f = a->at[i][k];
            for (int j = 0; j < LW_ORDER; j++) {
                if (j > k) a->at[i][j] -= f * a->at[k][j];
                inverse->at[i][j] -= f * inverse->at[k][j];
            }
        }
    }
}

// Broyden's update of an inverse after a step s that changed the residual by y [broyden-1965]:
//
//     H += (s - H y) (s H) / (s H y)
LW_INLINE void lw_matrix_broyden(lw_matrix *H, const lw_lanes s[LW_ORDER],
                                 const lw_lanes y[LW_ORDER], lw_mask where)
{
    lw_lanes Hy[LW_ORDER], sH[LW_ORDER], sHy = lw_all(0.0);
    lw_matrix_times(H, y, Hy);
    for (int i = 0; i < LW_ORDER; i++) {
        sH[i] = lw_all(0.0);
        for (int j = 0; j < LW_ORDER; j++) sH[i] += s[j] * H->at[j][i];
        sHy += s[i] * Hy[i];
    }
    const lw_mask sound = where & (lw_lanes_abs(sHy) > 1e-30);
    const lw_lanes per = lw_select(sound, 1.0 / lw_select(sound, sHy, lw_all(1.0)), lw_all(0.0));
    for (int i = 0; i < LW_ORDER; i++) {
        const lw_lanes u = (s[i] - Hy[i]) * per;
        for (int j = 0; j < LW_ORDER; j++) {
            H->at[i][j] = lw_select(sound, H->at[i][j] + u * sH[j], H->at[i][j]);
        }
    }
}

#endif
