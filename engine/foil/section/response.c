// response.c - how speeds along a profile and its wake follow from mass pushed off them.
// SPDX-License-Identifier: MIT
//
// Mass U delta that grows along a panel leaves it as from a source: sigma = d(U delta)/ds. The
// panels' vorticity answers so that the inside stays at rest, and is then still the speed outside
// [drela-1989].

#include <math.h>
#include <stddef.h>

#include "foil/section/flow.h"
#include "foil/section/panel.h"
#include "lullwise/base.h"
#include "lullwise/boundary_layer.h"
#include "lullwise/elementary.h"
#include "solve/linear_many.h"

#define LW_E 2.71828182845904523536

// The wake: from the tail's bisector, turning into the chord's direction within a third of a chord.
static void lay_wake(lw_layer *layer, double *x, double *y)
{
    const lw_profile *p = &layer->profile;
    const int last = p->count - 1;
    const lw_panel below = lw_panel_of(p->x, p->y, 0), above = lw_panel_of(p->x, p->y, last - 1);
    const double start = lw_atan2(above.t_y - below.t_y, above.t_x - below.t_x);
    const double length = 1.0;
    double step = 0.5 * (below.length + above.length), ratio = 1.0;
    // geometric steps that add up to the length
    double low = 1.0, high = 2.0;
    for (int i = 0; i < 50; i++) {
        ratio = 0.5 * (low + high);
        double sum = 0.0, part = step;
        for (int k = 1; k < LW_WAKE_NODES; k++, part *= ratio) sum += part;
        *(sum < length ? &low : &high) = ratio;
    }
    x[0] = p->x[0];
    y[0] = p->y[0];
    double s = 0.0;
    layer->s[p->count] = 0.0;
    for (int k = 1; k < LW_WAKE_NODES; k++, step *= ratio) {
        const double turn = start * lw_exp(-(s + 0.5 * step) / 0.3);
        x[k] = x[k - 1] + step * lw_cos(turn);
        y[k] = y[k - 1] + step * lw_sin(turn);
        s += step;
        layer->s[p->count + k] = s;
    }
}

static double *row_of(lw_layer *l, int node) { return l->response + (size_t)node * LW_FLOW_ROW; }

typedef struct wake {
    double x[LW_WAKE_NODES], y[LW_WAKE_NODES];
} wake;

static int panels_of(const lw_layer *l) { return l->nodes - 1 + LW_WAKE_NODES - 1; }

static lw_panel panel_numbered(const lw_layer *l, const wake *w, int panel)
{
    if (panel < l->nodes - 1) return lw_panel_of(l->profile.x, l->profile.y, panel);
    return lw_panel_of(w->x, w->y, panel - (l->nodes - 1));
}

// Node before a panel: panels of the wake begin at its own node at the tail.
static int node_before(const lw_layer *l, int panel)
{
    return panel < l->nodes - 1 ? panel : panel + 1;
}

// Vorticity for mass at every node.
static void answer_on_surface(lw_layer *l, const wake *w, lw_profile_room *room)
{
    const int n = l->nodes, all = l->all;
    double *right = room->right;
    const lw_tail tail = lw_tail_of(&l->profile);
    for (int i = 0; i < (n + 1) * all; i++) right[i] = 0.0;
    for (int panel = 0; panel < panels_of(l); panel++) {
        const lw_panel q = panel_numbered(l, w, panel);
        const int node = node_before(l, panel);
        for (int i = 0; i < n - 1; i++) {
            const double psi =
                lw_panel_source(&q, l->profile.x[i], l->profile.y[i], panel >= n - 1) / q.length;
            right[i * all + node] += psi;
            right[i * all + node + 1] -= psi;
        }
        const lw_plane_vector v = lw_panel_source_velocity(&q, tail.x, tail.y);
        const double pull = (v.x * tail.t_x + v.y * tail.t_y) / q.length;
        right[(n - 1) * all + node] += pull;
        right[(n - 1) * all + node + 1] -= pull;
    }
    lw_linear_solve_many(room->matrix, n + 1, room->pivot, right, all);
    for (int i = 0; i < n; i++) {
        for (int j = 0; j < all; j++) row_of(l, i)[j] = right[i * all + j];
    }
}

