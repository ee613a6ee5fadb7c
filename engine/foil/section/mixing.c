// mixing.c - the last sweeps put together so that the next one starts nearer to the end.
// SPDX-License-Identifier: MIT

#include "foil/section/mixing.h"

#include <math.h>

#define WEIGHT_MOST 20.0  // beyond, the sweeps tell nothing

lw_swept lw_swept_of(const lw_sweep *sweep)
{
    const lw_layer *l = sweep->layer;
    lw_swept swept = {{0.0}};
    for (int i = 0; i < l->all; i++) swept.at[i] = l->mass[i];
    swept.at[l->all] = sweep->more[0];
    swept.at[l->all + 1] = sweep->more[1];
    return swept;
}

static void put(lw_sweep *sweep, const lw_swept *swept)
{
    lw_layer *l = sweep->layer;
    for (int i = 0; i < l->all; i++) l->mass[i] = swept->at[i];
    sweep->more[0] = swept->at[l->all];
    sweep->more[1] = swept->at[l->all + 1];
    lw_sweep_join_tail(sweep);
}

static void remember(lw_mixing *m, const lw_swept *from, const lw_swept *to, int n)
{
    if (m->count == LW_MIXED_MOST) {
        m->count--;
        for (int k = 0; k < m->count; k++) {
            m->from[k] = m->from[k + 1];
            m->step[k] = m->step[k + 1];
        }
    }
    m->from[m->count] = *from;
    for (int i = 0; i < n; i++) m->step[m->count].at[i] = to->at[i] - from->at[i];
    m->count++;
}

// Weights c of the earlier sweeps: least squares of step - sum c_k (step - step_k). False when they
// tell nothing.
static bool weigh(const lw_mixing *m, int n, double *weight)
{
    const int last = m->count - 1;
    const double *f = m->step[last].at;
    double A[LW_MIXED_MOST - 1][LW_MIXED_MOST];
    for (int a = 0; a < last; a++) {
        for (int b = 0; b <= last; b++) {
            double sum = 0.0;
            for (int i = 0; i < n; i++) {
                const double other = b < last ? f[i] - m->step[b].at[i] : f[i];
                sum += (f[i] - m->step[a].at[i]) * other;
            }
            A[a][b] = sum;
        }
        A[a][a] *= 1.0 + 1e-8;
    }
    for (int k = 0; k < last; k++) {
        if (!(A[k][k] > 1e-300)) return false;
        for (int i = 0; i < last; i++) {
            const double part = A[i][k] / A[k][k];
            for (int j = k; j <= last && i != k; j++) A[i][j] -= part * A[k][j];
        }
    }
    for (int k = 0; k < last; k++) {
        weight[k] = A[k][last] / A[k][k];
        if (!(fabs(weight[k]) < WEIGHT_MOST)) return false;
    }
    return true;
}

void lw_mixing_take(lw_mixing *mixing, lw_sweep *sweep, const lw_swept *from)
{
    const lw_mixing *m = mixing;
    const int n = sweep->layer->all + 2;
    const lw_swept to = lw_swept_of(sweep);
    double weight[LW_MIXED_MOST];
    remember(mixing, from, &to, n);
    const int last = m->count - 1;
    if (last == 0 || !weigh(m, n, weight)) return;
    lw_swept next = to;
    for (int k = 0; k < last; k++) {
        for (int i = 0; i < n; i++) {
            const double step = m->step[last].at[i] - m->step[k].at[i];
            next.at[i] -= weight[k] * (step + m->from[last].at[i] - m->from[k].at[i]);
        }
    }
    put(sweep, &next);
}
