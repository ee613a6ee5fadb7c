// eliminate.c - the linked stations made one set of equations for the masses, and solved.
// SPDX-License-Identifier: MIT
//
// Theta and third of a station follow from what is before it, so that each is a row over all
// masses; what is left at a station is then a row of the set.

#include <math.h>
#include <stddef.h>

#include "foil/section/system.h"
#include "solve/rows.h"

enum { FEW = 5, SOURCES = 8, SIDES = 2 };  // right sides: what is left, and by the angle

// A row over masses, 1 and the angle for each of three links, from the rows of what it hangs on.
typedef struct rows {
    const double *from[SOURCES];
    double part[3][SOURCES];
    int count;
} rows;

static void add_source(rows *r, const double *from, const double part[3])
{
    for (int i = 0; i < 3; i++) r->part[i][r->count] = part[i];
    r->from[r->count++] = from;
}

LW_INLINE void sum_up(const rows *r, int count, int width, double *const to[3])
{
    double *restrict a = to[0], *restrict b = to[1], *restrict c = to[2];
    for (int j = 0; j < width; j++) {
        double x = 0.0, y = 0.0, z = 0.0;
        for (int k = 0; k < count; k++) {
            const double from = r->from[k][j];
            x += r->part[0][k] * from, y += r->part[1][k] * from, z += r->part[2][k] * from;
        }
        a[j] = x, b[j] = y, c[j] = z;
    }
}

// Five of them, or eight where the station hangs on two before it.
LW_CLONES static void sum_rows(const rows *r, int width, double *const to[3])
{
    if (r->count <= FEW)
        sum_up(r, FEW, width, to);
    else
        sum_up(r, SOURCES, width, to);
}

// Rows of theta and third at the last stations.
typedef struct trail {
    double theta[LW_FLOW_ROW], third[LW_FLOW_ROW];
} trail;

static void take_node(rows *r, const trail *t, const double *speed, const lw_four by[3])
{
    add_source(r, t->theta, (double[]){by[0][0], by[1][0], by[2][0]});
    add_source(r, t->third, (double[]){by[0][1], by[1][1], by[2][1]});
    add_source(r, speed, (double[]){by[0][3], by[1][3], by[2][3]});
}

static void add_masses(const lw_system *s, const lw_links *k, double *const to[3])
{
    const lw_link *links[3] = {&k->theta, &k->third, &k->mass};
    const int all = s->layer->all;
    for (int i = 0; i < 3; i++) {
        if (k->node_0 >= 0) to[i][k->node_0] += links[i]->by_0[2];
        to[i][k->node_1] += links[i]->by_1[2];
        to[i][k->node] += links[i]->by_mass;
        to[i][all] += links[i]->rest;
    }
}

// What a walk along the stations carries: how the stagnation point moves, and the last rows.
typedef struct walk {
    double nose[LW_FLOW_ROW];
    trail last[3];
    int here;
} walk;

// `before`: of the station before the last, on which transition hangs, or of the other side's tail.
static void take_station(lw_system *s, const lw_links *k, walk *w, const trail *before)
{
    const lw_layer *l = s->layer;
    const double *row = l->response;
    const lw_link *a = &k->theta, *b = &k->third, *c = &k->mass;
    trail *here = &w->last[w->here];
    rows r = {.count = 0};
    add_source(&r, w->nose, (double[]){a->by_nose, b->by_nose, c->by_nose});
    add_source(&r, row + (size_t)k->node * LW_FLOW_ROW,
               (double[]){a->by_speed, b->by_speed, c->by_speed});
    take_node(&r, &w->last[(w->here + 2) % 3], row + (size_t)k->node_1 * LW_FLOW_ROW,
              (lw_four[]){a->by_1, b->by_1, c->by_1});
    if (k->node_0 >= 0)
        take_node(&r, before, row + (size_t)k->node_0 * LW_FLOW_ROW,
                  (lw_four[]){a->by_0, b->by_0, c->by_0});
    double *const to[3] = {here->theta, here->third,
                           s->layer->matrix + (size_t)k->node * LW_FLOW_ROW};
    sum_rows(&r, l->all + SIDES, to);
    add_masses(s, k, to);
    w->here = (w->here + 1) % 3;
}

static void take_stations(lw_system *s, walk *w, int from, int to)
{
    for (int k = from; k < to; k++) take_station(s, &s->links[k], w, &w->last[(w->here + 1) % 3]);
}