// Speed along the wake at its node k from a source on the wake's panels on either side of it, whose
// constant sources would have none: as if the source changed evenly from one middle to the other.
static double beside(const lw_panel *before, const lw_panel *after, bool is_before)
{
    const double near = 0.5 / LW_E * sqrt(before->length * after->length);
    const double ln = lw_log((is_before ? before : after)->length / near);
    return (is_before ? ln : -ln) / (2.0 * LW_PI);
}

typedef struct wake_node {
    int k;
    double x, y;
    lw_panel before, after;  // the last node's panel after is that before
} wake_node;

static double source_speed(const wake_node *at, const lw_panel *q, int piece)
{
    if (piece == at->k - 1) return beside(&at->before, &at->after, true);
    if (piece == at->k) return beside(&at->before, &at->after, false);
    const lw_plane_vector v = lw_panel_source_velocity(q, at->x, at->y);
    return v.x * at->before.t_x + v.y * at->before.t_y;
}

static double along_wake(const wake_node *at, lw_plane_vector v)
{
    return v.x * at->before.t_x + v.y * at->before.t_y;
}

static void answer_at(lw_layer *l, const wake *w, const wake_node *at)
{
    const int n = l->nodes, all = l->all, here = n + at->k;
    double *row = row_of(l, here);
    l->along[here] = at->before.t_x;
    l->across[here] = at->before.t_y;
    for (int panel = 0; panel < panels_of(l); panel++) {
        const lw_panel q = panel_numbered(l, w, panel);
        const int node = node_before(l, panel);
        const double pull = source_speed(at, &q, panel - (n - 1)) / q.length;
        row[node] -= pull;
        row[node + 1] += pull;
        if (panel >= n - 1) continue;
        lw_plane_vector ends[2];
        lw_panel_vortex_velocity(&q, at->x, at->y, ends);
        for (int end = 0; end < 2; end++) {
            const double turn = along_wake(at, ends[end]);
            const double *of_surface = row_of(l, panel + end);
            for (int j = 0; j < all; j++) row[j] += turn * of_surface[j];
            l->along[here] += turn * l->flow.along[panel + end];
            l->across[here] += turn * l->flow.across[panel + end];
        }
    }
}

// The wake begins with the speed above the tail, which is that below.
static void answer_in_wake(lw_layer *l, const wake *w)
{
    const int n = l->nodes, last = LW_WAKE_NODES - 1;
    for (int j = 0; j < LW_FLOW_ROW; j++) row_of(l, n)[j] = row_of(l, n - 1)[j];
    l->along[n] = l->along[n - 1];
    l->across[n] = l->across[n - 1];
    for (int k = 1; k <= last; k++) {
        const lw_panel before = lw_panel_of(w->x, w->y, k - 1);
        const lw_panel after = k < last ? lw_panel_of(w->x, w->y, k) : before;
        answer_at(l, w, &(wake_node){k, w->x[k], w->y[k], before, after});
    }
}

lw_profile_status lw_layer_of(const lw_profile *profile, lw_profile_room *room, lw_layer *layer)
{
    layer->has_root = false;
    layer->profile = *profile;
    layer->nodes = profile->count;
    layer->all = profile->count + LW_WAKE_NODES;
    const lw_profile_status status = lw_profile_flow_of(profile, room, &layer->flow);
    if (status != LW_PROFILE_OK) return status;

    layer->s[0] = 0.0;
    for (int i = 1; i < layer->nodes; i++) {
        layer->s[i] = layer->s[i - 1] + lw_panel_of(profile->x, profile->y, i - 1).length;
    }
    for (int i = 0; i < layer->nodes; i++) {
        layer->along[i] = layer->flow.along[i];
        layer->across[i] = layer->flow.across[i];
    }
    for (int i = 0; i < LW_FLOW_NODES * LW_FLOW_ROW; i++) layer->response[i] = 0.0;
    wake w;
    lay_wake(layer, w.x, w.y);
    answer_on_surface(layer, &w, room);
    answer_in_wake(layer, &w);
    return LW_PROFILE_OK;
}
