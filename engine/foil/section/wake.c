// wake.c - equations of the wake, which both layers make.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "foil/section/link.h"
#include "lullwise/elementary.h"

// Logarithm of the stress with which a side ends, and its slopes along theta, third, mass, speed.
static lw_dual end_stress(const lw_system *s, const lw_side *side)
{
    const lw_layer *l = s->layer;
    const int node = lw_side_node(s, side, side->count - 1);
    const lw_station *t = &s->station[node];
    lw_dual ln = {t->at.third, {0.0, 0.0, 0.0, 1.0}};
    if (side->turns >= side->count) lw_closure_start(s->log_reynolds, &t->at, &ln);
    ln.by = lw_by_mass(ln.by, t, l->state.mass[node], l->state.speed[node]);
    return ln;
}

// Both layers together make the wake.
typedef struct joined {
    double theta, S, share[2], part[2];  // of either in theta, and in theta S
    lw_dual ends[2];
} joined;

static joined join(const lw_system *s)
{
    joined j = {.theta = 0.0};
    const int tail[2] = {0, s->layer->nodes - 1};
    double theta[2], stress[2];
    for (int i = 0; i < 2; i++) {
        theta[i] = lw_exp(s->layer->state.log_theta[tail[i]]);
        j.ends[i] = end_stress(s, &s->side[i]);
        stress[i] = lw_exp(j.ends[i].at);
        j.theta += theta[i];
        j.S += theta[i] * stress[i];
    }
    j.S /= j.theta;
    for (int i = 0; i < 2; i++) {
        j.share[i] = theta[i] / j.theta;
        j.part[i] = j.share[i] * stress[i] / j.S;
    }
    return j;
}

static void look_at_wake(lw_system *s, int node)
{
    const lw_layer *l = s->layer;
    lw_station *t = &s->station[node];
    const double speed = fmax(l->state.speed[node], 1e-4);
    const lw_four e = lw_four_exp((lw_four){-l->state.log_theta[node], 0.0, 0.0, 0.0});
    t->x = l->s[l->nodes - 1] - s->origin + l->s[node];
    t->at = (lw_layer_place){.log_theta = l->state.log_theta[node],
                             .shape = l->state.mass[node] / speed * e[0],
                             .log_speed = lw_four_log((lw_four){speed, speed, speed, speed})[0],
                             .third = l->state.third[node]};
    lw_closure_of(LW_WAKE, s->log_reynolds, &t->at, &t->closure);
}

void lw_begin_wake(lw_system *s)
{
    lw_layer_state *z = &s->layer->state;
    const int n = s->layer->nodes;
    const joined j = join(s);
    z->log_theta[n] = lw_log(j.theta);
    z->third[n] = lw_log(j.S);
    z->mass[n] = z->mass[n - 1] - z->mass[0];
    look_at_wake(s, n);
}

static void begin_wake(lw_system *s, lw_links *links)
{
    const lw_layer_state *z = &s->layer->state;
    const int n = s->layer->nodes;
    const joined j = join(s);
    *links = (lw_links){.node_0 = 0, .node_1 = n - 1, .node = n};
    links->theta.by_0[0] = j.share[0];
    links->theta.by_1[0] = j.share[1];
    links->theta.rest = lw_log(j.theta) - z->log_theta[n];
    links->third.by_0 = j.part[0] * j.ends[0].by;
    links->third.by_1 = j.part[1] * j.ends[1].by;
    links->third.by_0[0] += j.part[0] - j.share[0];
    links->third.by_1[0] += j.part[1] - j.share[1];
    links->third.rest = lw_log(j.S) - z->third[n];
    links->mass = (lw_link){.by_mass = -1.0, .rest = z->mass[n - 1] - z->mass[0] - z->mass[n]};
    links->mass.by_0[2] = -1.0;
    links->mass.by_1[2] = 1.0;
    const lw_equations off = {
        .left = {links->theta.rest, links->third.rest, links->mass.rest / j.theta}};
    lw_note(s, &off);
    look_at_wake(s, n);
}

void lw_wake_assemble(lw_system *s, lw_links *links)
{
    const lw_layer *l = s->layer;
    begin_wake(s, links++);
    for (int node = l->nodes + 1; node < l->all; node++, links++) {
        lw_interval v;
        lw_equations e;
        look_at_wake(s, node);
        lw_interval_of(LW_WAKE, &s->station[node - 1], &s->station[node], &v);
        lw_equations_of(s, &v, &(lw_row){{-1, node - 1, node}, 3, 1.0}, &e);
        *links = (lw_links){.node_0 = -1, .node_1 = node - 1, .node = node};
        lw_link_up(&e, links);
        lw_note(s, &e);
    }
}