// How the stagnation point moves.
static void nose_row(const lw_system *s, double *nose)
{
    const lw_layer *l = s->layer;
    const double *a = l->response + (size_t)s->nose * LW_FLOW_ROW, *b = a + LW_FLOW_ROW;
    const double u = l->state.speed[s->nose], v = l->state.speed[s->nose + 1], rise = v - u;
    const double per = (l->s[s->nose + 1] - l->s[s->nose]) / (rise * rise);
    for (int j = 0; j < l->all + SIDES; j++) nose[j] = per * (u * b[j] - v * a[j]);
}

static void fill(lw_system *s)
{
    const int n = s->layer->nodes, below = s->side[0].count;
    walk w = {.here = 0};
    nose_row(s, w.nose);
    take_stations(s, &w, 0, below);
    const trail tail = w.last[(w.here + 2) % 3];
    take_stations(s, &w, below, n);
    take_station(s, &s->links[n], &w, &tail);
    take_stations(s, &w, n + 1, s->layer->all);
}

// What follows at a station from a change.
typedef struct followed {
    const lw_change *of;
    double nose, rest;  // how the stagnation point moves; 1: what is left counts, too
} followed;

static double change_by(const lw_links *k, const lw_link *link, const followed *f)
{
    const double *T = f->of->theta, *Z = f->of->third, *U = f->of->speed, *M = f->of->mass;
    const int a = k->node_1, b = k->node, o = k->node_0;
    double sum = f->rest * link->rest + link->by_nose * f->nose + link->by_mass * M[b] +
                 link->by_speed * U[b] + link->by_1[0] * T[a] + link->by_1[1] * Z[a] +
                 link->by_1[2] * M[a] + link->by_1[3] * U[a];
    if (o >= 0)
        sum += link->by_0[0] * T[o] + link->by_0[1] * Z[o] + link->by_0[2] * M[o] +
               link->by_0[3] * U[o];
    return sum;
}

// The change for a right side: masses, and what speeds, theta and third follow with.
static void change_for(const lw_system *s, int side, lw_change *c)
{
    const lw_layer *l = s->layer;
    const double *speed = l->state.speed;
    lw_rows_solve(l->matrix, l->all, side, LW_FLOW_ROW, c->mass);
    for (int i = 0; i < l->all; i++) c->mass[i] = -c->mass[i];
    lw_rows_times(l->response, l->all, LW_FLOW_ROW, c->mass, c->speed);
    for (int i = 0; i < l->all; i++)
        c->speed[i] += l->response[(size_t)i * LW_FLOW_ROW + (size_t)(l->all + side)];
    const int a = s->nose, b = s->nose + 1;
    const double rise = speed[b] - speed[a], per = (l->s[b] - l->s[a]) / (rise * rise);
    const followed f = {.of = c,
                        .nose = per * (speed[a] * c->speed[b] - speed[b] * c->speed[a]),
                        .rest = side == 0 ? 1.0 : 0.0};
    for (int i = 0; i < l->all; i++) {
        const lw_links *k = &s->links[i];
        const double theta = change_by(k, &k->theta, &f);
        const double third = change_by(k, &k->third, &f);
        c->theta[k->node] = theta;
        c->third[k->node] = third;
    }
}

// The angle's step leaves nothing over of the arc.
static void bend_step(lw_system *s)
{
    lw_change by_alpha;
    change_for(s, 1, &by_alpha);
    const lw_arc *arc = s->arc;
    double along = 0.0, slope = arc->by_alpha;
    for (int i = 0; i < s->layer->all; i++) {
        along += arc->by_mass[i] * s->step.mass[i];
        slope += arc->by_mass[i] * by_alpha.mass[i];
    }
    const double d = slope != 0.0 ? -(s->arc_left + along) / slope : 0.0;
    for (int i = 0; i < s->layer->all; i++) {
        s->step.mass[i] += d * by_alpha.mass[i];
        s->step.speed[i] += d * by_alpha.speed[i];
        s->step.theta[i] += d * by_alpha.theta[i];
        s->step.third[i] += d * by_alpha.third[i];
    }
    s->alpha_step = d;
}

bool lw_system_solve(lw_system *s)
{
    lw_layer *l = s->layer;
    fill(s);
    if (!lw_rows_eliminate(l->matrix, l->all, SIDES, LW_FLOW_ROW)) return false;
    change_for(s, 0, &s->step);
    s->alpha_step = 0.0;
    if (s->arc) bend_step(s);
    return true;
}
